import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, it } from "vitest"
import { workOut } from "../../../src/build.ts"
import { archiveOfJobs } from "../../../src/commands/bench/archive-of-jobs.ts"
import { checkCommand } from "../../../src/commands/check.ts"
import { trades } from "../../../src/trades/index.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-archive-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

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
