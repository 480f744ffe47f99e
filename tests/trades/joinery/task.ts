import type { ProductOf } from "../../../src/intake/schema/products.ts"
import type { Room } from "../../../src/survey/room.ts"
import { floorRules } from "../../../src/trades/floors/rules.ts"
import { type JoineryInputs, joineryInputs } from "../../../src/trades/joinery/inputs.ts"
import { joineryRules } from "../../../src/trades/joinery/rules.ts"
import type { JobFacts, RoomFacts, Task } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** A moulding sold in lengths of 4,400. */
export function moulding(given: Partial<ProductOf<"length">> & { id: string }): ProductOf<"length"> {
  return {
    kind: "length",
    name: given.id,
    supplier: "timber merchant",
    lead: 3,
    thickness: 18,
    width: 145,
    material: "mdf",
    primed: true,
    lengths: [{ length: 4400, price: "10.00" }],
    ...given,
  }
}

const door = {
  name: "Door",
  lining: "keep",
  lengthsTo: "lining",
  heightsFrom: "finished-floor",
  widths: [768],
  heights: [1994],
  wall: 100,
}

/** A storey with a landing and an upper one, a stair between them, two doorways. */
export const twoStoreys = {
  storeys: [
    { id: "first", name: "First floor", deck: 2610, finishNow: 12, base: "timber" },
    { id: "attic", name: "Attic", deck: 5275, finishNow: 0, base: "timber" },
  ],
  stairs: [
    {
      id: "S2",
      name: "New stair",
      from: "first",
      to: "attic",
      fromRoom: "B4",
      toRoom: "R1",
      risers: 13,
      rise: 205,
      going: 225,
      width: 800,
      winders: 3,
      new: true,
      openEdge: 2050,
    },
  ],
  doors: [
    { ...door, id: "D1", between: ["R1", "B4"] },
    { ...door, id: "D2", between: ["R1", "R2"] },
  ],
}

/** Products of a house's joinery, one a use. */
export const goods = [
  moulding({ id: "skirting" }),
  moulding({ id: "architrave", width: 69 }),
  moulding({ id: "nosing", width: 70, thickness: 19, material: "hardwood" }),
  moulding({ id: "bar", width: 44, thickness: 12, material: "hardwood" }),
  moulding({ id: "plank", width: 220, material: "softwood", primed: false }),
]

/** What `joineryTask` may be given besides what is written for joinery. */
export interface Given {
  room?: Record<string, unknown>
  passed?: Record<string, RoomFacts>
  chosen?: Record<string, string>
  products?: ProductOf<"length">[]
}

/** A room R1 in the attic at the head of a stair, with doorways D1 and D2 in wall 1, and what is written for its joinery. */
export function joineryTask(
  written: Record<string, unknown> = {},
  given: Given = {},
): Task<JoineryInputs> & { job: JobFacts; room: Room } {
  const house = houseOf(twoStoreys)
  const room = surveyed(
    {
      storey: "attic",
      doors: [
        { door: "D1", wall: 1, fromLeft: 500 },
        { door: "D2", wall: 1, fromLeft: 2500 },
      ],
      ...given.room,
    },
    house,
  )
  const job = jobFacts({
    rooms: [room],
    house,
    rules: rulesOf([...joineryRules, ...floorRules]),
    products: given.products ?? goods,
    chosen: {
      skirting: "skirting",
      architrave: "architrave",
      nosing: "nosing",
      threshold: "bar",
      ...given.chosen,
    },
    passed: given.passed ?? { R1: { floorBuildUp: 19, floorGap: 12, floorFinish: "oak" } },
  })
  return {
    job,
    room,
    input: joineryInputs.parse(written),
    at: { file: room.file, path: ["work", "joinery"] },
    facts: job.passed.get("R1") ?? {},
  }
}
