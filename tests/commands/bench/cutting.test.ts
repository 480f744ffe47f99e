import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, it } from "vitest"
import { benchCutting } from "../../../src/commands/bench/cutting.ts"
import { cuttingFacts, mixedStockFact } from "../../facts/cutting.ts"

it("prints one proven line for each instance of either form, then a summary", async () => {
  const folder = mkdtempSync(join(tmpdir(), "cutting-"))
  const pairs = (items: [number, number][]) => items.map(([length, count]) => ({ length, count }))
  const single = cuttingFacts[0]
  if (single === undefined) throw new Error("facts")
  const several = {
    stocks: mixedStockFact.stocks.map((length) => ({ length, cost: length })),
    kerf: 3,
    items: pairs(mixedStockFact.items),
  }
  writeFileSync(
    join(folder, "a.json"),
    JSON.stringify({ name: "single", stockLength: single.stock, items: pairs(single.items) }),
  )
  writeFileSync(join(folder, "b.json"), JSON.stringify(several))
  const printed: string[] = []
  await benchCutting({ instances: folder, limitSeconds: 5, print: (line) => printed.push(line) })
  rmSync(folder, { recursive: true })
  expect(printed).toHaveLength(3)
  expect(JSON.parse(printed[0] ?? "")).toMatchObject({
    name: "single",
    value: single.value,
    bound: single.value,
    proven: true,
  })
  expect(JSON.parse(printed[1] ?? "")).toMatchObject({
    name: "b",
    value: mixedStockFact.value,
    proven: true,
    ms: expect.any(Number),
  })
  expect(printed[2]).toContain("2 instances, 2 proven")
})
