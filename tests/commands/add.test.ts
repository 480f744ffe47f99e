import { execFile } from "node:child_process"
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { promisify } from "node:util"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { addCommand } from "../../src/commands/add.ts"
import { WrongUsage } from "../../src/commands/arguments.ts"
import { kindNumbers } from "../../src/sheets/numbers.ts"
import { trades } from "../../src/trades/index.ts"

const project = new URL("../..", import.meta.url).pathname
/** With ADDED=1 the copy's types, format, structure and own tests are run too, as a contributor would run them. */
const whole = process.env.ADDED !== undefined

let top: string

beforeAll(() => {
  top = mkdtempSync(join(tmpdir(), "storey-rod-add-"))
  const names = [
    "src",
    "templates",
    "package.json",
    "tsconfig.json",
    ".biome.json",
    ".eleventy.js",
    "jobs",
    "tests",
  ]
  for (const name of names) cpSync(join(project, name), join(top, name), { recursive: true })
  symlinkSync(join(project, "node_modules"), join(top, "node_modules"))
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

async function add(...args: string[]): Promise<string[]> {
  const said: string[] = []
  const terminal = { out: (text: string) => said.push(text), err: () => {}, progress: () => {} }
  expect(await addCommand(args, terminal, top)).toBe(0)
  return said
}

const read = (path: string) => readFileSync(join(top, path), "utf8")

describe("adding to the project", () => {
  it("a trade: its folder and tests, the list, a number, a letter of its own, the editors' schemas", {
    timeout: 120_000,
  }, async () => {
    const said = await add("trade", "shelving")
    expect(said.filter((path) => path.startsWith("src/trades/shelving/"))).toHaveLength(5)
    expect(said.filter((path) => path.startsWith("tests/trades/shelving/"))).toHaveLength(6)
    for (const path of said.filter((each) => each.includes("shelving/")))
      expect(read(path)).not.toContain("{{")
    expect(read("src/trades/index.ts")).toMatch(/ {2}shelving,\n {2}decorating,\n\]/)
    const number = Number(/shelving: (\d+)/.exec(read("src/sheets/numbers.ts"))?.[1])
    expect(Object.values(kindNumbers)).not.toContain(number)
    expect(number).toBeLessThan(50)
    const letter = /letter: "([A-Z])"/.exec(read("src/trades/shelving/index.ts"))?.[1]
    expect(trades.map((trade) => trade.letter)).not.toContain(letter)
    expect(read("jobs/.schema/room.schema.json")).toContain("Shelving in this room.")
  })

  it("a sheet: its file and test, its call, a number of the job's block", async () => {
    await add("sheet", "tool-list")
    expect(read("src/sheets/all-sheets.ts")).toMatch(/ {4}toolListSheet\(result\),\n {2}\]\.filter/)
    const number = Number(/"tool-list": (\d+)/.exec(read("src/sheets/numbers.ts"))?.[1])
    expect(Object.values(kindNumbers)).not.toContain(number)
    expect(number).toBeGreaterThan(50)
  })

  it.each([
    ["trade", "doors"],
    ["sheet", "saw"],
    ["sheet", "escape-route"],
    ["trade", "Loud Name"],
    ["trade", "../outside"],
    ["trade"],
    ["room", "attic"],
  ])("is refused for %s %s, and nothing is written", async (...args) => {
    const before = read("src/sheets/numbers.ts")
    await expect(addCommand(args, { out: () => {}, err: () => {}, progress: () => {} }, top)).rejects.toThrow(
      WrongUsage,
    )
    expect(read("src/sheets/numbers.ts")).toBe(before)
  })

  it.runIf(whole)(
    "is green at once: types, format, structure and the new tests",
    { timeout: 0 },
    async () => {
      const run = promisify(execFile)
      const bin = (name: string) => join(top, "node_modules", ".bin", name)
      await run(bin("tsc"), ["--noEmit"], { cwd: top })
      await run(bin("biome"), ["check", "src", "tests"], { cwd: top })
      const own = [
        "tests/structure.test.ts",
        "tests/trades/shelving",
        "tests/trades/index",
        "tests/sheets/tool-list",
      ]
      const more = [
        "tests/sheets/numbers",
        "tests/sheets/all-sheets",
        "tests/rulebook-of",
        "tests/intake/json-schemas",
      ]
      const args = ["run", "-c", "tests/vitest.config.ts", ...own, ...more]
      const { stdout } = await run(bin("vitest"), args, { cwd: top, maxBuffer: 1e8 })
      expect(stdout).toMatch(/Tests.*passed/)
    },
  )
})
