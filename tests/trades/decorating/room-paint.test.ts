import { expect, it } from "vitest"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic } from "./attic.ts"

it("every surface and every piece of wood has its coats", () => {
  const { surfaces, wood, lines } = roomPaint(attic())
  const painted = new Set(lines.map((line) => line.surface))
  expect([...painted].sort()).toEqual(
    [...surfaces.map((each) => each.name), ...wood.map((each) => each.what)].sort(),
  )
  // Wall 2: mist, white, two of colour, each on its 6.22 m2.
  const wall = lines.filter((line) => line.surface === "Wall 2")
  expect(wall.map((line) => line.coat.key)).toEqual(["mist", "white", "colour-1", "colour-last"])
  for (const line of wall) expect(line.area).toBeCloseTo(6.22, 6)
})
