import { describe, expect, it } from "vitest"
import { editDistance, nearest } from "../../src/intake/nearest.ts"

describe("editDistance", () => {
  // Worked examples of textbooks on string correction, from memory: the last tells the restricted form (3) from the full one (2).
  it.each([
    ["kitten", "sitting", 3],
    ["saturday", "sunday", 3],
    ["", "abc", 3],
    ["ab", "ba", 1],
    ["ca", "abc", 3],
  ])("%s to %s is %i", (from, to, distance) => {
    expect(editDistance(from, to)).toBe(distance)
    expect(editDistance(to, from)).toBe(distance)
  })

  it("does not labour over a word that is far too long", () => {
    expect(editDistance("x".repeat(1_000_000), "length")).toBe(1_000_000)
  })
})

describe("nearest", () => {
  const known = ["length", "lengthsTo", "heightsFrom", "name", "turn"]
  it.each([
    ["lenght", "length"],
    ["naem", "name"],
    ["heightfrom", "heightsFrom"],
    ["LengthsTo", "lengthsTo"],
    ["wallpaper", undefined],
    ["zz", undefined],
  ])("of %s is %s", (written, word) => {
    expect(nearest(written, known)).toBe(word)
  })
})
