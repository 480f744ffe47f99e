import { describe, expect, it } from "vitest"
import type { EndLimits } from "../../../../src/trades/floors/layout/end-plan.ts"
import { fillRuns } from "../../../../src/trades/floors/layout/ends.ts"
import { fewestBoards, rippedRun as ripped, plainRun as run, smallFloor } from "./exhaustive.ts"

const limits: EndLimits = { boardLength: 1860, boardWidth: 189, kerf: 3, leastEnd: 300, stagger: 300 }
describe("runs filled with boards, by hand", () => {
  it("two rows of 900 come from one board of 1,860: 900 + 3 + 900", () => {
    const plan = fillRuns([run(1, 900), run(2, 900)], limits)
    expect(plan).toMatchObject({ boards: 1, breach: 0 })
    expect(plan.pieces.flat().map((piece) => piece.role)).toEqual(["single", "single"])
  })

  it("two rows of 930 do not: the saw takes 3", () => {
    expect(fillRuns([run(1, 930), run(2, 930)], limits).boards).toBe(2)
    expect(fillRuns([run(1, 930), run(2, 930)], { ...limits, kerf: 0 }).boards).toBe(1)
  })

  it("a row of 2,000 takes 1,860 and a piece too short, so both are cut", () => {
    const [pieces] = fillRuns([run(1, 2000)], limits).pieces
    expect(pieces!.map((piece) => piece.role)).toEqual(["start", "finish"])
    for (const piece of pieces!) expect(piece.right - piece.left).toBeGreaterThanOrEqual(300)
  })

  it("what a finish leaves begins a later row: 2,760 and 2,760 from 3 boards", () => {
    const plan = fillRuns([run(1, 2760), run(2, 2760)], limits)
    expect(plan).toMatchObject({ boards: 3, breach: 0 })
  })

  it("with nothing to lay, nothing is bought", () => {
    expect(fillRuns([], limits)).toMatchObject({ boards: 0, pieces: [], offcuts: [] })
  })
})

describe("rips of a first and a last row", () => {
  /* 90 + 3 + 90 = 183 of 189: the strip that row 1 leaves keeps its groove and lays row 2. */
  it("one board gives both where their widths allow", () => {
    const rows = [
      ripped(1, 1860, { keeps: "tongue", width: 90 }),
      run(2, 1860),
      ripped(3, 1860, { keeps: "groove", width: 90 }),
    ]
    const plan = fillRuns(rows, limits)
    expect(plan).toMatchObject({ boards: 2, bound: 2, breach: 0 })
    expect(plan.pieces[2]![0]!.source).toMatch(/^1G/)
    expect(plan.pieces[2]![0]).toMatchObject({ board: plan.pieces[0]![0]!.board, low: 0, high: 90 })
  })

  it("94 and 94 do not: the saw takes 3", () => {
    const strip = (keeps: "groove" | "tongue") => ({ keeps, width: 94 })
    const rows = [ripped(1, 1800, strip("tongue")), ripped(2, 1800, strip("groove"))]
    expect(fillRuns(rows, limits)).toMatchObject({ boards: 2, bound: 2 })
    expect(fillRuns(rows, { ...limits, kerf: 1 })).toMatchObject({ boards: 1, bound: 1 })
  })

  it("two strips that both keep the groove never come of one board", () => {
    const strip = { keeps: "groove" as const, width: 60 }
    expect(fillRuns([ripped(1, 1800, strip), ripped(2, 1800, strip)], limits).boards).toBe(2)
  })
})

/** For many more instances than by default. */
const longRun = 4 * 3600 * 1000

describe("against exhaustive search", () => {
  const instances = Math.max(200, Number(process.env.GENERATED ?? 0))
  const first = Number(process.env.FROM ?? 1)
  it(
    `${instances} small floors, a third with rips: as few boards as the least, and a bound that is none too high`,
    () => {
      const over: number[] = []
      const aboveBound: number[] = []
      for (let seed = first; seed < first + instances; seed++) {
        const { rows, small } = smallFloor(seed)
        const exact = fewestBoards(rows, small, 50)
        const plan = fillRuns(
          rows.map((row) => row.run),
          small,
        )
        expect(plan.breach).toBe(0)
        over.push(plan.boards - exact)
        aboveBound.push(exact - plan.bound)
      }
      expect(Math.min(...aboveBound)).toBeGreaterThanOrEqual(0)
      expect(over.filter((more) => more !== 0)).toEqual([])
    },
    longRun,
  )
})
