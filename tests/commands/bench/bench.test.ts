import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { WrongUsage } from "../../../src/commands/arguments.ts"
import { benchCommand } from "../../../src/commands/bench/bench.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-bench-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const out: string[] = []
const terminal = { out: (text: string) => out.push(text), err: () => {}, progress: () => {} }

describe("a bench by name", () => {
  it.each([[["nothing", "--instances", "x"]], [["cutting"]], [["nothing"]], [["joinery", "--limit", "0"]]])(
    "%j is wrong usage",
    async (args) => {
      await expect(benchCommand(args, terminal)).rejects.toThrow(WrongUsage)
    },
  )

  it("runs over the instances of a folder and prints a line of JSON for each", async () => {
    const jobs = [
      { id: 1, duration: 2, demand: [1], successors: [2] },
      { id: 2, duration: 3, demand: [1], successors: [] },
    ]
    writeFileSync(join(folder, "two.json"), JSON.stringify({ name: "two in a row", capacities: [1], jobs }))
    expect(await benchCommand(["programme", "--instances", folder, "--limit", "1"], terminal)).toBe(0)
    expect(JSON.parse(out[0] ?? "")).toMatchObject({ name: "two in a row", value: 5, bound: 5, proven: true })
  })

  it("measures the cutting kernel over a folder in the same form", async () => {
    const one = mkdtempSync(join(folder, "cutting-"))
    writeFileSync(
      join(one, "three.json"),
      JSON.stringify({ name: "three", stockLength: 10, items: [{ length: 4, count: 3 }] }),
    )
    out.length = 0
    expect(await benchCommand(["cutting", "--instances", one, "--limit", "1"], terminal)).toBe(0)
    expect(JSON.parse(out[0] ?? "")).toMatchObject({ name: "three", value: 2, bound: 2, proven: true })
  })
})
