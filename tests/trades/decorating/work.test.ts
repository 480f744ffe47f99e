import { describe, expect, it } from "vitest"
import { decorating } from "../../../src/trades/decorating/index.ts"
import { decoratingWork } from "../../../src/trades/decorating/work.ts"
import { RATES, WALL_FORTY } from "../../facts/decorating.ts"
import { attic, paintRules } from "./attic.ts"

const litres = (task = attic()) =>
  new Map(decoratingWork(task).quantities.map((each) => [each.product, each]))

describe("rates against practice", () => {
  it.each(RATES)("$rule lies from $from to $to m2/l ($source)", ({ rule, from, to }) => {
    expect(paintRules().value(rule)).toBeGreaterThanOrEqual(from)
    expect(paintRules().value(rule)).toBeLessThanOrEqual(to)
  })

  it(`${WALL_FORTY.area} m2, ${WALL_FORTY.coats} coats are ${WALL_FORTY.litres} l with waste (${WALL_FORTY.source})`, () => {
    const rules = paintRules()
    const need =
      ((WALL_FORTY.area * WALL_FORTY.coats) / rules.value("decor-rate-emulsion")) *
      (1 + rules.value("decor-waste") / 100)
    expect(need).toBeCloseTo(WALL_FORTY.litres, 2)
  })
})

describe("the attic room by hand, to the tin", () => {
  // Ceiling and slope 6.4 + 6.9992 = 13.3992; walls and reveals 8.07168 + 6.22 + 4 + 6.22 + 0.784 = 25.29568.
  // Mist on 38.69488: / 9 = 4.29943 l of mix, x 3/4 = 3.22457 l of white. White on walls 25.29568 / 12 = 2.10797.
  // Ceiling white, two coats: 2 x 13.3992 / 12 = 2.23320. White together 7.56574; with a tenth 8.32232.
  it("white: 7.57 l net, 8.32 l with waste", () => {
    expect(litres().get("white")!.net).toBeCloseTo(7.56574, 4)
    expect(litres().get("white")!.gross).toBeCloseTo(8.32232, 4)
  })

  // Colour, two coats at the maker's 13 m2/l: 2 x 25.29568 / 13 = 3.89164; with a tenth 4.28081.
  it("colour: 3.89 l net at the maker's rate", () => {
    expect(litres().get("sage")!.net).toBeCloseTo(3.89164, 4)
    expect(litres().get("sage")!.gross).toBeCloseTo(4.28081, 4)
  })

  // Wood 1.52832 + 0.242704 + 0.56976 + 0.53004 + 2.132366 = 5.00319 m2: undercoat / 12 = 0.41693; finish / 14 = 0.35737.
  it("wood: 0.42 l of undercoat, 0.36 l of finish", () => {
    expect(litres().get("under")!.net).toBeCloseTo(0.41693, 4)
    expect(litres().get("satin")!.net).toBeCloseTo(0.35737, 4)
  })
})

describe("findings of decorating", () => {
  const codes = (task = attic()) => decoratingWork(task).findings.map((each) => each.code)

  it("a sound room has none", () => {
    expect(codes()).toEqual([])
  })

  it("no paint chosen, an accent without its product, a wall that is not there", () => {
    expect(codes(attic({ woodwork: { state: "bare" } }))).toEqual(["no-paint-chosen"])
    expect(codes(attic({ accents: [{ wall: 2, colour: "blue" }] }))).toEqual(["colour-without-product"])
    expect(codes(attic({ accents: [{ wall: 9, colour: "blue", product: "sage" }] }))).toEqual([
      "no-such-wall",
    ])
  })

  it("a surface near the dew point", () => {
    // Air of 18 °C and 55 %: dew point 8.8 °C, so 11.8 °C is the coldest.
    expect(codes(attic({ coldestSurface: 11 }))).toEqual(["surface-near-dew-point"])
    expect(codes(attic({ coldestSurface: 12 }))).toEqual([])
  })

  it("in air too cold or damp nothing is recommended: an error, and no hour on the gate", () => {
    const task = attic()
    const cold = { ...task, job: { ...task.job, climate: { ...task.job.climate, temperature: 8 } } }
    const work = decoratingWork(cold)
    expect(new Set(work.findings.map((each) => each.code))).toEqual(new Set(["air-outside-range"]))
    expect(work.steps.find((step) => step.key.endsWith("/mist"))!.gate).toBeUndefined()
  })
})

describe("the trade as a whole", () => {
  it("same input, same result, input untouched; entries it rests on stand in the rulebook", () => {
    const task = attic()
    const before = JSON.stringify(task.input)
    expect(decoratingWork(task)).toEqual(decoratingWork(attic()))
    expect(JSON.stringify(task.input)).toBe(before)
    for (const id of decoratingWork(task).rests) expect(task.job.rules.entry(id).id).toBe(id)
  })

  it("cautions: lead where old paint is older than the ban, rags with oil and solvent", () => {
    const ids = (written = {}) => decoratingWork(attic(written)).cautions.map((each) => each.id)
    expect(ids({ walls: "old-paint" })).toEqual(
      expect.arrayContaining(["old-paint-lead", "old-texture-asbestos", "oily-rags"]),
    )
    expect(ids({ woodwork: { state: "none" } })).not.toContain("oily-rags")
    expect(ids()).not.toContain("old-paint-lead")
  })

  it("is listed with its uses, each of a liquid", () => {
    expect(decorating.uses.every((each) => each.kind === "liquid")).toBe(true)
    expect(new Set(decorating.rules.map((each) => each.id)).size).toBe(decorating.rules.length)
  })
})
