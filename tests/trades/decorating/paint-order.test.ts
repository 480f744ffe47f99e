import { describe, expect, it } from "vitest"
import { paintNeeds, paintOrder, tinText } from "../../../src/trades/decorating/paint-order.ts"
import { decoratingWork } from "../../../src/trades/decorating/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { attic } from "./attic.ts"

describe("the attic room to the tin, by hand", () => {
  // White 8.32232 + 0.25 kept = 8.57232: one 10 at 66.00 beats 5 + 2.5 + 2.5 at 87.00. Colour 4.53081: a 5.
  // Undercoat 0.45863, none kept: a 0.75. Finish 0.39311 + 0.25 = 0.64311: a 0.75.
  it("tins for the job: 10 l of white, 5 l of colour, 0.75 l each of undercoat and finish", () => {
    const task = attic()
    const needs = paintNeeds(task.job, [{ room: task.room, work: decoratingWork(task) }])
    expect(needs.map((need) => [need.product, tinText(need.tins)])).toEqual([
      ["white", "1 × 10 l"],
      ["sage", "1 × 5 l"],
      ["under", "1 × 0.75 l"],
      ["satin", "1 × 0.75 l"],
    ])
    expect(needs[0]!.over).toBeCloseTo(10 - 8.57232, 2)
  })
})

describe("the job's paint", () => {
  it("two rooms share tins: the need is their sum and one reserve, and the sheet says why", () => {
    const task = attic()
    const rooms = [1, 2].map(() => ({ room: task.room, work: decoratingWork(task) }))
    const white = paintNeeds(task.job, rooms)[0]!
    expect(white.need).toBeCloseTo(2 * 8.32232 + 0.25, 3)
    const { work, sheets } = paintOrder(task.job, rooms)
    expect(sheets[0]!.kind).toBe("paint-order")
    expect(JSON.stringify(sheets)).toMatch(/do not add up to tins/)
    expect(JSON.stringify(sheets)).not.toMatch(/66\.00|£/)
    expect(work.quantities.filter((each) => each.room === null).map((each) => each.gross)).toEqual([
      0.25, 0.25, 0.25,
    ])
  })
})

it("the order sheet's tables fit their columns", () => {
  const task = attic()
  const { sheets } = paintOrder(task.job, [{ room: task.room, work: decoratingWork(task) }])
  expect(sheets.flatMap(badTables)).toEqual([])
})
