import { describe, expect, it } from "vitest"
import { surveyed } from "../fixtures/rooms.ts"

/**
 * Across the slopes 4,860: dwarf walls 940 and 980, pitch 42, flat at 2,310. By hand, tan 42 = 0.900404, sin 42 = 0.669131:
 * left run (2310 - 940) / 0.900404 = 1521.5, up the slope 1370 / 0.669131 = 2047.4;
 * right run (2310 - 980) / 0.900404 = 1477.1, up the slope 1330 / 0.669131 = 1987.7; flat 4860 - 1521.5 - 1477.1 = 1861.4.
 */
const attic = (given: { left?: object; right?: object; section?: object } = {}) =>
  surveyed({
    outline: [
      { length: 4860, turn: "right" },
      { length: 3950, turn: "right" },
      { length: 4860, turn: "right" },
      { length: 3950, turn: "right" },
    ],
    diagonals: [{ from: 1, to: 3, length: 6263 }],
    ceiling: {
      heights: [2310],
      slopes: [
        { wall: 4, dwarf: 940, pitch: 42, along: 2047, ...given.left },
        { wall: 2, dwarf: 980, pitch: 42, along: 1988, ...given.right },
      ],
      section: { flat: 1861, floor: 4860, ...given.section },
    },
  })

describe("measuredSection", () => {
  it("finds figures that agree within the tape, and shares what is left between them", () => {
    const { section, findings } = attic()
    expect(findings).toEqual([])
    // Closure: 4860 - 1861 - 2047 cos 42 - 1988 cos 42 = 4860 - 1861 - 1521.2 - 1477.4 = 0.4
    expect(section!.closure).toBeCloseTo(0.4, 1)
    expect(section!.residuals).toHaveLength(9)
    for (const { residual, unit } of section!.residuals)
      expect(Math.abs(residual)).toBeLessThan(unit === "mm" ? 1 : 0.1)
  })

  it("names the length up the slope whose digits were swapped", () => {
    const { findings } = attic({ right: { along: 1898 } })
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([["section-not-closed", "error"]])
    expect(findings[0]!.at.path).toEqual(["ceiling", "slopes", 1, "along"])
    expect(findings[0]!.expected).toContain(
      "length up the slope over wall 2: reads 1,898 mm, would fit as 1,98",
    )
  })

  it("names every figure that explains it alone where several do", () => {
    // One slope: dwarf wall, pitch, height and length along it; one of four wrong, and only one too many was taped.
    const { findings } = surveyed({
      ceiling: { heights: [2310], slopes: [{ wall: 2, dwarf: 980, pitch: 42, along: 1800 }] },
    })
    expect(findings[0]!.code).toBe("section-not-closed")
    expect(findings[0]!.expected).toContain("height of dwarf wall 2")
    expect(findings[0]!.expected).toContain("length up the slope over wall 2")
    expect(findings[0]!.expected).toContain("or as likely")
  })

  it("holds slopes round a corner each against its own figures", () => {
    const { section, findings } = surveyed({
      ceiling: {
        heights: [2310],
        slopes: [
          { wall: 2, dwarf: 980, pitch: 42, along: 1988 },
          { wall: 3, dwarf: 980, pitch: 42, along: 1988 },
        ],
      },
    })
    expect(findings).toEqual([])
    expect(section!.closure).toBeNull()
    expect(section!.residuals).toHaveLength(8)
  })

  it("says nothing where nothing was taped beyond what the shape needs", () => {
    const room = surveyed({ ceiling: { heights: [2310], slopes: [{ wall: 2, dwarf: 980, pitch: 42 }] } })
    expect(room.section).toBeNull()
    expect(room.findings).toEqual([])
  })
})
