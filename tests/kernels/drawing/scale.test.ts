import { describe, expect, it } from "vitest"
import { fitScale, scaleText, standardScales } from "../../../src/kernels/drawing/scale.ts"

/** Full size and reduction scales of ISO 5455:1979, table 1, to 1:200 (from memory). */
const iso5455 = [1, 2, 5, 10, 20, 50, 100, 200]

describe("scale", () => {
  it("knows the standard ones", () => {
    expect(standardScales).toEqual(iso5455)
    expect(scaleText(50)).toBe("1:50")
  })

  it("takes the largest at which the thing fits: 3,940 x 4,860 on 180 x 250 is 1:50 (1:20 would need 197)", () => {
    const bounds = { left: -100, bottom: 0, right: 3840, top: 4860 }
    expect(fitScale(bounds, { widthMm: 180, heightMm: 250 })).toBe(50)
    expect(fitScale(bounds, { widthMm: 197, heightMm: 243 })).toBe(20)
    expect(fitScale({ ...bounds, right: 1e6 }, { widthMm: 180, heightMm: 250 })).toBe(200)
  })
})
