import { describe, expect, it } from "vitest"
import { controlCharacter, quoted, shown } from "../../src/intake/messages.ts"

describe("quoted", () => {
  it("shows text as it stood, cut short, with what is invisible made visible", () => {
    expect(quoted("hall")).toBe("'hall'")
    expect(quoted("\u001b[31mred\u202e")).toBe("'·[31mred·'")
    expect(quoted("x".repeat(1000)).length).toBeLessThan(70)
  })
})

describe("shown", () => {
  it.each([
    ["a", "text 'a'"],
    [3, "3"],
    [null, "nothing"],
    [[1], "a list"],
    [{ a: 1 }, "a mapping of keys"],
  ])("%j is %s", (value, text) => {
    expect(shown(value)).toBe(text)
  })
})

describe("controlCharacter", () => {
  it("names the character by its number in Unicode", () => {
    expect(controlCharacter("\u0007").message).toContain("U+0007")
  })
})
