import { expect, it } from "vitest"
import { cutPlan } from "../../../src/kernels/cutting/cut-plan.ts"
import type { CutBar, CutPlan } from "../../../src/kernels/cutting/problem.ts"
import { verifyCutPlan } from "../../../src/kernels/cutting/verify-cut-plan.ts"
import { singleStock } from "./problems.ts"

const problem = {
  ...singleStock(2400, 3, [
    [1100, 2],
    [700, 1],
  ]),
  keepFrom: 300,
}
const first = (plan: CutPlan) => plan.bars[0] as CutBar

it.each<[string, string, (plan: CutPlan) => void]>([
  ["a piece twice", "as often as wanted", (plan) => plan.bars.push({ ...first(plan) })],
  ["a piece missing", "make its length", (plan) => first(plan).pieces.pop()],
  ["an unknown piece", "only pieces of the problem", (plan) => first(plan).pieces.push("nothing")],
  [
    "an unknown stock",
    "is a stock of the problem",
    (plan) => Object.assign(first(plan), { stockId: "nothing" }),
  ],
  ["an overfull bar", "not overfull", (plan) => first(plan).pieces.push("item-0", "item-0")],
  [
    "a longer offcut",
    "make its length",
    (plan) => Object.assign(first(plan), { offcut: first(plan).offcut + 1 }),
  ],
  [
    "a kerf left out",
    "kerf",
    (plan) => Object.assign(first(plan), { offcut: first(plan).offcut + 3, kerfs: first(plan).kerfs - 3 }),
  ],
  ["a wrong cost", "sum of the bars", (plan) => Object.assign(plan, { cost: plan.cost + 1 })],
  ["a bound above the cost", "bound", (plan) => Object.assign(plan, { bound: plan.cost + 1 })],
  ["a proof without a bound", "proven", (plan) => Object.assign(plan, { bound: 0 })],
  [
    "a wrong keep mark",
    "keeps its offcut",
    (plan) => Object.assign(first(plan), { keep: !first(plan).keep }),
  ],
  [
    "a short piece said to be too long",
    "longer than any stock",
    (plan) => {
      plan.bars = plan.bars.filter((bar) => !bar.pieces.includes("item-1"))
      const open = problem.items.map(({ id, length, count }) => ({
        itemId: id,
        length,
        count: count - plan.bars.flatMap((bar) => bar.pieces).filter((piece) => piece === id).length,
        reason: "longer-than-any-stock" as const,
      }))
      plan.unplaced = open.filter(({ count }) => count > 0)
      plan.cost = plan.bars.length
      plan.lengths = plan.bars.length
      plan.bound = plan.cost
    },
  ],
])("refuses %s", async (_, words, spoil) => {
  const plan = structuredClone(await cutPlan(problem))
  verifyCutPlan(problem, plan)
  spoil(plan)
  expect(() => verifyCutPlan(problem, plan)).toThrow(words)
})

it("refuses more bars than there is stock", async () => {
  const plan = await cutPlan(problem)
  const limited = { ...problem, stocks: problem.stocks.map((stock) => ({ ...stock, available: 1 })) }
  expect(() => verifyCutPlan(limited, plan)).toThrow("overdrawn")
})
