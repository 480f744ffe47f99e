import { describe, expect, it } from "vitest"
import { dayworkSheet, diarySheet } from "../../src/sheets/day-book.ts"
import { cellsOf } from "./sheets.ts"
import { house, textOf } from "./site.ts"

describe("the day's books", () => {
  it("the diary names the crews and leaves the rest to be written", () => {
    expect(cellsOf(diarySheet(house)).map(([first]) => first)).toContain("Joiners (2)")
    expect(textOf(diarySheet(house)!)).toMatch(/Accidents/)
  })

  it("a daywork sheet has hours and materials, signatures, and no money", () => {
    const text = textOf(dayworkSheet(house)!)
    expect(text).toMatch(/Hours.*Amount, unit/)
    expect(text).not.toMatch(/£|price|rate/i)
  })
})
