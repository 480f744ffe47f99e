import { readdirSync, readFileSync } from "node:fs"
import { basename, join } from "node:path"
import { cutPlan } from "../../kernels/cutting/cut-plan.ts"
import type { CuttingProblem } from "../../kernels/cutting/problem.ts"
import { verifyCutPlan } from "../../kernels/cutting/verify-cut-plan.ts"

/** What to measure, for how long, and where to print. */
export interface CuttingBench {
  /** Folder of instances, one JSON file each, with one stock length or with several and their prices. */
  instances: string
  /** Time limit for each instance. */
  limitSeconds: number
  print(line: string): void
}

/** One instance as written: one stock length at cost 1, or several with costs and a kerf. */
export interface CuttingInstance {
  name?: string
  stockLength?: number
  kerf?: number
  stocks?: { length: number; cost: number; available?: number }[]
  items: { length: number; count: number }[]
}

/** What one instance came to; `value` is the number of lengths where there is one stock length, else the cost. */
export interface CuttingLine {
  name: string
  value: number
  bound: number
  proven: boolean
  ms: number
}

/**
 * Plans every instance of a folder in order of file name and prints one JSON line each, then one summary line of text. Each plan is
 * verified before it is printed.
 * @returns the lines
 * @throws Fault on a wrong plan
 */
export async function benchCutting({ instances, limitSeconds, print }: CuttingBench): Promise<CuttingLine[]> {
  const files = readdirSync(instances)
    .filter((file) => file.endsWith(".json"))
    .sort()
  const lines: CuttingLine[] = []
  for (const file of files) {
    const instance: CuttingInstance = JSON.parse(readFileSync(join(instances, file), "utf8"))
    const line = await measured(instance, basename(file, ".json"), limitSeconds)
    print(JSON.stringify(line))
    lines.push(line)
  }
  print(summary(lines))
  return lines
}

/** An instance as a problem of the cutting kernel. */
export function cuttingProblemOf(instance: CuttingInstance): CuttingProblem {
  const stocks = instance.stocks ?? [{ length: instance.stockLength ?? 0, cost: 1 }]
  return {
    kerf: instance.kerf ?? 0,
    stocks: stocks.map((stock, index) => ({ id: `stock-${index + 1}`, ...stock })),
    items: instance.items.map((item, index) => ({ id: `item-${index + 1}`, ...item })),
  }
}

const MS_PER_SECOND = 1000

async function measured(instance: CuttingInstance, file: string, limitSeconds: number): Promise<CuttingLine> {
  const problem = { ...cuttingProblemOf(instance), limitMs: limitSeconds * MS_PER_SECOND }
  const start = performance.now()
  const plan = await cutPlan(problem, () => performance.now())
  const ms = Math.round(performance.now() - start)
  verifyCutPlan(problem, plan)
  return { name: instance.name ?? file, value: plan.cost, bound: plan.bound, proven: plan.proven, ms }
}

function summary(lines: readonly CuttingLine[]): string {
  const times = lines.map((line) => line.ms).sort((a, b) => a - b)
  const proven = lines.filter((line) => line.proven).length
  const median = times[Math.floor(times.length / 2)] ?? 0
  return `cutting: ${lines.length} instances, ${proven} proven, median ${median} ms, slowest ${times.at(-1) ?? 0} ms`
}
