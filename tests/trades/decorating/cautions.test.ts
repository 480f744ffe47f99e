import { describe, expect, it } from "vitest"
import { cautionRests, decoratingCautions } from "../../../src/trades/decorating/cautions.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic, moulding, paintRules } from "./attic.ts"

function cautions(written = {}, room = {}, built = 1930) {
  const task = attic(written, moulding, room)
  const job = { ...task.job, house: { ...task.job.house, built } }
  return decoratingCautions({ ...task, job }, roomPaint(task).lines)
}

const ids = (...of: Parameters<typeof cautions>) => cautions(...of).map((each) => each.id)

describe("what can hurt a decorator", () => {
  it("old paint is lead paint until tested, in a house older than the ban only", () => {
    expect(ids({ walls: "old-paint" })).toContain("old-paint-lead")
    expect(ids({ walls: "old-paint" }, {}, 1995)).not.toContain("old-paint-lead")
    expect(ids({})).not.toContain("old-paint-lead")
  })

  it("an old texture is left alone until the survey is in hand", () => {
    const asbestos = cautions({ texture: true }).find((each) => each.id === "old-texture-asbestos")!
    expect(asbestos.text).toMatch(/survey report/)
    expect(asbestos.defer).toMatch(/licensed/)
  })

  it("solvent paint brings fumes and rags; a room without it neither", () => {
    expect(ids()).toEqual(expect.arrayContaining(["solvent", "oily-rags"]))
    expect(ids({ woodwork: { state: "none" } })).not.toContain("solvent")
  })

  it("over a stair a platform made for it", () => {
    expect(ids({}, { use: "landing" })).toContain("stairwell-access")
    expect(ids({}, { use: "bedroom" })).not.toContain("stairwell-access")
  })

  it("every one says why and to whom it defers, and none lets the decorator loosen a plate", () => {
    for (const { why, defer } of cautions({ walls: "old-paint", texture: true })) {
      expect(why).not.toBe("")
      expect(defer).not.toBe("")
    }
    expect(cautions().find((each) => each.id === "plates")!.text).toMatch(/Never loosen/)
    for (const id of cautionRests) expect(paintRules().entry(id).id).toBe(id)
  })
})
