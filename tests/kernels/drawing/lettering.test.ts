import { expect, it } from "vitest"
import { fontSize, lineStep, linesOf, textSize } from "../../../src/kernels/drawing/lettering.ts"

it("sizes lettering by the height of its figures", () => {
  expect(fontSize(3.5)).toBe(5)
  expect(textSize("3,940", 3.5).width).toBeCloseTo(5 * (4 * 0.6 + 0.3), 9)
  expect(textSize("3,940", 3.5, true).width).toBeGreaterThan(textSize("3,940", 3.5).width)
  expect(linesOf("A1\n12 m2")).toEqual(["A1", "12 m2"])
  expect(textSize("A1\n12", 3.5).height - textSize("A1", 3.5).height).toBeCloseTo(lineStep(3.5), 9)
})
