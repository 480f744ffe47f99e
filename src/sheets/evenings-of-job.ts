import { type AlarmPlace, type Evening, eveningsOf } from "../programme/evenings.ts"
import { waysOf } from "../programme/ways.ts"
import type { JobResult } from "./job-result.ts"

/** The evenings of a job's programme; none where nobody lives in the house. */
export function eveningsIn(result: JobResult): Evening[] {
  const { programme, house, rules } = result
  const ways = waysOf(house)
  const alarms = alarmPlaces(result)
  return eveningsOf({ programme, site: house, ways, alarms, reach: rules.value("programme-dust-reach") })
}

/** Rooms with alarms: those that people live in have one up all along, the new storey's from its second fix on. */
export function alarmPlaces({ results, house }: JobResult): AlarmPlace[] {
  const { lived } = waysOf(house)
  const rooms = results
    .filter((each) => each.room === null)
    .flatMap((each) => (each.work.results.alarms ?? []) as { room: string }[])
  return rooms.map(({ room }) => ({ room, fittedBy: lived.has(room) ? null : `electrics/${room}/fit` }))
}
