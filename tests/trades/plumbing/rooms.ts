import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import { type PlumbingInputs, plumbingInputs } from "../../../src/trades/plumbing/inputs.ts"
import { plumbingRules } from "../../../src/trades/plumbing/rules.ts"
import type { RoomFacts, Task } from "../../../src/trades/trade.ts"
import { jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** The rulebook that plumbing needs. */
export const rules = rulesOf([...plumbingRules, ...dryingRules])

/** Plumbing in a room of 4,000 by 3,000 taped from the deck. */
export function task(
  written: Record<string, unknown>,
  facts: RoomFacts = { floorBuildUp: 19, floorGap: 12 },
  given = {},
): Task<PlumbingInputs> {
  const room = surveyed(given, undefined, rules)
  return {
    job: jobFacts({ rooms: [room], rules }),
    room,
    input: plumbingInputs.parse(written),
    at: { file: room.file, path: ["work", "plumbing"] },
    facts,
  }
}

/** A radiator on wall 2. */
export const radiator = { wall: 2, fromLeft: 900, width: 1000, height: 600 }
/** A WC and a basin on wall 2. */
export const wares = [
  { kind: "wc", wall: 2, fromLeft: 200, width: 380 },
  { kind: "basin", wall: 2, fromLeft: 900, width: 550, rim: 850 },
]
