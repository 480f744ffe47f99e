import { type ElectricsInputs, electricsInputs } from "../../../src/trades/electrics/inputs.ts"
import { electricsRules } from "../../../src/trades/electrics/rules.ts"
import type { RoomFacts, Task } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** The rulebook that electrics needs. */
export const rules = rulesOf(electricsRules)

/** Electrics in a room of 4,000 by 3,000 taped from the deck, doorway D1 in wall 1, a floor of 19 on the way. */
export function task(
  written: Record<string, unknown>,
  room = {},
  facts: RoomFacts = { floorBuildUp: 19 },
): Task<ElectricsInputs> {
  const house = houseOf({
    doors: [
      {
        id: "D1",
        name: "door",
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
  const surveyedRoom = surveyed({ doors: [{ door: "D1", wall: 1, fromLeft: 500 }], ...room }, house, rules)
  return {
    job: jobFacts({ rooms: [surveyedRoom], house, rules }),
    room: surveyedRoom,
    input: electricsInputs.parse(written),
    at: { file: surveyedRoom.file, path: ["work", "electrics"] },
    facts,
  }
}

/** Points of a bedroom as an author would write them. */
export const bedroom = {
  points: [
    { kind: "socket", wall: 3, fromLeft: 600, gang: 2 },
    { kind: "switch", wall: 1, fromLeft: 1500, note: "light" },
    { kind: "socket", wall: 3, fromLeft: 3200, gang: 2, height: 500 },
    { kind: "light", on: "ceiling", wall: 1, fromLeft: 2000, off: 1500 },
    { kind: "smoke-alarm", on: "ceiling", wall: 1, fromLeft: 3000, off: 1500 },
    { kind: "socket", wall: 2, fromLeft: 300, is: "stays", height: 450 },
  ],
}
