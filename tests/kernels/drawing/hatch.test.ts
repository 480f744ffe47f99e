import { describe, expect, it } from "vitest"
import { hatchMark } from "../../../src/kernels/drawing/hatch.ts"
import { distance } from "../../../src/kernels/polygon/point.ts"

const square = [0, 1, 2, 3].map((i) => ({ x: i === 1 || i === 2 ? 1000 : 0, y: i > 1 ? 1000 : 0 }))

describe("a hatch", () => {
  it("covers a square with lines whose length times spacing is its area on paper, to one line", () => {
    for (const angle of [0, 45, 30]) {
      const mark = hatchMark(
        { kind: "hatch", region: { outline: square, holes: [] }, spacing: 0.5, angle },
        10,
      )
      const length = mark.lines.reduce((sum, [from, to]) => sum + distance(from!, to!), 0)
      expect(Math.abs(length * 0.5 - 100 * 100)).toBeLessThan(100)
    }
  })

  it("leaves holes free", () => {
    const hole = square.map(({ x, y }) => ({ x: 400 + x / 5, y: 400 + y / 5 }))
    const mark = hatchMark(
      { kind: "hatch", region: { outline: square, holes: [hole] }, spacing: 10, angle: 0 },
      10,
    )
    expect(mark.lines.filter(([from]) => from!.y === 50)).toHaveLength(2)
    expect(mark.lines.filter(([from]) => from!.y === 20)).toHaveLength(1)
  })
})
