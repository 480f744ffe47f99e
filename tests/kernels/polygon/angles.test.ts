import { describe, expect, it } from "vitest"
import { anticlockwise, clockwise, interiorAngles, turnsOf } from "../../../src/kernels/polygon/angles.ts"
import { signedArea } from "../../../src/kernels/polygon/measure.ts"
import { generatedRegion, seeded } from "./outlines.ts"

describe("turns and angles", () => {
  it("turns right at the corners of a clockwise walk and left at an inside corner", () => {
    const room = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: -1000 },
      { x: 2000, y: -1000 },
      { x: 2000, y: -3000 },
      { x: 0, y: -3000 },
    ]
    expect(turnsOf(room)).toEqual([90, 90, 90, -90, 90, 90])
    expect(interiorAngles(room)).toEqual([90, 90, 90, 270, 90, 90])
    expect(interiorAngles([...room].reverse())).toEqual([90, 90, 270, 90, 90, 90])
  })

  it("gives a regular hexagon 120 degrees at each corner (common geometry: (n - 2) x 180 / n)", () => {
    const hexagon = Array.from({ length: 6 }, (_, i) => ({
      x: 1000 * Math.cos((i * Math.PI) / 3),
      y: 1000 * Math.sin((i * Math.PI) / 3),
    }))
    for (const angle of interiorAngles(hexagon)) expect(angle).toBeCloseTo(120, 9)
  })

  it("sums turns to a full circle and inside angles to (n - 2) x 180 on 1,000 generated outlines", () => {
    const random = seeded(7)
    for (let count = 0; count < 1000; count++) {
      const { outline } = generatedRegion(random)
      const sum = (values: number[]) => values.reduce((total, value) => total + value, 0)
      expect(sum(turnsOf(clockwise(outline)))).toBeCloseTo(360, 6)
      expect(sum(turnsOf(anticlockwise(outline)))).toBeCloseTo(-360, 6)
      expect(sum(interiorAngles(outline))).toBeCloseTo((outline.length - 2) * 180, 6)
      expect(signedArea(clockwise(outline))).toBeLessThan(0)
      expect(clockwise(outline)[0]).toEqual(outline[0])
    }
  })
})
