import { describe, expect, it } from "vitest"
import type { Product } from "../../../src/intake/schema/products.ts"
import { packsFor } from "../../../src/orders/packs.ts"
import { type BoardsOfJob, floorsAcross } from "../../../src/trades/floors/across.ts"
import { planOfWork } from "../../../src/trades/floors/floor-plans.ts"
import { floorFacts } from "../../../src/trades/floors/plan-floor.ts"
import { floorSheets } from "../../../src/trades/floors/sheet.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import type { RoomFacts } from "../../../src/trades/trade.ts"
import { board, floorTask, underlay } from "./fixture.ts"
import { faultsAcross } from "./verifier.ts"

const sized = (id: string, long: number, deep: number) => ({
  id,
  outline: [
    { length: long, turn: "right" },
    { length: deep, turn: "right" },
    { length: long, turn: "right" },
    { length: deep, turn: "right" },
  ],
  diagonals: [{ from: 1, to: 3, length: Math.hypot(long, deep) }],
})

/** Rooms of one job in their order, each hearing what those before it pass on. */
function jobOf(rooms: { id: string; long: number; deep: number }[], own: Product = board) {
  const passed = new Map<string, RoomFacts>()
  const alone = rooms.map(({ id, long, deep }) =>
    floorTask({ room: sized(id, long, deep), input: { along: 1 }, products: [own, underlay] }),
  )
  const house = { ...alone[0]!.job.house, rooms: alone.map((task) => task.room) }
  const tasks = alone.map((task) => ({ ...task, job: { ...task.job, house, passed } }))
  for (const task of tasks) passed.set(task.room.id, floorFacts(task))
  const works = tasks.map((task) => ({ room: task.room, work: floorWork(task) }))
  const across = () => floorsAcross(tasks[0]!.job, works)
  return { alone, tasks, works, across }
}
const boardsOf = (results: Record<string, unknown>) => (results.boards as BoardsOfJob[])[0]!

/* Inside gaps of 10: X is 780 by 189, Y 1,000 by 189; one board of 1,860 gives both, 780 + 3 + 1,000 = 1,783. */
const two = [
  { id: "X", long: 800, deep: 209 },
  { id: "Y", long: 1020, deep: 209 },
]

describe("two closets by hand", () => {
  it("each alone takes a board; together they take one, and fewer there cannot be", async () => {
    const { alone, across } = jobOf(two)
    expect(alone.map((task) => floorWork(task).results.boards)).toEqual([1, 1])
    const { work } = await across()
    expect(boardsOf(work.results)).toMatchObject({ boards: 1, boardsAtLeast: 1, packs: 1, sparePacks: 1 })
  })

  it("the offcut that X leaves is named in Y's row, and X's sheet says where it goes", async () => {
    const { tasks, works, across } = jobOf(two)
    const [left] = planOfWork(works[0]!.work)!.layout.offcuts
    const [laid] = planOfWork(works[1]!.work)!.layout.rows[0]!.runs[0]!.pieces
    expect(laid).toMatchObject({ room: "X", board: 1, source: `X ${left!.mark}` })
    const [x, y] = tasks.map((task, index) => JSON.stringify(floorSheets(task, works[index]!.work)))
    expect(x).toContain(`${left!.mark} (to Y)`)
    expect(y).toContain(`Bring the offcuts marked X ${left!.mark}`)
    const { sheets } = await across()
    expect(JSON.stringify(sheets)).toContain(`"X ${left!.mark}"`)
  })

  it("Y is laid after X", () => {
    const step = jobOf(two).works[1]!.work.steps.find(({ key }) => key === "floors/Y/boards")!
    expect(step.after).toContain("floors/X/boards")
  })
})

describe("the order of a job of four rooms", () => {
  const four = [
    { id: "A", long: 4860, deep: 3950 },
    { id: "B", long: 3900, deep: 2700 },
    { id: "C", long: 2050, deep: 1900 },
    { id: "D", long: 3100, deep: 1500 },
  ]

  it("boards ordered are those that rooms open, and one spare pack for the job; no line is less than nothing", async () => {
    const { alone, works, across } = jobOf(four)
    const { work } = await across()
    const boards = boardsOf(work.results)
    const lines = [...works.map((each) => each.work), work]
      .flatMap(({ quantities }) => quantities)
      .filter((line) => line.product === board.id)
    for (const line of lines) expect(line.gross).toBeGreaterThan(0)
    const gross = lines.reduce((sum, line) => sum + line.gross, 0)
    expect(gross).toBeCloseTo((boards.boards + board.perPack) * 1.86 * 0.189, 9)
    const { packs } = packsFor(board, gross)
    expect(packs[0]!.count).toBe(boards.packs + 1)
    const roomByRoom = alone.reduce((sum, task) => sum + Number(floorWork(task).results.boards), 0)
    expect(boards.boards).toBeLessThanOrEqual(roomByRoom)
    expect(boards.boards).toBeGreaterThanOrEqual(boards.boardsAtLeast!)
  })

  it("no board gives more than it has, over all rooms", () => {
    const { works } = jobOf(four)
    const rooms = works.map(({ room, work }) => ({ id: room.id, layout: planOfWork(work)!.layout }))
    expect(faultsAcross(rooms, 3)).toEqual([])
    const twice = structuredClone(rooms.map(({ id, layout }) => ({ id, layout: { ...layout, frame: null } })))
    const piece = twice[1]!.layout.rows[0]!.runs[0]!.pieces[0]!
    Object.assign(piece, { room: "A", board: 1, from: 0, to: piece.of, low: 0, high: 189 })
    expect(faultsAcross(twice as never, 3)).not.toEqual([])
  })

  it("packs of a mix are made whole once for all rooms", async () => {
    const mix = [
      { length: 2200, perPack: 4 },
      { length: 1820, perPack: 2 },
      { length: 1300, perPack: 2 },
    ]
    const mixed: Product = { ...board, length: 2200, mix }
    const { works, across } = jobOf(four.slice(1), mixed)
    const { work } = await across()
    const boards = boardsOf(work.results)
    const gross = [...works.map((each) => each.work), work]
      .flatMap(({ quantities }) => quantities)
      .filter((line) => line.product === board.id)
      .reduce((sum, line) => sum + line.gross, 0)
    expect(packsFor(mixed, gross).packs[0]!.count).toBe(boards.packs + 1)
    for (const { length, perPack } of mix) {
      const used = works.flatMap((each) =>
        planOfWork(each.work)!.layout.lengths.filter((own) => own === length),
      )
      expect(used.length).toBeLessThanOrEqual(boards.packs * perPack)
    }
  })

  it("rooms without boards are passed over", async () => {
    const staying = floorTask({ input: { finish: "stays" } })
    const { work, sheets } = await floorsAcross(staying.job, [
      { room: staying.room, work: floorWork(staying) },
    ])
    expect(work.results).toEqual({ boards: [] })
    expect(sheets).toEqual([])
  })
})
