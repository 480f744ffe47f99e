import { expect, it } from "vitest"
import { doorTags } from "../../../src/trades/decorating/door-tags.ts"
import { attic } from "./attic.ts"

it("two tags of the same size at full size on one upright page, each to be written on, cut apart between", () => {
  const { blocks, orientation } = doorTags(attic().room)
  const [block] = blocks
  if (block?.kind !== "drawing") throw new Error("no drawing")
  expect([orientation, block.scale]).toEqual(["portrait", 1])
  const { shapes } = block.drawing
  const boxes = shapes.flatMap((shape) => (shape.kind === "box" ? [shape] : []))
  expect(boxes).toHaveLength(2)
  expect(boxes[0]!.width).toBe(boxes[1]!.width)
  expect(boxes[1]!.at.y).toBeGreaterThan(boxes[0]!.at.y + boxes[0]!.height)
  // An upright A4 sheet within margins of 15.
  expect(boxes[0]!.width).toBeLessThanOrEqual(210 - 2 * 15)
  const texts = shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []))
  for (const asked of ["WET: KEEP OUT", "R1 Test room", "Day", "Hour", "What is wet", "Hung by"])
    expect(texts.filter((text) => text === asked)).toHaveLength(2)
  const lines = shapes.flatMap((shape) => (shape.kind === "line" ? [shape] : []))
  // Four lines to write on, twice, and the cut.
  expect(lines).toHaveLength(9)
  for (const { from, to } of lines) expect(to.x - from.x).toBeGreaterThan(30)
})
