import { product } from "../../../src/intake/schema/products.ts"
import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import { type TilingInputs, tilingInputs } from "../../../src/trades/tiling/inputs.ts"
import { tilingRules } from "../../../src/trades/tiling/rules.ts"
import type { Task } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** The rulebook that tiling needs. */
export const rules = rulesOf([...tilingRules, ...dryingRules])
const sold = { supplier: "tile merchant", lead: 5, price: "20.00", perBox: 10, boxMass: 14, kind: "tile" }
const products = [
  product.parse({ ...sold, id: "wall", name: "Wall tile", width: 248, height: 398, thickness: 8 }),
  product.parse({ ...sold, id: "floor", name: "Floor tile", width: 300, height: 300, thickness: 10 }),
]

/** A wash room 2,310 by 1,540, 2,290 high, taped from the deck; door D1 in wall 1. */
export function task(
  written: Record<string, unknown>,
  roomWritten: Record<string, unknown> = {},
): Task<TilingInputs> {
  const house = houseOf({
    doors: [
      {
        id: "D1",
        name: "door",
        between: ["R1", "A1"],
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
      use: "bathroom",
      outline: [2310, 1540, 2310, 1540].map((length) => ({ length, turn: "right" })),
      diagonals: [],
      ceiling: { heights: [2290] },
      doors: [{ door: "D1", wall: 1, fromLeft: 120 }],
      ...roomWritten,
    },
    house,
    rules,
  )
  const passed = { A1: { floorBuildUp: 19, floorFinish: "oak" } }
  return {
    job: jobFacts({
      rooms: [room],
      house,
      rules,
      products,
      chosen: { wallTile: "wall", floorTile: "floor" },
      passed,
    }),
    room,
    input: tilingInputs.parse(written),
    at: { file: room.file, path: ["work", "tiling"] },
    facts: { floorBuildUp: 13 },
  }
}
