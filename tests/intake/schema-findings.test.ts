import { describe, expect, it } from "vitest"
import { z } from "zod"
import { findingText } from "../../src/intake/finding-text.ts"
import { checkedBy, valueAt } from "../../src/intake/schema-findings.ts"
import { yamlFromText } from "../../src/intake/yaml-file.ts"

const schema = z.strictObject({
  length: z.number().positive().meta({ description: "Length in mm." }),
  turn: z.union([z.enum(["right", "left"]), z.number()]).default("right"),
  note: z.string().optional(),
})

const said = (text: string) => checkedBy(yamlFromText("f.yaml", text), schema).findings.map(findingText)

describe("checkedBy", () => {
  it("gives the data with defaults", () => {
    expect(checkedBy(yamlFromText("f.yaml", "length: 2400\n"), schema)).toEqual({
      data: { length: 2400, turn: "right" },
      findings: [],
    })
  })

  it("answers a file of any size in short", () => {
    const unknown = Array.from({ length: 5000 }, (_, index) => `k${index}: 1`).join("\n")
    const long = said(`length: 1\n${unknown}\n`)
    expect(long.length).toBeLessThan(100)
    expect(long.at(-1)).toContain("4960 more")
    const list = z.array(z.number())
    const items = checkedBy(yamlFromText("f.yaml", "- x\n".repeat(5000)), list).findings.map(findingText)
    expect(items.length).toBeLessThan(400)
    expect(items.at(-1)).toContain("4700 more")
  })

  it("says what stood there, what was expected and how to mend it", () => {
    expect(said("lenght: 2400\n")).toEqual([
      "f.yaml:1:1: 'lenght' is not known here (expected 'length'; write length)",
    ])
    expect(said('length: "2,400 mm"\n')).toEqual([
      "f.yaml:1:9: text '2,400 mm' is written (expected a number: Length in mm; write 2400 alone, without quotes, comma or unit)",
    ])
    expect(said("length: 1\nnote: 1.10\n")).toEqual([
      `f.yaml:2:7: 1.10 is written (expected text; write "1.10" in quotes)`,
    ])
    expect(said("length: 1\nturn: rigth\n")).toEqual([
      "f.yaml:2:7: text 'rigth' is written (expected one of right, left, a number; write right)",
    ])
  })

  it("holds a part of a file against a schema", () => {
    const yaml = yamlFromText("f.yaml", "part:\n  length: long\n")
    expect(checkedBy(yaml, schema, ["part"]).findings[0]).toMatchObject({
      at: { path: ["part", "length"] },
      place: { line: 2, column: 11 },
    })
  })
})

describe("valueAt", () => {
  it("finds nothing that was not written", () => {
    expect(valueAt({ a: [1] }, ["a", 0])).toBe(1)
    expect(valueAt({}, ["constructor"])).toBeUndefined()
    expect(valueAt("text", ["length"])).toBeUndefined()
  })
})
