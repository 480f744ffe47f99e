import { clockAt } from "../kernels/calendar/instant.ts"
import type { DatedStep, FirstNight, Site } from "./programme.ts"
import type { Ways } from "./ways.ts"

/**
 * The first night in a storey that is new to an occupied house: after every door between its rooms and the open air is
 * hung and its gaps measured, after the electrician has closed up every room (alarms on all storeys tested), after stairs
 * and nosings, and after the last work on the storey itself. Building control's word comes on top (common practice).
 * @returns null where people live in every room already, or nobody lives in the house
 */
export function firstNightOf(
  steps: readonly DatedStep[],
  site: Site,
  { ways, zone }: { ways: Ways; zone: string },
): FirstNight | null {
  const added = site.rooms.filter((room) => !ways.lived.has(room.id)).map((room) => room.id)
  const slept = site.rooms.some((room) => added.includes(room.id) && room.use === "bedroom")
  if (!site.occupied || !slept) return null
  const asked = steps.filter(
    ({ step }) =>
      (step.room !== null && added.includes(step.room)) ||
      (step.trade === "doors" && (step.stage === "hang" || step.stage === "snag")) ||
      step.stage === "nosings" ||
      (step.trade === "electrics" && step.stage === "covers-off"),
  )
  if (asked.length === 0) return null
  const after = [...asked].sort((a, b) => b.ready - a.ready || (a.step.key < b.step.key ? -1 : 1))
  return { on: clockAt(after[0]!.ready, zone).date, after: after.map(({ step }) => step.key) }
}
