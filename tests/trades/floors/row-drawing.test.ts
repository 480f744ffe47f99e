import { describe, expect, it } from "vitest"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { firstLines, rowDrawing } from "../../../src/trades/floors/row-drawing.ts"
import { floorTask } from "./fixture.ts"

describe("where to strike the first line", () => {
  /* 3,000 deep: gap 10 and a first row of 167. */
  it("gap and first row from the wall, from gap to gap along it", () => {
    const { plan } = planFloor(floorTask({}))
    const [line, ...further] = firstLines(plan!)
    expect(further).toEqual([])
    expect([line!.from, line!.left, line!.right].map((value) => Math.round(value))).toEqual([177, 10, 3990])
  })

  it("every piece is drawn once, offcuts in grey", () => {
    const task = floorTask({})
    const plan = planFloor(task).plan!
    const pieces = plan.layout.rows.flatMap((row) => row.runs.flatMap((run) => run.pieces))
    const drawn = rowDrawing(task.room, plan).shapes.filter((shape) => shape.kind === "polygon")
    expect(drawn.filter((shape) => shape.fill === "light")).toHaveLength(
      pieces.filter((piece) => piece.source).length,
    )
    expect(drawn.filter((shape) => shape.fill === "white")).toHaveLength(
      pieces.filter((piece) => !piece.source).length,
    )
  })
})
