import { createEvents, type DateArray, type EventAttributes } from "ics"
import type { Instant } from "../../kernels/calendar/instant.ts"
import { instantAt } from "../../kernels/calendar/instant.ts"
import { Fault } from "../../kernels/fault.ts"
import type { SetJob } from "../site-data.ts"

/** `programme.ics` (RFC 5545): one event a step, in universal time; stamps come from the revision's day, never the clock. */
export function calendarFile({ result, revision }: SetJob): string {
  const { steps, zone, crews } = result.programme
  const stamp = new Date(instantAt(revision.on, "00:00", zone)).toISOString().replace(/[-:]|\.\d+/g, "")
  const events = steps.map(
    ({ step, crew, start, finish }): EventAttributes => ({
      uid: `${encodeURIComponent(step.key)}@${result.job.code}`,
      title: `${step.room ?? "House"}: ${step.title}`,
      description: `${crews.find((each) => each.id === crew)?.name ?? crew}. ${step.detail}`,
      start: utc(start),
      startInputType: "utc",
      startOutputType: "utc",
      end: utc(finish),
      endInputType: "utc",
      endOutputType: "utc",
      productId: "-//storey rod//programme//EN",
    }),
  )
  const { error, value } = createEvents(events, {
    productId: "-//storey rod//programme//EN",
    calName: result.job.title,
  })
  if (error || !value)
    throw new Fault(`the calendar file of ${result.job.ref} was refused: ${error?.message}`)
  return value.replace(/^DTSTAMP:.*$/gm, () => `DTSTAMP:${stamp}`)
}

function utc(instant: Instant): DateArray {
  const at = new Date(instant)
  return [at.getUTCFullYear(), at.getUTCMonth() + 1, at.getUTCDate(), at.getUTCHours(), at.getUTCMinutes()]
}
