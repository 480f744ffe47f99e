import { describe, expect, it } from "vitest"
import { colourLine, wallUnderSlopes } from "../../../src/trades/decorating/colour-line.ts"
import { attic, moulding } from "./attic.ts"

describe("where the colours meet", () => {
  it("is drawn on a wall under the slope; a room without slopes has none", () => {
    expect([2, 4]).toContain(wallUnderSlopes(attic().room)!.number)
    expect(wallUnderSlopes(attic({}, moulding, { ceiling: { heights: [2400] } }).room)).toBeUndefined()
  })

  it("names the slope by the client's choice", () => {
    const names = (slopeIs: string) => {
      const task = attic({ slopeIs, wallColour: "sage", ceilingColour: "white" })
      const { shapes } = colourLine(wallUnderSlopes(task.room)!, task.input)
      return shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : [])).sort()
    }
    expect(names("ceiling")).toEqual(["sage", "white", "white"])
    expect(names("wall")).toEqual(["sage", "sage", "white"])
  })
})
