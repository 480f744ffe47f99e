import { execFile } from "node:child_process"
import { existsSync, mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { promisify } from "node:util"
import { afterAll, expect, it } from "vitest"
import { archiveOfJobs } from "../../../src/commands/bench/archive-of-jobs.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-scale-build-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it("builds the site and the data of a folder of jobs and says, on one line, its seconds and its peak memory in bytes", async () => {
  archiveOfJobs({ from: "jobs", ref: "garden-room", to: join(folder, "jobs"), jobs: 1, rooms: 1 })
  const program = "src/commands/bench/scale-build.ts"
  const words = ["--import", "tsx", program, join(folder, "jobs"), join(folder, "output")]
  const { stdout } = await promisify(execFile)(process.execPath, words)
  const { seconds, peak } = JSON.parse(stdout.trim())
  expect(seconds).toBeGreaterThan(0)
  expect(peak).toBeGreaterThan(50_000_000)
  expect(existsSync(join(folder, "output", "print", "job-1", "manifest.json"))).toBe(true)
  expect(existsSync(join(folder, "output", "print", "job-1", "job.pdf"))).toBe(false)
})
