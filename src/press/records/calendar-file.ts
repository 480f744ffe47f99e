import { createEvents, type DateArray, type EventAttributes } from "ics"
import type { Instant } from "../../kernels/calendar/instant.ts"
import { instantAt } from "../../kernels/calendar/instant.ts"
import { Fault } from "../../kernels/fault.ts"
import type { SetJob } from "../set-job.ts"

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
  return folded(value.replace(/^DTSTAMP:.*$/gm, () => `DTSTAMP:${stamp}`))
}

/** Longest line of a calendar file in bytes, its end not counted (RFC 5545, 3.1). */
const longestLine = 75

/** Content lines folded by bytes, no character taken apart: whoever wrote them may have counted characters. */
export function folded(text: string): string {
  return text
    .replace(/\r\n[ \t]/g, "")
    .split("\r\n")
    .map(foldedLine)
    .join("\r\n")
}

function foldedLine(line: string): string {
  const parts = [""]
  let bytes = 0
  for (const sign of line) {
    const more = Buffer.byteLength(sign)
    if (bytes + more > longestLine) {
      parts.push("")
      bytes = 1
    }
    parts[parts.length - 1] += sign
    bytes += more
  }
  return parts.join("\r\n ")
}

function utc(instant: Instant): DateArray {
  const at = new Date(instant)
  return [at.getUTCFullYear(), at.getUTCMonth() + 1, at.getUTCDate(), at.getUTCHours(), at.getUTCMinutes()]
}
