import { describe, expect, it } from "vitest"
import { coatGroups, groupWords } from "../../../src/trades/decorating/groups.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic } from "./attic.ts"

const linesOf = (key: string, written = {}) =>
  roomPaint(attic(written)).lines.filter((line) => line.coat.key === key)
const names = (key: string, written = {}) => coatGroups(linesOf(key, written)).map((group) => group.name)

describe("surfaces that take a coat together", () => {
  it("slopes go with the ceiling or the walls, as the client chose", () => {
    expect(names("mist")).toEqual(["Level ceiling and slopes", "Walls", "Window reveals"])
    expect(names("mist", { slopeIs: "wall" })).toEqual([
      "Level ceiling",
      "Walls and slopes",
      "Window reveals",
    ])
  })

  it("nothing is lost or counted twice", () => {
    const sum = (list: { area: number; paint: number; water: number }[]) =>
      list.reduce((total, each) => total + each.area + each.paint + each.water, 0)
    for (const key of ["mist", "white", "colour-last", "finish"])
      expect(sum(coatGroups(linesOf(key)))).toBeCloseTo(sum(linesOf(key)), 9)
  })

  it("a wall of its own colour is its own group, named with wall and colour", () => {
    expect(names("colour-1", { accents: [{ wall: 3, colour: "wall colour 2" }] })).toContain(
      "Wall 3, wall colour 2",
    )
  })

  it("are told in a sentence", () => {
    expect(groupWords(coatGroups(linesOf("mist")))).toBe("level ceiling and slopes; walls; window reveals")
  })
})
