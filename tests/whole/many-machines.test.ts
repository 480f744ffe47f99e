import { execFile } from "node:child_process"
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { promisify } from "node:util"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { archiveOfJobs } from "../../src/commands/bench/archive-of-jobs.ts"
import { filesBelow } from "../../src/press/output-tree.ts"
import { sha256 } from "../../src/press/revisions/fingerprint.ts"

const top = new URL("../..", import.meta.url).pathname
const folder = mkdtempSync(join(tmpdir(), "storey-rod-machines-"))
const jobs = join(folder, "jobs")
const parts = 2
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** The shell texts of the README's section on many machines, by the comment that each begins with. */
const texts = new Map(
  [...readFileSync(join(top, "README.md"), "utf8").matchAll(/```sh\n# (.*)\n([\s\S]*?)```/g)].map(
    ([, says = "", text = ""]) => [says, text],
  ),
)

/** Runs a text as a task would, in a folder of its own choice; without a browser a build ends with 3, the site written. */
async function run(says: string, env: Record<string, string>): Promise<number> {
  const text = texts.get(says)!.replaceAll("npm run ", `npm --prefix "${top}" run --silent `)
  // npm starts in the project's folder; what a task names is named from its own.
  const named = text
    .replaceAll('"part-', `"${folder}/part-`)
    .replaceAll(" part-*", ` ${folder}/part-*`)
    .replace("--output output", `--output ${folder}/output`)
  const task = { ...process.env, STOREY_ROD_BROWSER: "/no browser", JOBS: jobs, PARTS: String(parts), ...env }
  try {
    await promisify(execFile)("sh", ["-c", named], { cwd: folder, env: task })
    return 0
  } catch (error) {
    return (error as { code: number }).code
  }
}

const sums = (output: string) => filesBelow(output).map(({ path, bytes }) => `${path} ${sha256(bytes)}`)

describe("the README's texts for an archive over many machines", () => {
  beforeAll(async () => {
    archiveOfJobs({ from: join(top, "jobs"), ref: "garden-room", to: jobs, jobs: 3, rooms: 1 })
    expect(await run("in task $PART of $PARTS", { PART: "1", PARTS: "1" })).toBe(3)
  })
  const whole = join(folder, "part-1")

  it("are there", () => {
    expect([...texts.keys()]).toEqual([
      "in task $PART of $PARTS",
      "when all parts are there",
      "in the task with the index $INDEX of $PARTS",
      "when the array has ended",
    ])
  })

  it("as an indexed batch job write parts that join to what one build writes", async () => {
    const shared = join(folder, "shared")
    mkdirSync(shared)
    for (const index of [0, 1])
      expect(
        await run("in the task with the index $INDEX of $PARTS", { INDEX: String(index), SHARED: shared }),
      ).toBe(3)
    expect(await run("when the array has ended", { SHARED: shared })).toBe(0)
    expect(sums(join(shared, "output"))).toEqual(sums(whole))
  })

  it("as a matrix of tasks do so too", async () => {
    const before = sums(whole)
    for (const part of [1, 2]) expect(await run("in task $PART of $PARTS", { PART: String(part) })).toBe(3)
    expect(await run("when all parts are there", {})).toBe(0)
    expect(sums(join(folder, "output"))).toEqual(before)
  })
})
