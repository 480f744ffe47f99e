import { describe, expect, it } from "vitest"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import { floorTask } from "./fixture.ts"

const steps = (input: Record<string, unknown> = {}, storey: Record<string, unknown> = {}) =>
  floorWork(floorTask({ input, storey })).steps

describe("steps of a floating floor", () => {
  it("stages never go back, and each step waits for one that stands before it", () => {
    const all = steps({ oilCoats: 3 })
    all.forEach((step, index) => {
      const before = all.slice(0, index)
      for (const key of step.after) expect(before.map((other) => other.key)).toContain(key)
      if (index > 0) expect(stageRank(step.stage)).toBeGreaterThanOrEqual(stageRank(all[index - 1]!.stage))
    })
    expect(new Set(all.map((step) => step.key)).size).toBe(all.length)
  })

  it("oil: 12 h between coats, 24 h after the last at 20 °C (common practice); at 18 °C 2^(2/10) times that", () => {
    const gates = steps({ oilCoats: 2 })
      .filter((step) => step.stage === "oil")
      .map((step) => step.gate!.hours)
    // 13.78 and 27.57 h, in whole hours.
    expect(gates).toEqual([14, 28])
    expect(steps({ oilCoats: 0 }).some((step) => step.stage === "oil")).toBe(false)
  })

  it("glued joints are kept off for 24 h, locked ones are not (common practice)", () => {
    const boards = (joints: string) => steps({ joints }).find((step) => step.key.endsWith("/boards"))!
    expect(boards("glued").gate?.hours).toBe(24)
    expect(boards("locked").gate).toBeUndefined()
  })

  it("no screws where the deck is not re-fixed, or the base is concrete", () => {
    expect(steps({ deckScrews: false })[0]!.detail).not.toContain("Screw")
    expect(steps({}, { base: "concrete" })[0]!.title).toBe("Base made flat, read")
  })
})
