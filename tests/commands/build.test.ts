import { existsSync, rmSync } from "node:fs"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { buildCommand } from "../../src/commands/build.ts"
import { ownFolder } from "../whole/job-copy.ts"

const folder = ownFolder()
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** What a whole build makes is tested under `whole/`; here is what it does when there is nothing to build. */
describe("a build without jobs", () => {
  it("says so, ends with 1 and writes nothing", async () => {
    const err: string[] = []
    const outputDir = join(folder, "output")
    const status = await buildCommand(
      { jobsDir: join(folder, "nowhere"), outputDir, shard: { part: 1, of: 1 }, debug: false },
      { terminal: { out: () => {}, err: (text) => err.push(text), progress: () => {} }, env: {} },
    )
    expect(status).toBe(1)
    expect(err.join("\n")).toContain("nowhere")
    expect(err.at(-1)).toContain("Nothing was built")
    expect(existsSync(outputDir)).toBe(false)
  })
})
