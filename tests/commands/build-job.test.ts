import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { buildCommand } from "../../src/commands/build.ts"
import { newCommand } from "../../src/commands/new.ts"
import { filesBelow } from "../../src/press/output-tree.ts"
import { sha256 } from "../../src/press/revisions/fingerprint.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-again-"))
const jobsDir = join(folder, "jobs")
const output = join(folder, "output")
const room = join(jobsDir, "ash", "rooms", "g1.yaml")

/** Builds without paper, which any machine can. */
async function build(outputDir = output) {
  const out: string[] = []
  await buildCommand(
    { jobsDir, outputDir, shard: { part: 1, of: 1 }, debug: false },
    {
      terminal: { out: (text) => out.push(text), err: () => {}, progress: () => {} },
      env: { ...process.env, STOREY_ROD_BROWSER: "/nonexistent" },
    },
  )
  const of = (ref: string) => out.find((line) => line.startsWith(`${ref}:`)) ?? ""
  return { ash: of("ash"), elm: of("elm") }
}
const sums = (tree = output) => filesBelow(tree).map(({ path, bytes }) => `${path} ${sha256(bytes)}`)

beforeAll(async () => {
  const quiet = { out: () => {}, err: () => {}, today: "2027-01-04" }
  for (const ref of ["ash", "elm"]) await newCommand([ref, "--jobs", jobsDir], quiet)
  await build()
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe("a second build", () => {
  it("takes over a job in which nothing has changed, byte for byte", async () => {
    const before = sums()
    const said = await build()
    expect(said.ash).toMatch(/unchanged, taken over/)
    expect(said.elm).toMatch(/unchanged, taken over/)
    expect(said.ash).toMatch(/^ash: \d+ sheets/)
    expect(sums()).toEqual(before)
  })

  it("works the changed job out again, the others not, and ends as a build from nothing would", async () => {
    const before = readFileSync(room, "utf8")
    writeFileSync(room, before.replace(/^name: .*$/m, "name: Other room"))
    const said = await build()
    expect(said.ash).not.toMatch(/taken over/)
    expect(said.elm).toMatch(/taken over/)
    await build(join(folder, "fresh"))
    expect(sums()).toEqual(sums(join(folder, "fresh")))
    expect(sums().length).toBeGreaterThan(50)
    writeFileSync(room, before)
  })

  it("makes a job again whose output was touched", async () => {
    await build()
    const before = sums()
    writeFileSync(join(output, "print", "elm", "orders.csv"), "product\n")
    expect((await build()).elm).not.toMatch(/taken over/)
    expect(sums()).toEqual(before)
  })
})
