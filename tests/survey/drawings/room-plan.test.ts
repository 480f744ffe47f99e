import { describe, expect, it } from "vitest"
import { roomPlan, zoneAlong } from "../../../src/survey/drawings/room-plan.ts"
import { houseOf, rulesOf, surveyed } from "../../fixtures/rooms.ts"
import { demoHouses, demoRoom } from "../demo.ts"
import { generatedRoom } from "../generated-rooms.ts"
import { badFigures, overlappingLabels } from "./labels.ts"

const options = { floorBuildUp: 19, rules: rulesOf(), joists: true }

describe("roomPlan", () => {
  const plan = roomPlan(demoRoom("A1"), options)
  const texts = plan.shapes.flatMap((shape) => ("text" in shape ? [shape.text] : []))

  it("carries every wall's number and length, every opening, what is hidden, the first joist", () => {
    for (const wall of demoRoom("A1").walls) expect(texts).toContain(String(wall.number))
    for (const text of ["4,860", "3,952", "1,260", "D1", "D3", "RW1", "RW2", "pipe", "cable", "wardrobe"])
      expect(texts).toContain(text)
    expect(texts).toContain("joist 60 from wall 1, then at 400")
  })

  it("draws the headroom line dashed inside the room, once along each slope, and hatches the no-fix zones", () => {
    const dashed = plan.shapes.filter(
      (shape) => shape.kind === "line" && shape.stroke.dash === "dashed" && shape.stroke.width === 0.35,
    )
    expect(dashed).toHaveLength(2)
    expect(plan.shapes.filter(({ kind }) => kind === "hatch")).toHaveLength(2)
  })

  it("keeps the no-fix zone clear to both sides of a run, whichever end was written first", () => {
    const rules = rulesOf()
    const half = rules.value("survey-no-fix-half-width")
    const hidden = { what: "pipe", in: "floor", wall: 2, fromLeft: 900, to: 600 } as const
    expect(zoneAlong(hidden, rules)).toEqual({ from: 600 - half, to: 900 + half })
  })

  it("has no label over another in the demo jobs, large and small", () => {
    for (const room of demoHouses().flatMap(({ rooms }) => rooms))
      for (const scale of [50, 100]) expect(overlappingLabels(roomPlan(room, options), scale)).toEqual([])
  })

  it("has no label over another in 200 generated rooms", () => {
    for (let seed = 1; seed <= 200; seed++) {
      const drawing = roomPlan(generatedRoom(seed), options)
      expect(badFigures(drawing)).toBe(false)
      expect(overlappingLabels(drawing, 50), `seed ${seed}`).toEqual([])
    }
  })

  it("takes odd input as it comes: openings past their wall, zones on walls that are not there, an outline that crosses itself", () => {
    const house = houseOf({
      doors: [
        {
          id: "D1",
          name: "D1",
          between: ["outside", "R1"],
          lining: "none",
          lengthsTo: "stud",
          heightsFrom: "deck",
          widths: [900],
          heights: [2700],
          wall: 100,
        },
      ],
    })
    const odd = surveyed(
      {
        outline: [
          { length: 4000, turn: "right" },
          { length: 3000, turn: "right" },
          { length: 400, turn: "right" },
          { length: 5000, turn: "left" },
        ],
        diagonals: [],
        doors: [
          { door: "D1", wall: 1, fromLeft: 3900 },
          { door: "D1", wall: 9, fromLeft: 0 },
        ],
        windows: [{ id: "W", kind: "roof-window", wall: 2, fromLeft: 0, width: 900, height: 900, sill: 0 }],
        hidden: [
          { what: "pipe", in: "floor", wall: 12, fromLeft: 0 },
          { what: "cable", in: "wall", wall: 3, fromLeft: 9000 },
        ],
        joists: { wall: 11 },
      },
      house,
    )
    expect(() => roomPlan(odd, options)).not.toThrow()
    expect(badFigures(roomPlan(odd, options))).toBe(false)
  })
})
