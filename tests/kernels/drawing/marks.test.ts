import { expect, it } from "vitest"
import { arcReach, boxCorners, middleOf } from "../../../src/kernels/drawing/marks.ts"

it("reaches as far as an arc bulges, not only to its ends", () => {
  const reach = arcReach({ centre: { x: 0, y: 0 }, radius: 10, from: 45, to: 200 })
  expect(Math.max(...reach.map((point) => point.y))).toBe(10)
  expect(Math.min(...reach.map((point) => point.x))).toBe(-10)
})

it("finds the middle of a text from the end it hangs by, and the corners of a turned box", () => {
  expect(middleOf({ x: 0, y: 0 }, 10, "start", 90)).toEqual({ x: 0, y: 5 })
  expect(middleOf({ x: 0, y: 0 }, 10, "end", 0)).toEqual({ x: -5, y: 0 })
  expect(boxCorners({ centre: { x: 0, y: 0 }, width: 4, height: 2, angle: 90 })[0]).toEqual({ x: 1, y: -2 })
})
