import { execFile } from "node:child_process"
import { rmSync } from "node:fs"
import { join } from "node:path"
import { promisify } from "node:util"
import { afterAll, describe, expect, it } from "vitest"
import { copyOfJob, ownFolder, ref, top } from "../whole/job-copy.ts"

const folder = ownFolder()
afterAll(() => rmSync(folder, { recursive: true, force: true }))

interface Ended {
  status: number
  stdout: string
  stderr: string
}

/** Runs a command as npm does, in a process of its own. */
async function run(...args: string[]): Promise<Ended> {
  const all = ["node_modules/tsx/dist/cli.mjs", "src/commands/run.ts", ...args]
  try {
    return { status: 0, ...(await promisify(execFile)(process.execPath, all, { cwd: top })) }
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string }
    return { status: code, stdout, stderr }
  }
}

/** A line of a stack trace. */
const trace = /^\s+at /m

describe("the commands from outside", () => {
  it("end with 2 on wrong usage, in plain words on the error outlet", async () => {
    const { status, stdout, stderr } = await run("bild")
    expect(status).toBe(2)
    expect(stderr).toContain('unknown command "bild"')
    expect(stderr).toContain("build, check, dev, new")
    expect(stderr).not.toMatch(trace)
    expect(stdout).toBe("")
  }, 180_000)

  it("end with 1 on a wrong job, with file, line and column", async () => {
    const jobs = copyOfJob(join(folder, "wrong"), {
      changes: [{ file: `${ref}/rooms/g1.yaml`, find: "use: living", put: "use: lving" }],
    })
    const { status, stderr } = await run("check", "--jobs", jobs)
    expect(status).toBe(1)
    expect(stderr).toMatch(/garden-room\/rooms\/g1\.yaml:5:6: /)
    expect(stderr).not.toMatch(trace)
  }, 180_000)
})
