import { expect, it } from "vitest"
import { bestFilling } from "../../../../src/kernels/cutting/exact/bar-filling.ts"
import { Knapsack } from "../../../../src/kernels/cutting/exact/knapsack.ts"
import { seeded } from "../../../../src/kernels/cutting/exact/seeded.ts"

/** Best value by trying every count of every type. */
function byTrial(widths: number[], values: number[], available: number[], room: number, type = 0): number {
  if (type === widths.length) return 0
  let best = 0
  for (
    let count = 0;
    count <= (available[type] as number) && count * (widths[type] as number) <= room;
    count++
  ) {
    best = Math.max(
      best,
      count * (values[type] as number) +
        byTrial(widths, values, available, room - count * (widths[type] as number), type + 1),
    )
  }
  return best
}

it("finds the best filling of every capacity, by table and by search alike", () => {
  const random = seeded(3)
  const below = (top: number) => 1 + Math.floor(random() * top)
  for (let turn = 0; turn < 300; turn++) {
    const widths = Array.from({ length: 5 }, () => below(20))
    const values = widths.map(() => below(30) - 1)
    const available = widths.map(() => below(4) - 1)
    const knapsack = new Knapsack(widths, 40)
    knapsack.solve(values, available)
    for (const capacity of [0, 7, 23, 40]) {
      const best = byTrial(widths, values, available, capacity)
      expect(knapsack.value(capacity)).toBe(best)
      const counts = knapsack.counts(capacity)
      expect(counts.reduce((sum, count, type) => sum + count * (values[type] as number), 0)).toBe(best)
      expect(
        counts.reduce((sum, count, type) => sum + count * (widths[type] as number), 0),
      ).toBeLessThanOrEqual(capacity)
      counts.forEach((count, type) => {
        expect(count).toBeLessThanOrEqual(available[type] as number)
      })
      expect(bestFilling(widths, { values, available, capacity, steps: 1e6 })).toMatchObject({
        value: best,
        exact: true,
      })
    }
  }
})
