import { describe, expect, it } from "vitest"
import { floorArea } from "../../../src/trades/floors/area.ts"
import { deckFixing } from "../../../src/trades/floors/deck.ts"
import { SCREWS, SHEET_SCREWS } from "../../facts/floors.ts"
import { floorTask } from "./fixture.ts"

const fixing = (given: Parameters<typeof floorTask>[0]) => {
  const task = floorTask(given)
  const { whole } = floorArea(task.room, { gap: 10, into: [] }, task.job.rules)
  return deckFixing(task.room, whole, task.input, task.job.rules)
}
const joists = { joists: { alongWallOf: "R1", wall: 2, centres: 400, firstFrom: 100 } }

describe("deck screwed down", () => {
  it.each(SCREWS)("$what takes screws $value long ($source)", ({ thickness, value }) => {
    expect(fixing({ input: { deck: { is: "boards", thickness } } }).screwLength).toBe(value)
  })

  /* Joists along wall 2 at 100, 500 ... 3,700: 10 joists of 3,000, 20 boards of 150 each, 2 screws a crossing. */
  it("two screws where a board crosses a joist, joist by joist (common practice)", () => {
    const found = fixing({
      storey: joists,
      input: { deck: { is: "boards", thickness: 22, boardWidth: 150 } },
    })
    expect(found.joists.map((joist) => [joist.from, Math.round(joist.length), joist.screws])).toEqual(
      Array.from({ length: 10 }, (_, index) => [100 + 400 * index, 3000, 40]),
    )
    expect(found).toMatchObject({ screws: 400, along: 2, measured: true })
  })

  it(`sheets: ${SHEET_SCREWS.field} along joists, ${SHEET_SCREWS.edge} round the room (${SHEET_SCREWS.source})`, () => {
    const found = fixing({ storey: joists, input: { deck: { is: "sheets", thickness: 22 } } })
    expect(found.screws).toBe(10 * Math.ceil(3000 / SHEET_SCREWS.field) + 14000 / SHEET_SCREWS.edge)
  })

  it("by area where joists are not known", () => {
    const found = fixing({ input: { deck: { is: "boards", thickness: 20, boardWidth: 100 } } })
    expect(found).toMatchObject({ screws: 600, joists: [], along: undefined })
    expect(fixing({}).measured).toBe(false)
  })
})
