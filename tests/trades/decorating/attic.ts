import type { Product } from "../../../src/intake/schema/products.ts"
import { product } from "../../../src/intake/schema/products.ts"
import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import type { Rules } from "../../../src/rulebook/rules.ts"
import { type DecoratingInputs, decoratingInputs } from "../../../src/trades/decorating/inputs.ts"
import { decoratingRules } from "../../../src/trades/decorating/rules.ts"
import type { RoomFacts, Task } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** The rulebook that decorating needs. */
export function paintRules(): Rules {
  return rulesOf([...dryingRules, ...decoratingRules])
}

/** Paints invented for the tests. */
export const paints: Product[] = [
  liquid("white", {
    use: "white-emulsion",
    colour: "white",
    tins: tins(["2.5", "24.00"], ["5", "39.00"], ["10", "66.00"]),
  }),
  liquid("sage", {
    use: "emulsion",
    colour: "wall colour 1",
    rate: 13,
    tins: tins(["2.5", "30.00"], ["5", "52.00"]),
  }),
  liquid("under", {
    use: "undercoat",
    colour: "grey",
    base: "solvent",
    tins: tins(["0.75", "12.00"], ["2.5", "31.00"]),
  }),
  liquid("satin", { use: "trim", colour: "trim colour", tins: tins(["0.75", "14.00"], ["2.5", "36.00"]) }),
]

const chosen = { white: "white", wallColour: "sage", undercoat: "under", trim: "satin" }

/** The attic room worked by hand in the tests: 4,000 by 3,000, level at 2,400, one slope of 45 degrees from a dwarf wall of 1,000. */
export function attic(
  written: Record<string, unknown> = {},
  facts: RoomFacts = moulding,
  roomWritten = {},
): Task<DecoratingInputs> {
  const house = houseOf({
    built: 1930,
    doors: [
      {
        id: "D1",
        name: "attic door",
        between: ["R1", "L1"],
        swingsInto: "R1",
        lining: "new",
        lengthsTo: "lining",
        heightsFrom: "deck",
        widths: [768],
        heights: [1990],
        wall: 120,
      },
    ],
  })
  const room = surveyed(
    {
      ceiling: { heights: [2400], slopes: [{ wall: 3, dwarf: 1000, pitch: 45 }] },
      doors: [{ door: "D1", wall: 1, fromLeft: 500 }],
      windows: [
        {
          id: "W1",
          kind: "roof-window",
          wall: 3,
          fromLeft: 1500,
          width: 780,
          height: 1180,
          sill: 300,
          reveal: 200,
        },
        { id: "H1", kind: "hatch", wall: 3, fromLeft: 200, width: 600, height: 700, sill: 100 },
      ],
      ...roomWritten,
    },
    house,
    paintRules(),
  )
  const job = jobFacts({ rooms: [room], house, rules: paintRules(), products: paints, chosen })
  return {
    job,
    room,
    input: decoratingInputs.parse(written),
    at: { file: room.file, path: ["work", "decorating"] },
    facts,
  }
}

/** Skirting and architrave passed to the attic room. */
export const moulding: RoomFacts = {
  skirting: { thickness: 18, height: 145 },
  architrave: { thickness: 18, width: 69, margin: 6 },
}

function liquid(id: string, of: Record<string, unknown>): Product {
  return product.parse({
    id,
    name: id,
    kind: "liquid",
    supplier: "paint merchant",
    lead: 2,
    base: "water",
    ...of,
  })
}

function tins(...sizes: [string, string][]) {
  return sizes.map(([litres, price]) => ({ litres: Number(litres), price }))
}
