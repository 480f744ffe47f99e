import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { workOut } from "../../../src/build.ts"
import { archiveOfJobs } from "../../../src/commands/bench/archive-of-jobs.ts"
import { benchCommand } from "../../../src/commands/bench/bench.ts"
import { benchScale, growth } from "../../../src/commands/bench/scale.ts"
import { checkCommand } from "../../../src/commands/check.ts"
import { trades } from "../../../src/trades/index.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-archive-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe("an archive of jobs", () => {
  it("holds jobs of so many rooms, no two alike, without errors", async () => {
    archiveOfJobs({ from: "jobs", ref: "garden-room", to: folder, jobs: 10, rooms: 2 })
    const refs = readdirSync(folder).filter((name) => !name.endsWith(".yaml"))
    expect(refs).toEqual([
      "job-01",
      "job-02",
      "job-03",
      "job-04",
      "job-05",
      "job-06",
      "job-07",
      "job-08",
      "job-09",
      "job-10",
    ])
    const read = (ref: string, file: string) => readFileSync(join(folder, ref, file), "utf8")
    expect(new Set(refs.map((ref) => /^code: (.*)$/m.exec(read(ref, "job.yaml"))?.[1])).size).toBe(10)
    expect(new Set(refs.map((ref) => read(ref, "rooms/g1.yaml"))).size).toBe(10)
    expect(readdirSync(join(folder, "job-07", "rooms"))).toEqual(["g1.yaml", "g2.yaml"])
    const said: string[] = []
    const write = (text: string) => void said.push(text)
    expect(
      await checkCommand(["--jobs", folder], {
        out: write,
        err: write,
        trades,
        examine: async (job) => (await workOut(job, trades)).findings,
      }),
    ).toBe(0)
    expect(said.join("\n")).toContain("10 jobs read: 0 errors, 0 warnings")
  })

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
