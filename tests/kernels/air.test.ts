import { describe, expect, it } from "vitest"
import {
  dewPoint,
  dimensionalChange,
  humidityForMoisture,
  saturationPressure,
  woodMoisture,
} from "../../src/kernels/air.ts"
import {
  DEW_POINTS,
  HUMIDITY_AT_20,
  MOVEMENT,
  PRINTED_CHANGES,
  SATURATION,
  WOOD_MOISTURE,
} from "../facts/air.ts"

describe("moist air", () => {
  it.each(SATURATION)("saturation pressure at $what °C is $value hPa ($source)", ({ what, value }) => {
    expect(Math.abs(saturationPressure(what) - value)).toBeLessThanOrEqual(0.00051)
  })

  it.each(DEW_POINTS)("dew point at $temperature °C and $humidity % is $value ($source)", (row) => {
    expect(Math.abs(dewPoint(row.temperature, row.humidity) - row.value)).toBeLessThanOrEqual(0.0051)
  })

  it("saturated air condenses at its own temperature", () => {
    for (let t = -20; t <= 50; t += 0.5) expect(dewPoint(t, 100)).toBeCloseTo(t, 10)
  })

  it("vapour pressure at the dew point is the air's own vapour pressure", () => {
    for (let rh = 5; rh <= 100; rh += 5) {
      expect(saturationPressure(dewPoint(18, rh))).toBeCloseTo((saturationPressure(18) * rh) / 100, 10)
    }
  })
})

describe("wood in air", () => {
  it.each(WOOD_MOISTURE)("rests at $value % in $temperature °C, $humidity % ($source)", (row) => {
    expect(Math.abs(woodMoisture(row.temperature, row.humidity) - row.value)).toBeLessThanOrEqual(row.within)
  })

  it.each(HUMIDITY_AT_20)("$moisture % needs $value % humidity at 20 °C ($source)", ({ moisture, value }) => {
    expect(Math.abs((humidityForMoisture(20, moisture) ?? 0) - value)).toBeLessThanOrEqual(0.051)
  })

  it("the inverse gives back the moisture it was asked for", () => {
    for (let t = 0; t <= 40; t += 5) {
      for (let mc = 3; mc <= 22; mc += 0.5) {
        expect(woodMoisture(t, humidityForMoisture(t, mc) ?? Number.NaN)).toBeCloseTo(mc, 9)
      }
    }
  })

  it("no humidity holds wood at 40 % or below 0 %", () => {
    expect(humidityForMoisture(20, 40)).toBeNull()
    expect(humidityForMoisture(20, -1)).toBeNull()
  })

  it.each(MOVEMENT)("$what moves $value mm ($source)", (row) => {
    const change = dimensionalChange(row.size, row.coefficient, row.from, row.to)
    expect(Math.abs(change - row.value)).toBeLessThanOrEqual(0.00051)
  })

  it.each(PRINTED_CHANGES)("$what of white fir, 8 to 11 %, to the printed digit ($source)", (row) => {
    const change = dimensionalChange(row.size, row.coefficient, row.from, row.to)
    expect(change.toFixed(row.changeDigits)).toBe(row.change.toFixed(row.changeDigits))
    expect((row.size + change).toFixed(row.endDigits)).toBe(row.end.toFixed(row.endDigits))
  })
})
