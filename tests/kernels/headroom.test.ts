import { expect, it } from "vitest"
import { headroomAt, headroomWidth } from "../../src/kernels/headroom.ts"

it("parts in two where a beam hangs lower than the headroom", () => {
  const profile = [
    { x: 0, y: 0 },
    { x: 0, y: 2400 },
    { x: 1000, y: 2400 },
    { x: 1000, y: 1960 },
    { x: 1200, y: 1960 },
    { x: 1200, y: 2400 },
    { x: 3000, y: 2400 },
    { x: 3000, y: 0 },
  ]
  expect(headroomAt(profile, 2000)).toEqual([
    { from: 0, to: 1000 },
    { from: 1200, to: 3000 },
  ])
  expect(headroomWidth(profile, 1960)).toBe(3000)
})
