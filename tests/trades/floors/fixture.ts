import type { Product } from "../../../src/intake/schema/products.ts"
import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import type { Rules } from "../../../src/rulebook/rules.ts"
import { type FloorInputs, floorInputs } from "../../../src/trades/floors/inputs.ts"
import { floorRules } from "../../../src/trades/floors/rules.ts"
import type { RoomFacts, Task } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

export const board: Extract<Product, { kind: "board" }> = {
  id: "oak",
  kind: "board",
  name: "Oak board",
  supplier: "flooring supplier",
  lead: 10,
  thickness: 14,
  width: 189,
  length: 1860,
  perPack: 8,
  packMass: 24.4,
  pricePerM2: "34.90",
}
export const underlay: Extract<Product, { kind: "roll" }> = {
  id: "foil",
  kind: "roll",
  name: "Underlay",
  supplier: "flooring supplier",
  lead: 3,
  thickness: 5,
  width: 1000,
  area: 10,
  mass: 6,
  price: "40.00",
  foil: true,
}

/** A floor task in a room of 4,000 by 3,000 unless given otherwise. */
export function floorTask(given: {
  input?: Record<string, unknown>
  room?: Record<string, unknown>
  storey?: Record<string, unknown>
  doors?: Record<string, unknown>[]
  products?: Product[]
  facts?: RoomFacts
  rules?: Rules
  built?: number
  chosen?: Record<string, string>
}): Task<FloorInputs> {
  const rules = given.rules ?? rulesOf([...floorRules, ...dryingRules])
  const house = houseOf({
    storeys: [
      { id: "ground", name: "Ground floor", deck: 0, finishNow: 12, base: "timber", ...given.storey },
    ],
    doors: given.doors ?? [],
    ...(given.built === undefined ? {} : { built: given.built }),
  })
  const room = surveyed(given.room ?? {}, house, rules)
  const products = given.products ?? [board, underlay]
  const job = jobFacts({
    rooms: [room],
    house,
    rules,
    products,
    chosen: { "floor-board": "oak", "floor-underlay": "foil", ...given.chosen },
  })
  const input = floorInputs.parse({ finish: "floating-board", ...given.input })
  return { job, room, input, at: { file: room.file, path: ["work", "floors"] }, facts: given.facts ?? {} }
}

/** A door of the house between the test room and a hall. */
export function doorBetween(given: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    id: "D1",
    name: "door",
    between: ["R1", "HALL"],
    swingsInto: "R1",
    hinges: "left",
    lining: "new",
    lengthsTo: "lining",
    heightsFrom: "deck",
    widths: [768],
    heights: [1990],
    wall: 100,
    ...given,
  }
}
