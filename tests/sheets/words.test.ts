import { describe, expect, it } from "vitest"
import { quantityText } from "../../src/sheets/words.ts"

describe("a quantity in words", () => {
  it.each([
    [16.554, "m2", "16.55 m²"],
    [3, "m", "3.00 m"],
    [2.5, "l", "2.50 l"],
    [3.2, "nr", "4 no."],
    [3.0000000001, "nr", "3 no."],
    [1.5, "pallet", "1.50 pallet"],
  ])("%d %s reads %s", (value, unit, text) => {
    expect(quantityText(value, unit)).toBe(text)
  })
})
