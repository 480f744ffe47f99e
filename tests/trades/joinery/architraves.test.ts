import { describe, expect, it } from "vitest"
import { architravePieces, architraveSets } from "../../../src/trades/joinery/architraves.ts"
import { joineryRules } from "../../../src/trades/joinery/rules.ts"
import { joineryFacts } from "../../facts/joinery.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

const fact = joineryFacts.architraveSet
const doors = [
  {
    id: "D1",
    name: "Door",
    between: ["R1", "outside"],
    lining: "keep",
    lengthsTo: "lining",
    heightsFrom: "finished-floor",
    widths: [fact.insideWidth],
    heights: [fact.insideHeight],
    wall: 100,
  },
]

describe("architraves", () => {
  const house = houseOf({ doors })
  const room = surveyed({ doors: [{ door: "D1", wall: 1, fromLeft: 500 }] }, house)
  const job = jobFacts({ rooms: [room], house, rules: rulesOf(joineryRules) })
  const task = { room, product: "architrave", width: fact.width, job }

  it("gives head and legs by their long points", () => {
    const pieces = architravePieces(architraveSets(task), task)
    expect(pieces.map((piece) => [piece.mark, piece.length])).toEqual([
      ["R1-1-D1L", fact.leg],
      ["R1-1-D1H", fact.head],
      ["R1-1-D1R", fact.leg],
    ])
    expect(pieces[1]!.shortPoint).toBe(fact.head - 2 * fact.width)
  })

  it("stops the skirting at the architraves' outer edges", () => {
    // middle of the opening 500 + 384 = 884; half the head 460: from 424 to 1,344
    expect(architraveSets(task)).toMatchObject([{ outerFrom: 424, outerTo: 1344 }])
  })

  it("takes the lining that the trade hanging doors passes on", () => {
    const passed = jobFacts({
      rooms: [room],
      house,
      rules: rulesOf(joineryRules),
      passed: { R1: { linings: { D1: { width: 700, height: 1990 } } } },
    })
    expect(architraveSets({ ...task, job: passed })[0]!.inside).toEqual({ width: 700, height: 1990 })
  })

  it("stands legs on their plinth blocks", () => {
    const legs = architravePieces(architraveSets(task), { ...task, plinth: 160 })
    expect(legs.map((piece) => piece.length)).toEqual([fact.leg - 160, fact.head, fact.leg - 160])
  })
})
