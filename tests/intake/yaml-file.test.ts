import { describe, expect, it } from "vitest"
import { findingIn, yamlFromText } from "../../src/intake/yaml-file.ts"

describe("yamlFromText", () => {
  // YAML 1.2.2 core schema, section 10.3.2: y, yes, on and 0-led digits are no booleans and no octal numbers.
  it("reads YAML 1.2", () => {
    const { value, findings } = yamlFromText("f.yaml", "a: yes\nb: off\nc: 2027-03-01\nd: 12:30\n")
    expect(value).toEqual({ a: "yes", b: "off", c: "2027-03-01", d: "12:30" })
    expect(findings).toEqual([])
  })

  it("says that 010 is 10 and not 8", () => {
    const { findings } = yamlFromText("f.yaml", "a: 010\n")
    expect(findings[0]).toMatchObject({ code: "number-form", place: { file: "f.yaml", line: 1, column: 4 } })
    expect(findings[0]?.message).toContain("read as 10")
  })

  it("keeps the first of two equal keys, and the order of keys", () => {
    const { value } = yamlFromText("f.yaml", "b: 1\na: 2\nb: 3\n")
    expect(JSON.stringify(value)).toBe('{"b":1,"a":2}')
  })

  it("never reaches an object's ancestor", () => {
    const { value } = yamlFromText("f.yaml", "__proto__: { stolen: true }\na: 1\n")
    expect(value).toEqual({ a: 1 })
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype)
    expect(({} as Record<string, unknown>).stolen).toBeUndefined()
  })

  it("takes as many keys as a file can hold", () => {
    const many = Array.from({ length: 30_000 }, (_, index) => `k${index}: 1`).join("\n")
    expect(yamlFromText("f.yaml", many).findings).toEqual([])
  })
})

describe("findingIn", () => {
  const yaml = yamlFromText("f.yaml", "a:\n  b: [1, 2]\n")
  const saying = { code: "x", severity: "error" as const, message: "x" }
  it("stands at the value, or at the key where that is asked", () => {
    expect(findingIn(yaml, saying, ["a", "b", 1]).place).toEqual({ file: "f.yaml", line: 2, column: 10 })
    expect(findingIn(yaml, saying, ["a", "b"], "key").place).toEqual({ file: "f.yaml", line: 2, column: 3 })
  })
})
