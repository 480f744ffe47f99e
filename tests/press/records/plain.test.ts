import { describe, expect, it } from "vitest"
import { money } from "../../../src/kernels/money.ts"
import { jsonText, plain } from "../../../src/press/records/plain.ts"

describe("plain data", () => {
  it("has its keys in order at every level, whatever order they came in", () => {
    expect(jsonText({ b: 1, a: { d: 2, c: 3 } })).toBe(jsonText({ a: { c: 3, d: 2 }, b: 1 }))
    expect(Object.keys(plain({ b: 1, a: 2, B: 3 }) as object)).toEqual(["B", "a", "b"])
  })

  it("rounds figures to a thousandth, halves up, so that noise of arithmetic does not show", () => {
    expect(plain([0.1 + 0.2, 1 / 3, 2.0005, -0.0004, 1860])).toEqual([0.3, 0.333, 2.001, 0, 1860])
  })

  it("keeps money as text, maps as objects, sets as lists", () => {
    expect(plain({ price: money("12.340") })).toEqual({ price: "12.34" })
    expect(
      plain(
        new Map([
          ["b", 1],
          ["a", 2],
        ]),
      ),
    ).toEqual({ a: 2, b: 1 })
    expect(plain(new Set([3, 1]))).toEqual([3, 1])
  })

  it("leaves out functions and what is absent, but keeps places in a list", () => {
    expect(plain({ a: undefined, b: () => 1, c: null })).toEqual({ c: null })
    expect(plain([1, undefined, 2])).toEqual([1, null, 2])
  })

  it("is text with two spaces a level and a line end", () => {
    expect(jsonText({ a: [1] })).toBe('{\n  "a": [\n    1\n  ]\n}\n')
  })
})
