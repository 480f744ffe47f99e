import { describe, expect, it } from "vitest"
import { floorsAcross, sharedOffcuts } from "../../../src/trades/floors/across.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { floorTask } from "./fixture.ts"

type Told = Parameters<typeof sharedOffcuts>[0][number]["boards"]
const told = (given: Partial<Told>): Told => ({
  product: "oak",
  boards: 1,
  boardsAtLeast: 1,
  offcuts: [],
  rows: [],
  ...given,
})
const piece = (
  role: "start" | "finish" | "single" | "whole",
  length: number,
  board = 1,
  from = "new board",
) => ({
  board,
  role,
  length,
  from,
})

describe("boards across rooms, by hand", () => {
  const first = told({
    offcuts: [
      { mark: "3R", length: 900, end: "right" },
      { mark: "5L", length: 700, end: "left" },
    ],
  })

  it("an offcut with the right end begins a row of a later room in place of a fresh board", () => {
    const second = told({ rows: [{ row: "2", pieces: [piece("start", 850)] }] })
    expect(
      sharedOffcuts([
        { id: "A1", boards: first },
        { id: "A2", boards: second },
      ]),
    ).toEqual([{ from: "A1", mark: "3R", length: 900, to: "A2", row: "2", role: "start", needed: 850 }])
  })

  it("not to end one, nor if too short, nor for a board that gives two pieces, nor back to an earlier room", () => {
    const shares = (rows: Told["rows"]) =>
      sharedOffcuts([
        { id: "A1", boards: first },
        { id: "A2", boards: told({ rows }) },
      ]).length
    expect(shares([{ row: "2", pieces: [piece("finish", 850)] }])).toBe(0)
    expect(shares([{ row: "2", pieces: [piece("start", 901)] }])).toBe(0)
    expect(shares([{ row: "2", pieces: [piece("start", 850), piece("finish", 600, 1, "2L")] }])).toBe(0)
    expect(shares([{ row: "2", pieces: [piece("finish", 600)] }])).toBe(1)
    const later = told({ rows: [{ row: "2", pieces: [piece("start", 850)] }] })
    expect(
      sharedOffcuts([
        { id: "A1", boards: later },
        { id: "A2", boards: first },
      ]),
    ).toEqual([])
  })

  it("an offcut serves once", () => {
    const rows = [
      { row: "1", pieces: [piece("start", 850, 1)] },
      { row: "3", pieces: [piece("start", 800, 2)] },
    ]
    const shared = sharedOffcuts([
      { id: "A1", boards: first },
      { id: "A2", boards: told({ rows }) },
    ])
    expect(shared).toHaveLength(1)
  })
})

describe("boards across rooms of a job", () => {
  it("the order gets less by as many boards as are shared, and there is a sheet only where any is", async () => {
    const task = floorTask({})
    const work = floorWork(task)
    const once = await floorsAcross(task.job, [{ room: task.room, work }])
    expect(once.sheets).toEqual([])
    const { work: all, sheets } = await floorsAcross(task.job, [
      { room: task.room, work },
      { room: { ...task.room, id: "R2" }, work },
    ])
    const saved = Number(all.results.boardsRoomByRoom) - Number(all.results.boards)
    expect(sheets).toHaveLength(saved > 0 ? 1 : 0)
    expect(saved).toBe((all.results.shared as unknown[]).length)
    const less = all.quantities.reduce((sum, quantity) => sum + quantity.gross, 0)
    expect(less).toBeCloseTo(-saved * 1.86 * 0.189, 9)
  })

  it("rooms without boards are passed over", async () => {
    const staying = floorTask({ input: { finish: "stays" } })
    const { work } = await floorsAcross(staying.job, [{ room: staying.room, work: floorWork(staying) }])
    expect(work.results).toMatchObject({ boards: 0 })
  })
})
