import { describe, expect, it } from "vitest"
import { ceilingPlan } from "../../../src/trades/electrics/ceiling-plan.ts"
import { scheduledPoints } from "../../../src/trades/electrics/points.ts"
import { bedroom, task } from "./bedroom.ts"

describe("ceiling points from above", () => {
  it("stand where they were measured: wall 1 along x, the room below it", () => {
    const given = task(bedroom)
    const drawing = ceilingPlan(given, scheduledPoints(given))!
    // Light 2 is 2,000 from the left and 1,500 off wall 1, alarm 3 is 3,000 and 1,500: worked by hand; numbers stand 150 above.
    const texts = drawing.shapes.flatMap((shape) =>
      shape.kind === "text" ? [[shape.text, Math.round(shape.at.x), Math.round(shape.at.y)]] : [],
    )
    expect(texts).toContainEqual(["2", 2000, -1350])
    expect(texts).toContainEqual(["3", 3000, -1350])
    expect(drawing.shapes.filter((shape) => shape.kind === "box")).toHaveLength(2)
  })

  it("a bath is dashed; a room without such points has no plan", () => {
    const wet = [{ what: "bath" as const, wall: 2, fromLeft: 0, width: 1700, depth: 700 }]
    const given = task(bedroom, { use: "bathroom" }, { floorBuildUp: 19, wetPlaces: wet })
    const polygons = ceilingPlan(given, scheduledPoints(given))!.shapes.filter(
      ({ kind }) => kind === "polygon",
    )
    expect(polygons).toHaveLength(2)
    const none = task({ points: [{ kind: "socket", wall: 2, fromLeft: 900 }] })
    expect(ceilingPlan(none, scheduledPoints(none))).toBeNull()
  })
})
