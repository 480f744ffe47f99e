import { describe, expect, it } from "vitest"
import * as messages from "../../../src/trades/floors/messages.ts"

const at = { file: "rooms/r1.yaml", path: ["work", "floors"] }

describe("what is said of a floor", () => {
  it("a refusal names the figure, the limit and a cure", () => {
    const told = [
      messages.rowTooThin(at, 12, 60),
      messages.runTooLong(at, { way: "along", is: 9200, most: 8000 }, [{ wall: 2, fromLeft: 4600 }]),
      messages.gapNotCovered(at, 15, 18),
      messages.gapTooSmall(at, 6, 10),
      messages.readingOut(at, { what: "deck, moisture", value: "16 %", limit: "at most 12 %" }),
    ]
    expect(told.map((finding) => finding.message)).toEqual([
      "A row comes out 12 mm wide; the least is 60 mm.",
      "The floor is 9,200 mm along the boards; without a movement break at most 8,000 mm.",
      "A skirting 15 mm thick does not cover the gap at its widest; it takes 18 mm.",
      "A gap of 6 mm is written; rule and calculation ask 10 mm.",
      "deck, moisture: 16 %; the limit is at most 12 %.",
    ])
    for (const finding of told) {
      expect(finding.severity).toBe("warning")
      expect(finding.mend!.length).toBeGreaterThan(20)
      expect(finding.at).toEqual(at)
    }
  })

  it("what can never be laid is an error", () => {
    expect(messages.heldTwice(at, [1, 3]).severity).toBe("error")
    expect(messages.nothingToLay(at, 10).severity).toBe("error")
    expect(messages.noSuchWall(at, 9, 4).expected).toBe("1 to 4")
  })
})
