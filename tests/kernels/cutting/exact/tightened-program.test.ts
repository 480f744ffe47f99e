import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { coverProgram } from "../../../../src/kernels/cutting/exact/cover-program.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { solver } from "../../../../src/kernels/cutting/exact/master.ts"
import { worthwhilePatterns } from "../../../../src/kernels/cutting/exact/pattern-enumeration.ts"
import { patternProgram } from "../../../../src/kernels/cutting/exact/pattern-program.ts"
import { seeded } from "../../../../src/kernels/cutting/exact/seeded.ts"
import { tightenedProgram } from "../../../../src/kernels/cutting/exact/tightened-program.ts"

/** Pieces of a few rooms over three priced lengths. */
function priced(seed: number) {
  const random = seeded(seed)
  const items = Array.from({ length: 10 }, (_, at) => ({
    id: `p${at}`,
    length: Math.round(300 + 2500 * random()),
    count: 1 + Math.floor(1.4 * random()),
  }))
  const stocks = [
    { id: "a", length: 3000, cost: 115 },
    { id: "b", length: 4200, cost: 159 },
    { id: "c", length: 5400, cost: 208 },
  ]
  return cuttingModel({ kerf: 3, stocks, items }).model
}

it("raises the bound above the plain program's on many cases and above the best plan's cost on none, and keeps what that plan needs", async () => {
  const highs = await solver()
  let raised = 0
  for (let seed = 1; seed <= 25; seed++) {
    const model = priced(seed)
    const free = {
      bound: 0,
      prices: new Float64Array(model.widths.length),
      scale: 1,
      charges: model.stocks.map(() => 0),
    }
    const columns = worthwhilePatterns(model, free, 1e6, 20_000, new Effort(60_000))
    if (columns === undefined) continue
    const all = { atMost: 100_000, target: 0 }
    const best = await patternProgram(model, columns, all, new Effort(60_000))
    expect(best.complete).toBe(true)
    const cost =
      best.plan?.reduce((sum, { stock, times }) => sum + times * (model.stocks[stock]?.cost ?? 0), 0) ?? 0
    const plain = highs.createModel(coverProgram(model, columns, highs.infinity))
    plain.options.set({ output_flag: false })
    plain.run()
    const root = tightenedProgram(highs, model, columns, cost, new Effort(60_000))
    expect(root?.bound).toBeLessThanOrEqual(cost)
    if ((root?.bound ?? 0) > plain.getObjectiveValue() + 1e-3) raised++
    plain.dispose()
    const kept = await patternProgram(model, root?.columns ?? [], all, new Effort(60_000))
    const again = kept.plan?.reduce(
      (sum, { stock, times }) => sum + times * (model.stocks[stock]?.cost ?? 0),
      0,
    )
    expect(again).toBe(cost)
  }
  expect(raised).toBeGreaterThan(3)
})
