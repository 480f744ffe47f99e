import { describe, expect, it } from "vitest"
import { surveyed } from "../fixtures/rooms.ts"

const fourSides = (lengths: number[]) => lengths.map((length) => ({ length, turn: "right" }))

/** A breast 1,260 by 345 in the far wall, its turns measured. */
const breastRoom = [
  { length: 4860, turn: "right" },
  { length: 3952, turn: "right" },
  { length: 1793, turn: 87 },
  { length: 345, turn: -87 },
  { length: 1260, turn: -93 },
  { length: 345, turn: 93 },
  { length: 1793, turn: "right" },
  { length: 3940, turn: "right" },
]

describe("measuredOutline", () => {
  it("bends turns nobody measured and keeps what was taped within the tape's tolerance", () => {
    // 4,000 by 3,000 with a diagonal of 5,052: the corner between is not square. Cosine rule:
    // cos = (4000² + 3000² - 5052²) / (2·4000·3000) = (25,000,000 - 25,522,704) / 24,000,000 = -0.021779 -> 91.25 degrees.
    const room = surveyed({ diagonals: [{ from: 1, to: 3, length: 5052 }] })
    expect(room.findings).toEqual([])
    expect(room.trust.fixed).toBe(true)
    expect(room.walls[1]!.angleAtStart).toBeCloseTo(91.25, 1)
    for (const wall of room.walls) expect(Math.abs(wall.length - wall.taped)).toBeLessThanOrEqual(3)
    expect(room.trust.residuals.filter(({ unit }) => unit === "mm")).toHaveLength(5)
  })

  it("says that four sides without a diagonal do not fix a room, however small, and what to tape", () => {
    for (const [long, short] of [
      [4000, 3000],
      [900, 620],
    ] as const) {
      const room = surveyed({ outline: fourSides([long, short, long, short]), diagonals: [] })
      expect(room.trust.fixed).toBe(false)
      expect(room.trust.needs).toEqual([{ from: 1, to: 3 }])
      expect(room.findings.map(({ code, severity }) => [code, severity])).toEqual([
        ["shape-not-fixed", "note"],
      ])
      expect(room.findings[0]!.message).toContain("one more diagonal, from corner 1 to corner 3")
    }
  })

  it("takes a room with a breast and one diagonal as fixed: its small turns leave it open by a few centimetres", () => {
    const room = surveyed({ outline: breastRoom, diagonals: [{ from: 1, to: 3, length: 6262 }] })
    expect(room.findings).toEqual([])
    expect(room.trust.fixed).toBe(true)
    expect(room.trust.looseness).toBeLessThanOrEqual(40)
  })

  it("names every check that is still needed where several are", () => {
    const room = surveyed({
      outline: [
        { length: 6000, turn: "right" },
        { length: 5000, turn: "right" },
        { length: 2500, turn: "right" },
        { length: 2200, turn: "left" },
        { length: 3500, turn: "right" },
        { length: 2800, turn: "right" },
      ],
      diagonals: [],
    })
    expect(room.trust.needs.length).toBeGreaterThan(1)
    const [finding] = room.findings
    for (const { from, to } of room.trust.needs)
      expect(finding!.message).toContain(`from corner ${from} to corner ${to}`)
  })

  it("an outline that does not close stops the job, with its gap and the measurement to tape again", () => {
    // Wall 3 reads 5,000 where its neighbours and the diagonal leave 4,000.
    const room = surveyed({ outline: fourSides([4000, 3000, 5000, 3000]) })
    const [finding] = room.findings
    expect(finding).toMatchObject({ code: "outline-not-closed", severity: "error" })
    expect(finding!.at).toEqual({ file: "rooms/r1.yaml", path: ["outline", 2, "length"] })
    expect(finding!.message).toContain("1,000 mm")
    expect(finding!.expected).toContain("wall 3: 1000 mm slip")
  })

  it("names both where two measurements explain it equally", () => {
    // Without a diagonal nothing tells whether wall 1 reads too long or wall 3 too short.
    const room = surveyed({ outline: fourSides([5000, 3000, 4000, 3000]), diagonals: [] })
    const [finding] = room.findings
    expect(finding!.code).toBe("outline-not-closed")
    expect(finding!.expected).toContain("wall 1")
    expect(finding!.expected).toContain("wall 3")
    expect(finding!.mend).toContain("each of them")
  })

  it("says which diagonal disagrees where the walk closes well enough", () => {
    // Walls within 4 mm, the diagonal 90 mm short of what four sides and turns of 90 +/- 2 degrees allow: 5,000 - 84.
    const room = surveyed({
      diagonals: [
        { from: 1, to: 3, length: 4500 },
        { from: 2, to: 4, length: 5000 },
      ],
    })
    const [finding] = room.findings
    expect(finding).toMatchObject({ code: "outline-not-closed", severity: "error" })
    expect(finding!.message).toContain("diagonal from corner 1 to corner 3")
  })
})
