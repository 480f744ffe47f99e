import { expect, it } from "vitest"
import { edgesOf, regionEdges, regionOf } from "../../../src/kernels/polygon/region.ts"

const triangle = [
  { x: 0, y: 0 },
  { x: 9, y: 0 },
  { x: 0, y: 9 },
]

it("closes an outline from its last corner to its first", () => {
  expect(edgesOf(triangle)).toHaveLength(3)
  expect(edgesOf(triangle)[2]).toEqual({ from: { x: 0, y: 9 }, to: { x: 0, y: 0 } })
  expect(regionEdges({ ...regionOf(triangle), holes: [triangle] })).toHaveLength(6)
})
