import { describe, expect, it } from "vitest"
import { storeyHeights } from "../../../../src/trades/doors/escape/storeys.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf } from "../houses.ts"

function heights(deck: number, ground: number, floorBuildUp: number) {
  const job = jobOf({
    lowestGround: ground,
    decks: [0, deck],
    rooms: ["H hall 0", "A bedroom 1"],
    stairs: ["S H A"],
    doors: ["X outside H final"],
    passed: { A: { floorBuildUp } },
  })
  return storeyHeights(job, rulesRead(doorRules))
}

describe("heights of storeys", () => {
  it("runs from lowest ground to finished floor: 5,275 deck, 19 floor, ground 240 down is 5,534", () => {
    const { top, asks, findings } = heights(5275, -240, 19)
    expect(top.height).toBe(5534)
    expect(asks).toBe("protected")
    expect(findings).toEqual([])
  })

  // Approved Document B vol 1, 2.5: more than 4.5 m; a storey at 4.5 m is not more.
  it.each([
    { deck: 4250, floor: 10, asks: "open", near: true },
    { deck: 4250, floor: 11, asks: "protected", near: true },
    { deck: 4140, floor: 10, asks: "open", near: false },
    { deck: 4340, floor: 10, asks: "protected", near: true },
    { deck: 4361, floor: 0, asks: "protected", near: false },
    { deck: 7150, floor: 20, asks: "protected", near: true },
    { deck: 7250, floor: 20, asks: "more", near: true },
  ])("deck $deck with floor $floor over ground 240 down asks $asks, near a limit: $near", (given) => {
    const { asks, findings } = heights(given.deck, -240, given.floor)
    expect(asks).toBe(given.asks)
    expect(findings.some((finding) => finding.code === "escape-floor-near-limit")).toBe(given.near)
  })

  it("does not count a storey of stores only", () => {
    const job = jobOf({
      decks: [0, 2600, 5000],
      rooms: ["H hall 0", "A bedroom 1", "E store 2"],
      stairs: ["S H A", "S2 A E"],
      doors: ["X outside H final"],
    })
    expect(storeyHeights(job, rulesRead(doorRules)).asks).toBe("open")
  })
})
