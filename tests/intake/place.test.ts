import { describe, expect, it } from "vitest"
import { positionOf } from "../../src/intake/place.ts"
import { yamlFromText } from "../../src/intake/yaml-file.ts"

const text = "# a comment\nname: hall\nlist:\n  - { a: 1 }\n  - b: 2\nempty:\n"
const yaml = yamlFromText("f.yaml", text)
const at = (...path: (string | number)[]) => positionOf(yaml, path)

describe("positionOf", () => {
  it("is where the value begins", () => {
    expect(at("name")).toEqual({ line: 2, column: 7 })
    expect(at("list", 1, "b")).toEqual({ line: 5, column: 8 })
    expect(at("list")).toEqual({ line: 4, column: 3 })
  })

  it("is the key where nothing is written behind it", () => {
    expect(at("empty")).toEqual({ line: 6, column: 1 })
  })

  it("is the nearest that is there where a part is missing", () => {
    expect(at("list", 0, "z")).toEqual({ line: 4, column: 5 })
    expect(at("list", 9, "z")).toEqual({ line: 3, column: 1 })
    expect(at("name", "z", "y")).toEqual({ line: 2, column: 1 })
    expect(at("none")).toEqual({ line: 2, column: 1 })
    expect(at()).toEqual({ line: 2, column: 1 })
  })

  it("counts lines that end in carriage return and line feed", () => {
    const other = yamlFromText("f.yaml", "a: 1\r\nb: 2\r\n")
    expect(positionOf(other, ["b"])).toEqual({ line: 2, column: 4 })
  })
})
