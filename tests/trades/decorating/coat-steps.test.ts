import { describe, expect, it } from "vitest"
import { coatSteps } from "../../../src/trades/decorating/coat-steps.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic } from "./attic.ts"

function steps(keys: Parameters<typeof coatSteps>[2], written = {}) {
  const task = attic(written)
  return coatSteps(task, roomPaint(task).lines, keys)
}

describe("coats as steps", () => {
  it("go in the order of coats whatever order is asked, and only those that something takes", () => {
    const keys = steps(["colour-last", "mist", "bond"]).map(({ step }) => step.key)
    expect(keys).toEqual(["decorating/R1/mist", "decorating/R1/colour-last"])
  })

  it("say area, groups and one thing to mind in a line", () => {
    // 6.400 + 6.999 + 24.512 + 0.784 = 38.7 m2.
    expect(steps(["mist"])[0]!.step.detail).toBe(
      "38.7 m²: level ceiling and slopes; walls; window reveals. Thin 3 parts of paint with 1 of water. No undercoat on plaster.",
    )
  })

  it("hours by hand: mist on 38.695 m2 at 35 m2 an hour", () => {
    expect(steps(["mist"])[0]!.step.hours).toBeCloseTo(38.69488 / 35, 4)
  })

  it("solvent undercoat is marked for its fumes and says when it must be done; water-borne finish is not", () => {
    const [under, finish] = steps(["undercoat", "finish"]).map(({ step }) => step)
    expect(under!.fumes).toBe(true)
    expect(under!.detail).toMatch(/8 hours before bedtime/)
    expect(finish!.fumes).toBeUndefined()
  })

  it("the last wall coat waits for the electrician and touches no wiring", () => {
    const { step } = steps(["colour-last"])[0]!
    expect(step.after).toEqual(["electrics/R1/ease"])
    expect(step.hold).toMatch(/electrician/)
    expect(step.detail).toMatch(/Touch no wiring/)
  })
})
