import { describe, expect, it } from "vitest"
import { orderRules } from "../src/orders/rules.ts"
import { dryingRules } from "../src/rulebook/drying-rules.ts"
import { Rules } from "../src/rulebook/rules.ts"
import { sharedRules } from "../src/rulebook/shared-rules.ts"
import { allRules } from "../src/rulebook-of.ts"
import { surveyRules } from "../src/survey/rules.ts"
import { decoratingRules } from "../src/trades/decorating/rules.ts"
import { escapeRules } from "../src/trades/doors/escape/rules.ts"
import { hingeRules } from "../src/trades/doors/hanging/hinge-rules.ts"
import { outputRules } from "../src/trades/doors/hanging/output-rules.ts"
import { hangingRules } from "../src/trades/doors/hanging/rules.ts"
import { rules as doorRules } from "../src/trades/doors/rules.ts"
import { electricsRules } from "../src/trades/electrics/rules.ts"
import { floorRules } from "../src/trades/floors/rules.ts"
import { trades } from "../src/trades/index.ts"
import { joineryRules } from "../src/trades/joinery/rules.ts"
import { plumbingRules } from "../src/trades/plumbing/rules.ts"
import { tilingRules } from "../src/trades/tiling/rules.ts"
import { tradesThatDoLittle } from "./fixtures/small-job.ts"

describe("the whole rulebook", () => {
  const all = allRules(trades)

  it("holds the shared entries, the survey's, the orders' and each trade's, each once", () => {
    for (const part of [
      sharedRules,
      dryingRules,
      surveyRules,
      orderRules,
      ...trades.map((trade) => trade.rules),
    ])
      for (const entry of part) expect(all.filter((each) => each.id === entry.id)).toEqual([entry])
    expect(new Rules(all).all()).toHaveLength(all.length)
  })

  it("follows the trades given", () => {
    const some = allRules(tradesThatDoLittle).map((entry) => entry.id)
    expect(some).toContain("small-out-rate")
    expect(some).not.toContain(decoratingRules[0]?.id)
  })

  it("has ids in kebab case, figures that are figures, units and words on every entry", () => {
    for (const { id, what, value, unit } of all) {
      expect(id).toMatch(/^[a-z]+(-[a-z0-9]+(?:x[0-9]+)?)+$/)
      expect(Number.isFinite(value), id).toBe(true)
      expect(what.trim().length, id).toBeGreaterThan(5)
      expect(unit.trim(), id).not.toBe("")
    }
  })

  it("keeps its own values within its own safety floors", () => {
    const beyond = all.filter(
      ({ value, safetyFloor: { least = -Infinity, most = Infinity } = {} }) => value < least || value > most,
    )
    expect(beyond).toEqual([])
  })

  it.each([
    ["doors", doorRules, "door-"],
    ["doors on the way out", escapeRules, "door-"],
    ["hanging", hangingRules, "door-"],
    ["hinges", hingeRules, "door-"],
    ["hanging times", outputRules, "door-"],
    ["floors", floorRules, "floor-"],
    ["joinery", joineryRules, "joinery-"],
    ["decorating", decoratingRules, "decor-"],
    ["electrics", electricsRules, "elec-"],
    ["plumbing", plumbingRules, "plumb-"],
    ["tiling", tilingRules, "tile-"],
  ])("%s names its entries by its own beginning, and all of them are in the rulebook", (_, own, prefix) => {
    expect(own.length).toBeGreaterThan(0)
    expect(own.filter((entry) => !entry.id.startsWith(prefix)).map((entry) => entry.id)).toEqual([])
    expect(own.filter((entry) => !all.includes(entry)).map((entry) => entry.id)).toEqual([])
  })
})
