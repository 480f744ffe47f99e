import { expect, it } from "vitest"
import {
  checkLength,
  misclosureOf,
  openWalk,
  runLengths,
  runTurns,
  shutWalk,
} from "../../../src/kernels/traverse/walk.ts"

const square = [4000, 3000, 4000, 3000].map((length) => ({ length, turn: 90 }))

it("walks clockwise from the origin along x, the inside below run 0", () => {
  const corners = openWalk(square)
  expect(corners.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([
    [0, 0],
    [4000, 0],
    [4000, -3000],
    [0, -3000],
  ])
  expect(misclosureOf(square).gap).toBeCloseTo(0, 9)
  expect(runLengths(corners).map(Math.round)).toEqual([4000, 3000, 4000, 3000])
  expect(runTurns(corners).map(Math.round)).toEqual([90, 90, 90, 90])
  expect(checkLength(corners, { from: 0, to: 2 })).toBe(5000)
})

it("reads how far a walk misses its start: walls 3,940/3,952 and 4,860/4,846 at right angles miss by 12 and 14", () => {
  const runs = [3940, 4860, 3952, 4846].map((length) => ({ length, turn: 90 }))
  const { x, y, gap, turn } = misclosureOf(runs)
  expect([Math.round(x), Math.round(y), turn]).toEqual([-12, -14, 0])
  expect(gap).toBeCloseTo(Math.hypot(12, 14), 9)
  const shut = shutWalk(runs)
  expect(shut[1]!.y).toBeCloseTo(0, 9)
  expect(misclosureOf(runs.map((run, i) => (i === 3 ? { ...run, turn: -90 } : run))).turn).toBe(-180)
})
