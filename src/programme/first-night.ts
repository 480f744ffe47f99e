import { clockAt } from "../kernels/calendar/instant.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep, FirstNight, FirstNightCondition, Site } from "./programme.ts"
import type { Ways } from "./ways.ts"

/** What is known besides the dated steps. */
export interface FirstNightGiven {
  ways: Ways
  zone: string
  /** The day for which building control has agreed to look, where one is agreed. */
  controlVisit?: IsoDate
}

/**
 * The first night in a storey that is new to an occupied house. It waits for every door between its rooms and the open air to
 * be hung and its gaps measured, for the stair's enclosure to be closed, for alarms on all storeys tested together, for guarding
 * and nosings, for the last work on the storey itself, and for building control's word (common practice).
 * @returns null where people live in every room already, or nobody lives in the house
 */
export function firstNightOf(
  steps: readonly DatedStep[],
  site: Site,
  { ways, zone, controlVisit }: FirstNightGiven,
): FirstNight | null {
  const rooms = site.rooms.filter((room) => !ways.lived.has(room.id)).map((room) => room.id)
  const slept = site.rooms.some((room) => rooms.includes(room.id) && room.use === "bedroom")
  if (!site.occupied || !slept) return null
  const tests = conditionTests(rooms)
  const asked = steps.filter((each) => tests.some(([, holds]) => holds(each)))
  if (asked.length === 0) return null
  const after = lastFirst(asked)
  const done = clockAt(after[0]!.ready, zone).date
  const conditions = tests.map(([id, holds]): FirstNightCondition => {
    const own = lastFirst(asked.filter(holds))
    const on = own[0] ? clockAt(own[0].ready, zone).date : null
    return { id, on, after: own.map(({ step }) => step.key) }
  })
  return {
    on: controlVisit !== undefined && controlVisit > done ? controlVisit : done,
    after: after.map(({ step }) => step.key),
    conditions: [...conditions, { id: "control", on: controlVisit ?? null, after: [] }],
    rooms,
  }
}

type Test = (each: DatedStep) => boolean

function conditionTests(rooms: readonly string[]): [FirstNightCondition["id"], Test][] {
  const isEnclosure: Test = ({ step }) => /^doors\/[^/]+\/(light|enclosure)$/.test(step.key)
  return [
    [
      "doors",
      (each) =>
        each.step.trade === "doors" &&
        (each.step.stage === "hang" || each.step.stage === "snag") &&
        !isEnclosure(each),
    ],
    ["enclosure", isEnclosure],
    ["alarms", ({ step }) => step.trade === "electrics" && step.stage === "covers-off"],
    ["guarding", ({ step }) => step.stage === "nosings"],
    ["rooms", ({ step }) => step.room !== null && rooms.includes(step.room)],
  ]
}

function lastFirst(steps: readonly DatedStep[]): DatedStep[] {
  return [...steps].sort((a, b) => b.ready - a.ready || (a.step.key < b.step.key ? -1 : 1))
}
