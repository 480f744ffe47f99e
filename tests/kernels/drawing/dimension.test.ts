import { describe, expect, it } from "vitest"
import { dimensionMarks } from "../../../src/kernels/drawing/dimension.ts"

const shape = {
  kind: "dimension",
  from: { x: 0, y: 0 },
  to: { x: 4000, y: 0 },
  offset: 10,
  text: "4,000",
} as const

describe("a dimension", () => {
  it("stands off on paper, to the left of its walk, with its figures above the line (ISO 129-1, from memory)", () => {
    const { marks, label } = dimensionMarks(shape, 20)
    expect(marks).toHaveLength(5)
    const [line] = marks[0]!.kind === "path" ? marks[0]!.lines : []
    expect(line).toEqual([
      { x: -1.5, y: 10 },
      { x: 201.5, y: 10 },
    ])
    expect(label.at.x).toBe(100)
    expect(label.at.y).toBeGreaterThan(10)
    expect(dimensionMarks({ ...shape, offset: -10 }, 20).label.at.y).toBeGreaterThan(-10)
  })

  it("reads from below or from the right, whichever way it was walked", () => {
    const angleTo = (x: number, y: number) => dimensionMarks({ ...shape, to: { x, y } }, 20).label.angle
    expect(angleTo(-4000, 0)).toBe(0)
    expect(angleTo(0, 4000)).toBe(90)
    expect(angleTo(0, -4000)).toBe(90)
    expect(angleTo(20, -4000)).toBeGreaterThan(90)
    expect(angleTo(3000, -3000)).toBe(-45)
  })

  it("puts figures beside a line too short for them", () => {
    const { label } = dimensionMarks({ ...shape, to: { x: 100, y: 0 }, text: "100" }, 20)
    expect(label.shifts[0]!.x).toBeGreaterThan(5)
  })
})
