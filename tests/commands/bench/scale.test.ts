import { describe, expect, it } from "vitest"
import { benchCommand } from "../../../src/commands/bench/bench.ts"
import { benchScale, growth } from "../../../src/commands/bench/scale.ts"

describe("an archive of jobs", () => {
  it("is built in a process of its own, and its time, sheets and peak memory are told", async () => {
    const lines: string[] = []
    const { archives } = await benchScale({ sizes: [1, 2], rooms: 1, print: (line) => lines.push(line) })
    expect(archives.map(({ jobs }) => jobs)).toEqual([1, 2])
    expect(archives[1]!.sheets).toBe(2 * archives[0]!.sheets)
    for (const { seconds, peak } of archives) {
      expect(seconds).toBeGreaterThan(0)
      expect(peak).toBeGreaterThan(50_000_000)
    }
    expect(lines).toHaveLength(3)
  })

  it("grows in time by the power of its figures", () => {
    const by = (power: number) => [1, 10, 100, 1000].map((jobs) => ({ jobs, seconds: 3 * jobs ** power }))
    expect(growth(by(1))).toBeCloseTo(1, 12)
    expect(growth(by(1.3))).toBeCloseTo(1.3, 12)
  })

  it("wants whole numbers of jobs", async () => {
    const quiet = { out: () => {}, err: () => {}, progress: () => {} }
    for (const jobs of ["0", "1,x", "1.5"])
      await expect(benchCommand(["scale", "--jobs", jobs], quiet)).rejects.toThrow("usage")
  })
})
