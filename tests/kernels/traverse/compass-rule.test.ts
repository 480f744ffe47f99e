import { describe, expect, it } from "vitest"
import { compassRule, compassRuleOfParts } from "../../../src/kernels/traverse/compass-rule.ts"
import { fixed } from "../../../src/kernels/units.ts"
import { compassTraverses } from "../../facts/geometry.ts"

describe.each(compassTraverses)("$what: $source", ({ value }) => {
  const { legs, decimals } = value
  const printed = compassRuleOfParts(
    legs.map(({ departure, latitude, length }) => ({ x: departure, y: latitude, length })),
  )

  it("closes by the printed errors over the printed perimeter", () => {
    expect(fixed(printed.misclosure.y, decimals.raw)).toBe(fixed(value.latitudeError, decimals.raw))
    expect(fixed(printed.misclosure.x, decimals.raw)).toBe(fixed(value.departureError, decimals.raw))
    expect(fixed(printed.length, 2)).toBe(fixed(value.perimeter, 2))
  })

  it.each(legs.map((leg, index) => ({ ...leg, index })))("adjusts $name to the printed digit", (leg) => {
    const { x, y } = printed.legs[leg.index]!
    expect(fixed(y, decimals.adjusted)).toBe(fixed(leg.adjustedLatitude, decimals.adjusted))
    if (leg.adjustedDeparture === null) return
    expect(fixed(x, decimals.adjusted)).toBe(fixed(leg.adjustedDeparture, decimals.adjusted))
  })

  it("resolves lengths and headings into the printed latitudes and departures, to their last digit give or take one", () => {
    const whole = compassRule(legs.map(({ azimuth, length }) => ({ length, heading: 90 - azimuth })))
    for (const [index, { latitude, departure, length }] of legs.entries()) {
      const share = length / whole.length
      const adjusted = whole.legs[index]!
      expect(Math.abs(adjusted.y + whole.misclosure.y * share - latitude)).toBeLessThan(0.001)
      expect(Math.abs(adjusted.x + whole.misclosure.x * share - departure)).toBeLessThan(0.001)
    }
  })

  it("comes back to its start", () => {
    expect(printed.legs.reduce((sum, { x }) => sum + x, 0)).toBeCloseTo(0, 9)
    expect(printed.legs.reduce((sum, { y }) => sum + y, 0)).toBeCloseTo(0, 9)
    const [first] = printed.legs
    expect(Math.hypot(first!.x, first!.y)).toBe(first!.length)
  })
})
