import { describe, expect, it } from "vitest"
import { heatBeforeWoodSheet } from "../../src/sheets/heat-before-wood.ts"
import { badTables } from "../fixtures/tables.ts"
import { cellsOf, tablesOf } from "./sheets.ts"
import { house, textOf } from "./site.ts"

const { programme, orders } = house
const at = (key: string) => programme.steps.find(({ step }) => step.key === key)!

describe("heat before wood", () => {
  it.each(["A1", "A2", "A4"])(
    "in %s: white dry, radiators, heat, ten working days, boards, rest, lay",
    (room) => {
      const white = programme.steps.filter(
        ({ step }) => step.room === room && step.trade === "decorating" && step.stage === "white",
      )
      const heat = at(`plumbing/${room}/heating-on`)
      const rest = at(`floors/${room}/acclimatise`)
      expect(Math.max(...white.map(({ ready }) => ready))).toBeLessThanOrEqual(
        at(`plumbing/${room}/radiators`).start,
      )
      expect(at(`plumbing/${room}/radiators`).finish).toBeLessThanOrEqual(heat.start)
      // Two weeks of days from the finish, whatever the calendar: common practice, about 10 working days.
      expect(heat.ready - heat.finish).toBe(14 * 24 * 3_600_000)
      expect(rest.start).toBeGreaterThanOrEqual(heat.ready)
      expect(at(`floors/${room}/boards`).start).toBeGreaterThanOrEqual(rest.ready)
    },
  )

  it("the boards have a first day, a last day and a last day to order; they come between", () => {
    const boards = orders.lines.filter(({ product }) => product.kind === "board")
    expect(boards.length).toBeGreaterThan(0)
    for (const line of boards) {
      expect(line.notBefore).toBe("heating on and steady")
      expect(
        line.earliest <= line.comesOn && line.comesOn <= line.latest && line.orderBy <= line.comesOn,
      ).toBe(true)
    }
  })

  it("one line a room, room for readings", () => {
    const sheet = heatBeforeWoodSheet(house)!
    expect(tablesOf(sheet)[0]!.rows.map(({ cells }) => cells[0])).toEqual(["A1", "A2", "A4", "A5"])
    expect(badTables(sheet)).toEqual([])
    expect(textOf(sheet)).toContain("Limits held 10 working days")
    expect(cellsOf(sheet).length).toBeGreaterThan(8)
  })
})
