import { describe, expect, it } from "vitest"
import { buildOptions, checkOptions, inShard, newOptions, WrongUsage } from "../../src/commands/arguments.ts"

describe("buildOptions", () => {
  it("has the contract's defaults", () => {
    expect(buildOptions([])).toEqual({
      jobsDir: "jobs",
      outputDir: "output",
      shard: { part: 1, of: 1 },
      debug: false,
    })
  })

  it("reads every option", () => {
    const args = ["--jobs", "a", "--output=b", "--only", "loft", "--shard", "2/5", "--debug"]
    expect(buildOptions(args)).toEqual({
      jobsDir: "a",
      outputDir: "b",
      only: "loft",
      shard: { part: 2, of: 5 },
      debug: true,
    })
  })

  it.each([
    [["--job", "a"]],
    [["loft"]],
    [["--jobs"]],
    [["--jobs", ""]],
    [["--shard", "0/3"]],
    [["--shard", "4/3"]],
    [["--shard", "1"]],
    [["--shard", "1/1e9"]],
    [["--only", "../loft"]],
    [["--only", "Loft"]],
    [["--debug=yes"]],
  ])("does not take %j", (args) => {
    expect(() => buildOptions(args)).toThrow(WrongUsage)
    expect(() => buildOptions(args)).toThrow(/usage: npm run build/)
  })
})

describe("checkOptions and newOptions", () => {
  it("read their options", () => {
    expect(checkOptions(["--jobs", "a", "--only", "loft"])).toEqual({ jobsDir: "a", only: "loft" })
    expect(newOptions(["loft", "--jobs", "a"])).toEqual({ jobsDir: "a", ref: "loft" })
    expect(() => newOptions([])).toThrow(WrongUsage)
    expect(() => newOptions(["a-job", "b-job"])).toThrow(WrongUsage)
    expect(() => newOptions(["../a"])).toThrow(WrongUsage)
  })
})

describe("inShard", () => {
  it("gives disjoint parts that make up the whole, for any number of jobs and parts", () => {
    for (let jobs = 0; jobs <= 12; jobs++) {
      const all = Array.from({ length: jobs }, (_, index) => index)
      for (let of = 1; of <= 7; of++) {
        const parts = Array.from({ length: of }, (_, index) => inShard(all, { part: index + 1, of }))
        expect(parts.flat().toSorted((a, b) => a - b)).toEqual(all)
      }
    }
  })
})
