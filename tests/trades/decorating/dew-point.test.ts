import { describe, expect, it } from "vitest"
import { coldestToCoat } from "../../../src/trades/decorating/dew-point.ts"
import { COLDEST } from "../../facts/decorating.ts"
import { paintRules } from "./attic.ts"

describe("coldest surface to coat", () => {
  it.each(COLDEST)("air of $temperature °C and $humidity %: $value °C ($source)", (row) => {
    expect(Math.abs(coldestToCoat(row, paintRules()) - row.value)).toBeLessThanOrEqual(0.0051)
  })

  it("a wall at 18 °C must not be painted in air of 20 °C and 80 %", () => {
    expect(coldestToCoat({ temperature: 20, humidity: 80 }, paintRules())).toBeGreaterThan(18)
  })
})
