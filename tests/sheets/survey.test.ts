import { describe, expect, it } from "vitest"
import type { Block } from "../../src/kernels/paper.ts"
import type { JobResult } from "../../src/sheets/job-result.ts"
import { surveySheet } from "../../src/sheets/survey.ts"
import type { House } from "../../src/survey/room.ts"
import { rulesOf, surveyed } from "../fixtures/rooms.ts"
import { badTables } from "../fixtures/tables.ts"
import { demoHouses, demoRoom } from "../survey/demo.ts"

/** What the sheet reads of a job's result. */
function resultOf(house: House, buildUp = 19): JobResult {
  const passed = new Map(house.rooms.map((room) => [room.id, { floorBuildUp: buildUp }]))
  return { house, rules: rulesOf(), passed, results: [] } as unknown as JobResult
}

const house = demoHouses()[0]!
const table = (blocks: readonly Block[], caption: string) => {
  const found = blocks.find((block) => block.kind === "table" && block.caption === caption)
  if (found?.kind !== "table") throw new Error(`no table ${caption}`)
  return found
}

describe("surveySheet", () => {
  const room = demoRoom("A1")
  const sheet = surveySheet(resultOf(house), room)

  it("has tables whose rows match their columns, for every room of the demo jobs", () => {
    for (const each of demoHouses().flatMap(({ rooms }) => rooms))
      expect(badTables(surveySheet(resultOf(house), each))).toEqual([])
  })

  it("prints the datum, and all that was taped beside what it was adjusted to", () => {
    expect(sheet.datum).toBe("Heights from the bare deck. Lengths to plaster. Millimetres.")
    const walls = table(sheet.blocks, "Walls and corners, as taped and as adjusted").rows
    expect(walls.map(({ cells }) => cells[1])).toEqual([
      "4860.0",
      "3952.0",
      "1793.0",
      "345.0",
      "1260.0",
      "345.0",
      "1793.0",
      "3940.0",
    ])
    expect(walls.map(({ cells }) => cells[4])).toEqual([
      "90.00°",
      "90.00°",
      "87.00°",
      "−87.00°",
      "−93.00°",
      "93.00°",
      "90.00°",
      "90.00°",
    ])
    // 1 diagonal; 2 dwarf walls, 2 lengths up the slopes, 2 pitches, flat, floor, height of the flat
    const { rows, note } = table(sheet.blocks, "Check measurements")
    expect(rows).toHaveLength(1 + 9)
    expect(rows[0]!.cells.slice(0, 2)).toEqual(["Diagonal from corner 1 to corner 3", "6262.0"])
    expect(note).toContain("The shape is fixed.")
  })

  it("gives each corner's true angle and the mitre from it: 87 degrees turned right is 93 inside, 43.5 from square", () => {
    const { rows } = table(sheet.blocks, "Walls and corners, as taped and as adjusted")
    const [kind, angle, mitre] = rows[2]!.cells.slice(6)
    expect(kind).toBe("inside")
    // Turns of 87 were measured to 1 degree, and bend within it.
    expect(Math.abs(Number.parseFloat(angle!) - 93)).toBeLessThanOrEqual(1)
    expect(Number.parseFloat(mitre!)).toBeCloseTo((180 - Number.parseFloat(angle!)) / 2, 0)
    expect(rows[3]!.cells[6]).toBe("outside")
  })

  it("lists openings with reveals, readings, photos, what is hidden, and joists", () => {
    const openings = table(sheet.blocks, "Openings")
    expect(openings.rows.find(({ cells }) => cells[0] === "RW1")!.cells.slice(-2)).toEqual([
      "3.92 × 240",
      "0.94",
    ])
    expect(table(sheet.blocks, "Readings").rows).toHaveLength(room.readings.length)
    const words = JSON.stringify(sheet.blocks)
    expect(words).toContain("Photo 1: chimney breast before boarding")
    expect(words).toContain("pipe in the floor, wall 2, 900 to 1,500 from its left end (radiator tails)")
    expect(words).toContain("Joists run along wall 1, at 400 centres, the first 60 from it.")
  })

  it("prints 'scan first' where nothing is known, and what is still to be taped", () => {
    const plain = surveyed({ diagonals: [] })
    const { blocks } = surveySheet(resultOf(house), plain)
    expect(blocks.some((block) => block.kind === "warning" && block.caption === "Scan first")).toBe(true)
    expect(JSON.stringify(blocks)).toContain("Shape not fixed: tape from corner 1 to corner 3")
  })

  it("counts headroom from the finished floor that is passed on", () => {
    const value = (buildUp: number) => {
      const figures = surveySheet(resultOf(house, buildUp), room).blocks[0]!
      return figures.kind === "figures"
        ? figures.items.find(({ label }) => label.endsWith("1.5 m"))!.value
        : ""
    }
    // Worked by hand: 13.8 m2 over 19 of floor; 13.95 over the bare deck.
    expect(Number(value(19))).toBeCloseTo(13.81, 1)
    expect(Number(value(0))).toBeGreaterThan(Number(value(19)))
  })
})
