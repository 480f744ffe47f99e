import { describe, expect, it } from "vitest"
import { dewPoint } from "../../../src/kernels/air.ts"
import { coldestToCoat } from "../../../src/trades/decorating/dew-point.ts"
import { COLDEST, DEW_POINT_CHART, DEW_POINT_TABLE, DEW_POINT_TOLD } from "../../facts/decorating.ts"
import { paintRules } from "./attic.ts"

describe("coldest surface to coat", () => {
  it.each(COLDEST)("air of $temperature °C and $humidity %: $value °C ($source)", (row) => {
    expect(Math.abs(coldestToCoat(row, paintRules()) - row.value)).toBeLessThanOrEqual(0.0051)
  })

  it("a wall at 18 °C must not be painted in air of 20 °C and 80 %", () => {
    expect(coldestToCoat({ temperature: 20, humidity: 80 }, paintRules())).toBeGreaterThan(18)
  })
})

describe("dew points as published", () => {
  it.each([...DEW_POINT_TABLE, ...DEW_POINT_TOLD])(
    "$temperature °C and $humidity %: $value °C ($source)",
    ({ temperature, humidity, value, within }) => {
      expect(Math.abs(dewPoint(temperature, humidity) - value)).toBeLessThanOrEqual(within)
    },
  )

  it.each(DEW_POINT_CHART)(
    "$fahrenheit °F and $humidity %: $value °F ($source)",
    ({ fahrenheit, humidity, value, within }) => {
      const found = dewPoint((fahrenheit - 32) / 1.8, humidity) * 1.8 + 32
      expect(Math.abs(found - value)).toBeLessThanOrEqual(within)
    },
  )
})
