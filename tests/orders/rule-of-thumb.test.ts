import { describe, expect, it } from "vitest"
import type { CutBar } from "../../src/kernels/cutting/problem.ts"
import { ruleOfThumb } from "../../src/orders/rule-of-thumb.ts"
import { joineryRules } from "../../src/trades/joinery/rules.ts"
import type { Piece } from "../../src/trades/trade.ts"
import { lengthProduct } from "../fixtures/products.ts"
import { rulesOf } from "../fixtures/rooms.ts"

const bar = (length: number, inHand = false): CutBar => ({
  stockId: String(length),
  length,
  cost: 0,
  inHand,
  pieces: [],
  kerfs: 0,
  endTrim: 0,
  offcut: 0,
  keep: false,
})
const list = (bars: CutBar[], run: number) => ({
  product: lengthProduct,
  pieces: [{ length: run } as Piece],
  plan: { bars, unplaced: [], cost: 0, bound: 0, lengths: bars.length, proven: true, fewestProven: true },
  cutBelow: null,
  spares: null,
})
const rules = rulesOf(joineryRules)

describe("ordering by rule of thumb", () => {
  // 16,000 and 10 % are 17,600: five of 4,200 at 26.10; the plan took four and one of 2,100 at 13.20
  it("adds a waste in per cent and rounds up to whole lengths of the kind the plan buys most of", () => {
    const thumb = ruleOfThumb(list([bar(4200), bar(4200), bar(4200), bar(4200), bar(2100)], 16_000), rules)!
    expect(thumb).toMatchObject({ percent: 10, length: 4200, lengths: 5, planLengths: 5, planMetres: 18.9 })
    expect(thumb.cost.toFixed(2)).toBe("130.50")
    expect(thumb.planCost.toFixed(2)).toBe("117.60")
  })

  it("takes off what is in hand", () => {
    // 8,000 and 10 % less 4,200 in hand are 4,600: two of 4,200
    expect(ruleOfThumb(list([bar(4200, true), bar(4200)], 8000), rules)?.lengths).toBe(2)
  })

  it("says nothing where nothing is bought", () => {
    expect(ruleOfThumb(list([bar(4200, true)], 3000), rules)).toBeNull()
  })
})
