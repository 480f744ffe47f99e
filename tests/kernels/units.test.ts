import { describe, expect, it } from "vitest"
import { fixed, metres, mmText, roundHalfUp, squareMetres } from "../../src/kernels/units.ts"

describe("figures for the reader", () => {
  it("round a half away from nought, as people do, whatever the binary form says", () => {
    expect(roundHalfUp(2.345, 2)).toBe(2.35)
    expect(roundHalfUp(1.005, 2)).toBe(1.01)
    expect(roundHalfUp(-2.345, 2)).toBe(-2.35)
    expect(roundHalfUp(2.5, 0)).toBe(3)
    expect(roundHalfUp(-0.4, 0)).toBe(0)
    expect(Object.is(roundHalfUp(-0.4, 0), -0)).toBe(false)
  })

  it("keep the decimals asked for", () => {
    expect(fixed(2, 2)).toBe("2.00")
    expect(fixed(0.1 + 0.2, 1)).toBe("0.3")
    expect(fixed(9.995, 2)).toBe("10.00")
  })

  it("set thousands of millimetres apart", () => {
    expect(mmText(999.4)).toBe("999")
    expect(mmText(999.5)).toBe("1,000")
    expect(mmText(3940)).toBe("3,940")
    expect(mmText(1234567)).toBe("1,234,567")
    expect(mmText(-240)).toBe("−240")
  })
})

describe("conversions", () => {
  it("follow the decimal prefixes of the SI (SI Brochure, 9th edition, table 7)", () => {
    expect(squareMetres(3_000_000)).toBe(3)
    expect(metres(2610)).toBe(2.61)
  })
})
