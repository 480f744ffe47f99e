import { describe, expect, it } from "vitest"
import {
  clearSystem,
  coatOrder,
  plasterSystem,
  processOf,
  woodSystem,
} from "../../../src/trades/decorating/systems.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import { COATS_ON_BARE_WOOD } from "../../facts/decorating.ts"

const states = ["new-plaster", "old-paint", "old-gloss", "stained"] as const

describe("systems of coats", () => {
  it("new plaster walls: mist, white, colour, last coat (common practice: mist and two full coats)", () => {
    const keys = plasterSystem({ as: "wall", state: "new-plaster", wet: false, colourCoats: 2 }).map(
      (coat) => coat.key,
    )
    expect(keys).toEqual(["mist", "white", "colour-1", "colour-last"])
  })

  it("a deep colour takes one coat more", () => {
    const keys = plasterSystem({ as: "wall", state: "old-paint", wet: false, colourCoats: 3 }).map(
      (coat) => coat.key,
    )
    expect(keys).toEqual(["colour-1", "colour-2", "colour-last"])
  })

  it.each([
    ["old-gloss", "bond"],
    ["stained", "block"],
    ["new-plaster", "mist"],
  ] as const)("%s begins with %s", (state, first) => {
    for (const as of ["wall", "ceiling"] as const) {
      expect(plasterSystem({ as, state, wet: false, colourCoats: 2 })[0]!.key).toBe(first)
    }
  })

  it("only mist is thinned, only new plaster gets it, undercoat never goes on plaster", () => {
    for (const state of states) {
      for (const as of ["wall", "ceiling"] as const) {
        const coats = plasterSystem({ as, state, wet: false, colourCoats: 2 })
        expect(coats.filter((coat) => coat.mist).length).toBe(state === "new-plaster" ? 1 : 0)
        expect(coats.some((coat) => coat.use === "undercoat" || coat.use === "trim")).toBe(false)
      }
    }
  })

  it("wet rooms end in moisture-tolerant paint", () => {
    expect(plasterSystem({ as: "wall", state: "new-plaster", wet: true, colourCoats: 2 }).at(-1)!.use).toBe(
      "moistureColour",
    )
    expect(plasterSystem({ as: "ceiling", state: "old-paint", wet: true, colourCoats: 2 }).at(-1)!.use).toBe(
      "moistureWhite",
    )
  })

  it(`bare wood gets at least ${COATS_ON_BARE_WOOD.value} coats (${COATS_ON_BARE_WOOD.source})`, () => {
    expect(woodSystem("bare").length).toBeGreaterThanOrEqual(COATS_ON_BARE_WOOD.value)
    expect(woodSystem("bare").map((coat) => coat.use)).toEqual(["primer", "undercoat", "trim"])
  })

  it("every system goes on in the one order, and never back a stage", () => {
    const systems = [
      ...states.flatMap((state) =>
        (["wall", "ceiling"] as const).map((as) => plasterSystem({ as, state, wet: false, colourCoats: 4 })),
      ),
      woodSystem("bare"),
      clearSystem(4),
    ]
    for (const system of systems) {
      const places = system.map((coat) => coatOrder.indexOf(coat.key))
      expect(places).toEqual([...places].sort((a, b) => a - b))
      const ranks = system.map((coat) => stageRank(coat.stage))
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    }
  })

  it("solvent holds longer than water: the process follows the tin", () => {
    const [undercoat] = woodSystem("primed")
    expect(processOf(undercoat!, "water")).toBe("trim-water")
    expect(processOf(undercoat!, "solvent")).toBe("trim-solvent")
    expect(processOf(clearSystem(1)[0]!, "oil")).toBe("oil")
  })
})
