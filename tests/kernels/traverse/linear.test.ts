import { describe, expect, it } from "vitest"
import { addOuter, cholesky, rankOf, solveCholesky, zeros } from "../../../src/kernels/traverse/linear.ts"
import { seeded } from "../polygon/outlines.ts"

describe("linear algebra", () => {
  it("solves 200 generated systems: put back, the answer gives the right side", () => {
    const random = seeded(1)
    for (let count = 0; count < 200; count++) {
      const size = 1 + Math.floor(random() * 12)
      const matrix = zeros(size)
      const places = Array.from({ length: size }, (_, place) => place)
      for (let row = 0; row < size + 3; row++)
        addOuter(matrix, { places, factors: places.map(() => random() - 0.5) }, 1)
      const right = Float64Array.from(places, () => random())
      const x = solveCholesky(cholesky(matrix)!, right)
      for (const place of places) {
        const back = places.reduce((sum, other) => sum + matrix.cells[place * size + other]! * x[other]!, 0)
        expect(back).toBeCloseTo(right[place]!, 6)
      }
    }
  })

  it("factors the textbook matrix [4 12 -16; 12 37 -43; -16 -43 98] into [2; 6 1; -8 5 3], and refuses what is not positive", () => {
    const cells = Float64Array.from([4, 12, -16, 12, 37, -43, -16, -43, 98])
    expect([...cholesky({ size: 3, cells })!.cells].filter((_, i) => [0, 3, 4, 6, 7, 8].includes(i))).toEqual(
      [2, 6, 1, -8, 5, 3],
    )
    expect(cholesky({ size: 1, cells: Float64Array.from([-1]) })).toBeNull()
  })

  it("counts independent rows", () => {
    const row = (...factors: number[]) => ({ places: factors.map((_, place) => place), factors })
    expect(rankOf([row(1, 2, 3), row(2, 4, 6), row(0, 1, 0)], 3, 1e-9)).toBe(2)
    expect(rankOf([row(1, 0, 0), row(1, 0.001, 0)], 3, 0.02)).toBe(1)
  })
})
