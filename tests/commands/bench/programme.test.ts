import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { benchProgramme } from "../../../src/commands/bench/programme.ts"

// One crew of 2. Worked by hand: b and c each hold 2, so they follow one another: a 1, b 3, c 2 in any order, d 1 last: 7.
const project = {
  name: "four jobs",
  capacities: [2],
  jobs: [
    { id: 1, duration: 1, demand: [1], successors: [2, 3] },
    { id: 2, duration: 3, demand: [2], successors: [4] },
    { id: 3, duration: 2, demand: [2], successors: [4] },
    { id: 4, duration: 1, demand: [0], successors: [] },
  ],
}

describe("bench of the programme", () => {
  const folder = mkdtempSync(join(tmpdir(), "bench-"))
  beforeAll(() => writeFileSync(join(folder, "four.json"), JSON.stringify(project)))
  afterAll(() => rmSync(folder, { recursive: true }))

  it("prints one line for each project, then a summary", () => {
    const lines: string[] = []
    benchProgramme({ instances: folder, limitSeconds: 1, print: (line) => lines.push(line) })
    expect(lines).toHaveLength(2)
    const { ms, ...rest } = JSON.parse(lines[0] ?? "")
    expect(rest).toEqual({ name: "four jobs", value: 7, bound: 7, proven: true })
    expect(Number.isInteger(ms)).toBe(true)
    expect(Object.keys(JSON.parse(lines[0] ?? ""))).toEqual(["name", "value", "bound", "proven", "ms"])
    expect(lines[1]).toContain("1 projects, 1 proven shortest")
  })
})
