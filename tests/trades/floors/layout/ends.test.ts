import { describe, expect, it } from "vitest"
import { type EndLimits, fillRuns, type Run } from "../../../../src/trades/floors/layout/ends.ts"
import { seeded } from "../generated.ts"
import { fewestBoards } from "./exhaustive.ts"

const limits: EndLimits = { boardLength: 1860, kerf: 3, leastEnd: 300, stagger: 300 }
const run = (row: number, right: number): Run => ({ row, name: String(row), left: 0, right })

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

describe("against exhaustive search", () => {
  const instances = 200
  it(`${instances} small floors: never fewer boards than the least, nearly always as few`, () => {
    const over: number[] = []
    for (let seed = 1; seed <= instances; seed++) {
      const { runs, small } = smallFloor(seed)
      const exact = fewestBoards(runs, small, 50)
      const plan = fillRuns(runs, small)
      expect(plan.breach).toBe(0)
      over.push(plan.boards - exact)
    }
    expect(Math.min(...over)).toBe(0)
    expect(Math.max(...over)).toBeLessThanOrEqual(1)
    expect(over.filter((more) => more === 0).length).toBeGreaterThanOrEqual(instances * 0.97)
  })
})

function smallFloor(seed: number): { runs: Run[]; small: EndLimits } {
  const random = seeded(seed * 7)
  const small = { boardLength: 1000, kerf: random() < 0.5 ? 0 : 50, leastEnd: 200, stagger: 200 }
  const length = () => 300 + 50 * Math.floor(random() * 46)
  const rows = 2 + Math.floor(random() * 2.2)
  const usual = length()
  const runs = Array.from({ length: rows }, (_, index) => run(index + 1, random() < 0.6 ? usual : length()))
  return { runs, small }
}
