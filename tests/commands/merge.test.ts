import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { WrongUsage } from "../../src/commands/arguments.ts"
import { buildCommand } from "../../src/commands/build.ts"
import { mergeCommand } from "../../src/commands/merge.ts"
import { newCommand } from "../../src/commands/new.ts"
import { filesBelow } from "../../src/press/output-tree.ts"
import { sha256 } from "../../src/press/revisions/fingerprint.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-merge-"))
const jobsDir = join(folder, "jobs")
/** Seven jobs with `JOBS=7`, four unless asked. */
const count = Number(process.env.JOBS ?? 4)
const refs = ["ash", "beech", "cedar", "elm", "fir", "larch", "oak"].slice(0, count)
const part = (name: string | number) => join(folder, `part-${name}`)
const quiet = { out: () => {}, err: () => {}, progress: () => {} }

/** Builds a part of the jobs; without a browser, as paper is the same on any machine and takes long. */
const built = (outputDir: string, shard = { part: 1, of: 1 }) =>
  buildCommand(
    { jobsDir, outputDir, shard, debug: false },
    { terminal: quiet, env: { ...process.env, STOREY_ROD_BROWSER: "/nonexistent" } },
  )

async function merged(...args: string[]) {
  const err: string[] = []
  const status = await mergeCommand(args, { ...quiet, err: (text) => err.push(text) })
  return { status, err }
}

beforeAll(async () => {
  for (const ref of refs) await newCommand([ref, "--jobs", jobsDir], { ...quiet, today: "2027-01-04" })
  await built(part("whole"))
  for (const index of [1, 2, 3]) await built(part(index), { part: index, of: 3 })
}, 120_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const jobsIn = (output: string) =>
  readdirSync(join(output, "print"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== "assets")
    .map(({ name }) => name)
const sums = (output: string) => filesBelow(output).map(({ path, bytes }) => `${path} ${sha256(bytes)}`)

describe("jobs in three parts", () => {
  it("are disjoint, as even as can be, and all of them", () => {
    const parts = [1, 2, 3].map((index) => jobsIn(part(index)))
    expect(parts.map((jobs) => jobs.length)).toEqual(
      [1, 2, 3].map((part) => Math.ceil((count + 1 - part) / 3)),
    )
    expect(parts.flat().sort()).toEqual(refs)
  })

  it("joined in any order, are byte for byte what one build writes, lists and all", async () => {
    const output = join(folder, "joined")
    expect(await merged(part(3), part(1), part(2), "--output", output)).toEqual({ status: 0, err: [] })
    expect(sums(output)).toEqual(sums(part("whole")))
    expect(sums(output).length).toBeGreaterThan(count * 20)
  })

  it("are not joined where a job comes twice or a file was altered, and the last output stands", async () => {
    const output = join(folder, "kept")
    await merged(part(1), "--output", output)
    const before = sums(output)
    const overlap = await merged(part("whole"), part(2), "--output", output)
    expect([overlap.status, overlap.err.length]).toEqual([1, jobsIn(part(2)).length + 1])
    expect(overlap.err[0]).toContain("must not overlap")
    const ref = jobsIn(part(2))[0]!
    const file = join(part(2), "print", ref, "orders.csv")
    const text = readFileSync(file, "utf8")
    writeFileSync(file, text.replace("1", "7"))
    const altered = await merged(part(1), part(2), "--output", output)
    writeFileSync(file, text)
    expect(altered.status).toBe(1)
    expect(altered.err[0]).toContain("orders.csv is not what was built")
    expect(sums(output)).toEqual(before)
  })

  it("need folders that hold an output", async () => {
    await expect(merged()).rejects.toThrow(WrongUsage)
    await expect(merged(jobsDir)).rejects.toThrow(/holds no output/)
    await expect(merged(part(1), "--into", "x")).rejects.toThrow(WrongUsage)
  })
})
