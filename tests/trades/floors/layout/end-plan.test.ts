import { describe, expect, it } from "vitest"
import { type EndLimits, type Run, same } from "../../../../src/trades/floors/layout/end-plan.ts"
import { fillRuns } from "../../../../src/trades/floors/layout/ends.ts"

const limits: EndLimits = { boardLength: 1860, boardWidth: 189, kerf: 3, leastEnd: 300, stagger: 300 }
const runs = [3200, 2900, 3350, 700].map(
  (right, index): Run => ({ row: index + 1, name: `${index + 1}`, left: 0, right, profile: null }),
)

describe("a plan of runs filled", () => {
  const plan = fillRuns(runs, limits)

  it("tells the pieces run by run, joined end to end from wall to wall", () => {
    plan.pieces.forEach((pieces, index) => {
      expect(pieces[0]!.left).toBe(0)
      expect(Math.abs(pieces.at(-1)!.right - runs[index]!.right)).toBeLessThan(same)
      pieces.slice(1).forEach((piece, before) => {
        expect(Math.abs(piece.left - pieces[before]!.right)).toBeLessThan(same)
      })
    })
  })

  it("numbers boards without a gap, and says where each offcut came from before it is used", () => {
    const numbers = new Set(plan.pieces.flat().map((piece) => piece.board))
    expect([...numbers].sort((a, b) => a - b)).toEqual(
      Array.from({ length: plan.boards }, (_, index) => index + 1),
    )
    plan.pieces.forEach((pieces, index) => {
      for (const { source } of pieces)
        if (source) expect(Number.parseInt(source, 10)).toBeLessThanOrEqual(index + 1)
    })
  })
})
