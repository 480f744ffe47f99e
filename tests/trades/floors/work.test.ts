import { describe, expect, it } from "vitest"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { UNDERLAY } from "../../facts/floors.ts"
import { board, floorTask } from "./fixture.ts"

/*
 * One room by hand, 4,000 × 3,000, no doors, boards 189 × 1,860 along wall 1, packs of 8, underlay rolls 1,000 wide:
 *   gap            2 mm/m × 4 m = 8, least 10                                            10
 *   to the walls   4.000 × 3.000                                                         12.000 m2
 *   covered        3.980 × 2.980                                                         11.860 m2
 *   rows           2,980 = 15 × 189 + 145; first = last = (145 + 189) / 2 = 167; 14 whole: 16 rows
 *   boards         16 × 3,980 = 63,680 mm of row / 1,860 = 34.2, so 35 at the very least
 *   underlay       12.000 × 1.05                                                         12.600 m2
 *   tape           4 strips of 1,000 across 4,000: 3 joints of 3.000                     9.0 m
 *   screws         12 / (0.400 × 0.150) = 200 crossings × 2                              400, and 10 % over 440
 *   oil            11.860 / 20                                                           0.593 l
 *   hours          deck 400 / 60 = 6.67 -> 6.75, levelling 12 / 10 = 1.2 -> 1.25         8.00
 *                  underlay 12 / 20 = 0.6 -> 0.75; boards 11.86 / 2.5 = 4.74 -> 4.75; oil 11.86 / 10 = 1.19 -> 1.25
 */
describe("a room of 4,000 by 3,000 worked by hand", () => {
  const work = floorWork(floorTask({}))
  const quantity = (what: string) => work.quantities.find((line) => line.what.startsWith(what))!

  it("areas, gap and build-up", () => {
    expect(work.results).toMatchObject({
      areaToWalls: 12,
      areaLaid: 11.86,
      gap: 10,
      buildUp: 19,
      firstRowWall: 1,
    })
  })

  it("16 rows, first and last 167, 14 whole", () => {
    const rows = work.results.rows as { row: string; widthLeft: number; widthRight: number }[]
    expect(rows.map((row) => row.widthLeft)).toEqual([167, ...Array.from({ length: 14 }, () => 189), 167])
    expect(rows.map((row) => row.widthRight)).toEqual(rows.map((row) => row.widthLeft))
  })

  it("boards between the least that rows can take and the 10 % rule of thumb", () => {
    const boards = work.results.boards as number
    expect(boards).toBeGreaterThanOrEqual(35)
    expect(boards).toBeLessThanOrEqual(Math.ceil((11.8604 * 1.1) / (0.189 * 1.86)))
    expect(work.results.packs).toBe(Math.ceil(boards / board.perPack))
    /* 16 rows of 3,980 in three pieces and two saw cuts each: 16 × 3,989 / 1,863 = 34.3. */
    expect(work.results.boardsAtLeast).toBe(35)
    expect(quantity("floor boards").net).toBeCloseTo(11.8604, 6)
    expect(quantity("floor boards").gross).toBeCloseTo(boards * 0.189 * 1.86, 6)
  })

  it("underlay, tape, screws, oil", () => {
    expect(quantity("underlay").net).toBeCloseTo(12, 6)
    expect(quantity("underlay").gross).toBeCloseTo(UNDERLAY[0]!.gross, 6)
    expect(Math.ceil(quantity("underlay").gross / 10)).toBe(UNDERLAY[0]!.rolls)
    expect(quantity("tape").net).toBeCloseTo(9, 6)
    expect(quantity("deck screws")).toMatchObject({ net: 400, gross: 440 })
    expect(quantity("floor oil").net).toBeCloseTo(0.59302, 5)
  })

  it("steps in the house's order, with hours and gates", () => {
    expect(work.steps.map((step) => [step.key, step.stage, step.hours])).toEqual([
      ["floors/R1/deck", "deck", 8],
      ["floors/R1/acclimatise", "acclimatise", 0.5],
      ["floors/R1/underlay", "floor", 0.75],
      ["floors/R1/boards", "floor", 4.75],
      ["floors/R1/cover", "floor", 0.5],
      ["floors/R1/uncover", "covers-off", 0.5],
      ["floors/R1/oil-1", "oil", 1.25],
    ])
    expect(work.steps.map((step) => step.gate?.hours)).toEqual([
      undefined,
      72,
      undefined,
      undefined,
      undefined,
      undefined,
      28,
    ])
  })
})

describe("floors that stay, are tiled, or are none", () => {
  it("a carpet that stays is covered first and uncovered at the end", () => {
    const work = floorWork(floorTask({ input: { finish: "stays" } }))
    expect(work.steps.map((step) => step.stage)).toEqual(["prepare", "covers-off"])
    expect(work.quantities).toEqual([])
  })

  it("a tiled or bare floor is no work of this trade", () => {
    for (const finish of ["by-tiler", "none"]) {
      const work = floorWork(floorTask({ input: { finish } }))
      expect([work.steps, work.quantities, work.findings]).toEqual([[], [], []])
    }
  })
})

describe("work as a calculation", () => {
  it("same input, same result; the input untouched", () => {
    const task = floorTask({
      room: { readings: [{ on: "2027-01-20", what: "deck", value: 14, instrument: "pin meter" }] },
    })
    const before = JSON.stringify([task.room, task.input])
    expect(floorWork(task)).toEqual(floorWork(task))
    expect(JSON.stringify([task.room, task.input])).toBe(before)
  })

  it("rests on rules that exist, and on none of work that is not done", () => {
    const task = floorTask({ input: { oilCoats: 0, deckScrews: false } })
    const work = floorWork(task)
    for (const id of work.rests) expect(task.job.rules.entry(id).id).toBe(id)
    expect(work.rests.filter((id) => id.includes("oil") || id.includes("screw"))).toEqual([])
  })
})
