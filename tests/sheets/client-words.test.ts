import { describe, expect, it } from "vitest"
import { wordsExplained } from "../../src/sheets/client-words.ts"

const names = (text: string) => wordsExplained(text).map((each) => each.split(":")[0])

describe("words explained", () => {
  it("are found with their endings, in any capitals, once each, in order of the word", () => {
    expect(names("SKIRTINGS and skirting, batches, latches, latch, VAT")).toEqual([
      "Batch",
      "Latch",
      "Skirting",
      "VAT",
    ])
  })

  it("are whole words: no plant in transplanted, no leaf in leaflet", () => {
    expect(names("transplanted leaflets stride")).toEqual([])
  })

  it("explain a word without leaning on it", () => {
    for (const each of wordsExplained(
      "skirting retention variation grout sealant asbestos survey provisional sum",
    )) {
      const [word = "", means = ""] = each.split(": ")
      expect(means.toLowerCase(), word).not.toMatch(new RegExp(`^(a |the )?${word.toLowerCase()}`))
      expect(means.length).toBeGreaterThan(15)
    }
  })
})
