import { describe, expect, it } from "vitest"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { beadLength, fill, plaster, prepare, uncover } from "../../../src/trades/decorating/room-steps.ts"
import { attic } from "./attic.ts"

describe("steps of the whole room", () => {
  it("old surfaces are washed and rubbed down, which makes dust and takes time by area", () => {
    const old = attic({ walls: "old-paint", ceiling: "old-paint" })
    const { step } = prepare(old, roomPaint(old).lines)
    // Walls 24.51168, reveals 0.784, ceiling 6.4 and slope 6.9992 m2 at 20 m2 an hour, and an hour to set up.
    expect(step.hours).toBeCloseTo(38.69488 / 20 + 1, 4)
    expect(step.dusty).toBe(true)
    const fresh = attic()
    expect(prepare(fresh, roomPaint(fresh).lines).step).toMatchObject({ dusty: false, hours: 1 })
  })

  it("the wait for plaster takes nobody's hours, and only new plaster waits", () => {
    expect(plaster(attic())[0]!.step.hours).toBe(0)
    expect(plaster(attic({ walls: "old-paint", ceiling: "old-paint" }))).toEqual([])
  })

  it("bead: skirting 13.082 and architrave 5.048 m, once however many coats", () => {
    const { lines } = roomPaint(attic())
    expect(beadLength(lines)).toBeCloseTo(18.13, 6)
    expect(fill(attic(), lines).step.hours).toBeCloseTo(18.13 / 15 + 1, 6)
  })

  it("caulk dries before paint; covers come off last", () => {
    const { lines } = roomPaint(attic())
    expect(fill(attic(), lines).step.gate!.hours).toBe(5)
    expect(uncover(attic()).step.stage).toBe("covers-off")
  })
})
