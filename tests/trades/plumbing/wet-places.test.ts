import { describe, expect, it } from "vitest"
import { wetPlaces } from "../../../src/trades/plumbing/wet-places.ts"
import { rules, task } from "./rooms.ts"

describe("where water falls", () => {
  it("a shower as deep as wide, a bath by rule or as written; a basin is none", () => {
    const sanitaryware = [
      { kind: "shower", wall: 2, fromLeft: 100, width: 800 },
      { kind: "bath", wall: 3, fromLeft: 0, width: 1700 },
      { kind: "bath", wall: 3, fromLeft: 0, width: 1700, depth: 750 },
      { kind: "basin", wall: 4, fromLeft: 0, width: 500 },
    ]
    expect(wetPlaces(task({ sanitaryware })).wetPlaces?.map(({ what, depth }) => [what, depth])).toEqual([
      ["shower", 800],
      ["bath", rules.value("plumb-bath-depth")],
      ["bath", 750],
    ])
    expect(wetPlaces(task({}))).toEqual({})
  })
})
