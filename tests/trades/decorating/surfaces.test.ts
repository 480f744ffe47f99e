import { describe, expect, it } from "vitest"
import { surfacesOf } from "../../../src/trades/decorating/surfaces.ts"
import { VOIDS } from "../../facts/decorating.ts"
import { attic, moulding } from "./attic.ts"

function surfaces(written: Record<string, unknown> = {}, facts = moulding, room = {}) {
  const task = attic(written, facts, room)
  return surfacesOf({ room: task.room, input: task.input, facts: task.facts, rules: task.job.rules })
}

describe("surfaces of the attic room, by hand", () => {
  // Level: the slope rises 1,400 over 1,400 of plan, so 3,000 - 1,400 = 1,600 by 4,000 = 6.400 m2.
  // Slope: 4,000 x 1,400 x 1.41421 = 7.9196; less the roof window 0.780 x 1.180 = 0.9204.
  // Wall 1: 4.000 x 2.400 = 9.600 less the doorway 0.768 x 1.990 = 1.5283.
  // Walls 2 and 4: 3.000 x 2.400 less a triangle 1.4 x 1.4 / 2 = 0.980: 6.220.
  // Wall 3: 4.000 x 1.000; its hatch 0.6 x 0.7 = 0.42 is too small to be taken off.
  // Reveal of the roof window: 2 x (1,180 + 780) x 200 = 0.784.
  it.each([
    ["Level ceiling", 6.4, 0, 6.4],
    ["Slope over wall 3", 7.9196, 0.9204, 6.9992],
    ["Wall 1", 9.6, 1.52832, 8.07168],
    ["Wall 2", 6.22, 0, 6.22],
    ["Wall 3", 4.0, 0, 4.0],
    ["Wall 4", 6.22, 0, 6.22],
    ["Window reveals", 0.784, 0, 0.784],
  ])("%s: gross %d, openings %d, painted %d", (name, gross, off, area) => {
    const found = surfaces().find((each) => each.name === name)!
    expect(found.gross).toBeCloseTo(gross, 4)
    expect(found.off).toBeCloseTo(off, 4)
    expect(found.area).toBeCloseTo(area, 4)
  })

  it("slopes take the wall's colour where the client chooses so", () => {
    const slope = surfaces({ slopeIs: "wall", wallColour: "sage" }).find((each) =>
      each.name.startsWith("Slope"),
    )!
    expect(slope).toMatchObject({ as: "wall", colour: "sage" })
  })

  it("tiled wall is taken off, never more than there is of wall; reveals stay", () => {
    const sum = (tiledWall: number) =>
      surfaces({}, { ...moulding, tiledWall }).reduce(
        (total, each) => total + (each.as === "wall" ? each.area : 0),
        0,
      )
    expect(sum(5)).toBeCloseTo(25.29568 - 5, 4)
    expect(sum(100)).toBeCloseTo(0.784, 9)
  })

  it("walls left out, open edges and wardrobe fronts are not painted", () => {
    expect(surfaces({ leave: [2] }).some((each) => each.name === "Wall 2")).toBe(false)
    const outline = [
      { length: 4000, turn: "right" },
      { length: 3000, turn: "right", is: "wardrobe" },
      { length: 4000, turn: "right" },
      { length: 3000, turn: "right", is: "open-edge" },
    ]
    const names = surfaces({}, moulding, { outline }).map((each) => each.name)
    expect(names).not.toContain("Wall 2")
    expect(names).not.toContain("Wall 4")
  })

  it.each(VOIDS)("$what ($source)", ({ width, height, off }) => {
    const windows = [{ id: "W", kind: "window", wall: 2, fromLeft: 100, width, height, sill: 300 }]
    expect(surfaces({}, moulding, { windows }).find((each) => each.name === "Wall 2")!.off).toBeCloseTo(
      off,
      9,
    )
  })
})
