import { appendFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { fuzzCase, type Outcome, seedJobs } from "./cases.ts"

/** How many mutated jobs, and from which seed: `FUZZ=10000 npm test -- tests/fuzz` runs them all, `FUZZ_FROM` begins later. */
const count = Number(process.env.FUZZ ?? 25)
const from = Number(process.env.FUZZ_FROM ?? 1)
/** A file that each outcome is added to, one line a job, to watch a long run. */
const log = process.env.FUZZ_LOG

describe("mutated jobs", () => {
  it("come to findings or to a sound pack, never to a crash", { timeout: 0 }, async () => {
    const seeds = await seedJobs()
    const whole = count > 1000
    const outcomes: Outcome[] = []
    for (let seed = from; seed < from + count; seed++) {
      if (log) appendFileSync(log, `${JSON.stringify({ begun: seed })}\n`)
      const outcome = await fuzzCase(seed, seeds, {
        largeOneIn: whole ? 250 : 0,
        pagesOneIn: whole ? 20 : 30,
      })
      if (log) appendFileSync(log, `${JSON.stringify(outcome)}\n`)
      outcomes.push(outcome)
    }
    expect(outcomes.filter(({ wrong }) => wrong.length > 0)).toEqual([])
    // Without both kinds the mutations would prove nothing.
    const share = outcomes.filter(({ came }) => came === "pack").length / outcomes.length
    if (count >= 50) {
      expect(share).toBeGreaterThan(0.05)
      expect(share).toBeLessThan(0.95)
    }
    if (process.env.FUZZ) console.info(said(outcomes))
  })
})

function said(outcomes: readonly Outcome[]): string {
  const packs = outcomes.filter(({ came }) => came === "pack").length
  const slowest = outcomes.toSorted((a, b) => b.took - a.took)[0]
  return `${outcomes.length} mutated jobs from seed ${from}: ${outcomes.length - packs} findings, ${packs} good packs, crashes 0; slowest ${slowest?.took.toFixed(1)} s (seed ${slowest?.seed})`
}
