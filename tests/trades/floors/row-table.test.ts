import { describe, expect, it } from "vitest"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { leftOver, rowTable } from "../../../src/trades/floors/row-table.ts"
import { floorTask } from "./fixture.ts"

const tableOf = (given: Parameters<typeof floorTask>[0]) => {
  const plan = planFloor(floorTask(given)).plan!
  const block = rowTable(plan)
  if (block.kind !== "table") throw new Error("a table was expected")
  return { plan, rows: block.rows.map((row) => row.cells) }
}

describe("the row table", () => {
  it("start, whole boards and finish of each row sum to the row", () => {
    const { plan, rows } = tableOf({})
    const figure = (text: string) => Number(text.replace(",", ""))
    rows.forEach((cells, index) => {
      const run = plan.layout.rows[index]!.runs[0]!
      const sum = figure(cells[3]!) + figure(cells[5] || "0") * 1860 + figure(cells[6]!)
      expect(Math.abs(sum - (run.right - run.left))).toBeLessThanOrEqual(1)
    })
  })

  /* 1,980 between gaps: 10 rows of 189 and 90; first row 139.5. The breast's gap begins at 1,980 - 260 = 1,720, which is 68.5 into the
     row that begins at 139.5 + 8 × 189 = 1,651.5: 120.5 come off its far edge. */
  it("a breast shows as a notch with its place and depth", () => {
    const outline = [
      { length: 3000, turn: "right" },
      { length: 2000, turn: "right" },
      { length: 1000, turn: "right" },
      { length: 260, turn: "left", is: "breast" },
      { length: 800, turn: "left", is: "breast" },
      { length: 260, turn: "right", is: "breast" },
      { length: 1200, turn: "right" },
      { length: 2000, turn: "right" },
    ]
    const { rows } = tableOf({
      room: { outline, diagonals: [{ from: 1, to: 3, length: Math.hypot(3000, 2000) }] },
    })
    expect(rows.some((cells) => /a$/.test(cells[0]!)) && rows.some((cells) => /b$/.test(cells[0]!))).toBe(
      true,
    )
    expect(rows.map((cells) => cells[9]).join()).toMatch(/12[01] off the far edge/)
  })

  it("short leftovers are not listed", () => {
    const { plan } = tableOf({})
    const layout = {
      ...plan.layout,
      offcuts: [
        { board: 1, room: null, of: 1860, from: 0, to: 120, low: 0, high: 189, mark: "1L" },
        { board: 2, room: null, of: 1860, from: 0, to: 420, low: 0, high: 189, mark: "2L" },
      ],
    }
    expect(leftOver(layout)).toBe("2L 420")
    expect(leftOver({ ...layout, offcuts: [] })).toBe("none")
  })
})
