import { describe, expect, it } from "vitest"
import { contains, isSimple, sideOf } from "../../../src/kernels/polygon/inside.ts"
import type { Point } from "../../../src/kernels/polygon/point.ts"
import { generatedRegion, seeded } from "./outlines.ts"

const box: Point[] = [
  { x: 0, y: 0 },
  { x: 1000, y: 0 },
  { x: 1000, y: 1000 },
  { x: 0, y: 1000 },
]
const well: Point[] = [
  { x: 400, y: 400 },
  { x: 600, y: 400 },
  { x: 600, y: 600 },
  { x: 400, y: 600 },
]

describe("inside", () => {
  it("knows inside, outside and edge, level with corners too", () => {
    expect(sideOf(box, { x: 500, y: 500 })).toBe("inside")
    expect(sideOf(box, { x: 1000, y: 500 })).toBe("edge")
    expect(sideOf(box, { x: -1, y: 0 })).toBe("outside")
    expect(sideOf(box, { x: -1, y: 1000 })).toBe("outside")
  })

  it("leaves out holes but not their edges", () => {
    const region = { outline: box, holes: [well] }
    expect(contains(region, { x: 500, y: 500 })).toBe(false)
    expect(contains(region, { x: 400, y: 500 })).toBe(true)
    expect(contains(region, { x: 300, y: 500 })).toBe(true)
  })
})

describe("simple outlines", () => {
  it("takes the generated ones and refuses crossed, touching, folded and short ones", () => {
    const random = seeded(3)
    for (let count = 0; count < 500; count++) expect(isSimple(generatedRegion(random).outline)).toBe(true)
    const [a, b, c, d] = box as [Point, Point, Point, Point]
    expect(isSimple([a, c, b, d])).toBe(false)
    expect(isSimple([a, b])).toBe(false)
    expect(isSimple([a, a, b, c])).toBe(false)
    expect(isSimple([a, b, { x: 200, y: 0 }, c])).toBe(false)
    expect(isSimple([a, b, c, { x: 500, y: 0 }, d])).toBe(false)
  })
})
