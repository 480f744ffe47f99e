import { createEvents, type DateArray, type EventAttributes } from "ics"
import { addDays } from "../../kernels/calendar/dates.ts"
import type { Instant } from "../../kernels/calendar/instant.ts"
import { instantAt } from "../../kernels/calendar/instant.ts"
import { Fault } from "../../kernels/fault.ts"
import { fixed, type IsoDate } from "../../kernels/units.ts"
import { aftercareOf } from "../../sheets/client-aftercare.ts"
import type { SetJob } from "../set-job.ts"
import { milestones } from "./milestones.ts"

/**
 * `programme.ics` (RFC 5545): one event a step, in universal time, and the finish and the first night as whole days; stamps come from
 * the revision's day, never the clock.
 */
export function calendarFile(job: SetJob): string {
  const { result } = job
  const { steps, crews } = result.programme
  const productId = "-//storey rod//programme//EN"
  const worked = steps.map(
    ({ step, crew, start, finish, because, float }): EventAttributes => ({
      uid: `${encodeURIComponent(step.key)}@${result.job.code}`,
      title: oneLine(`${step.room ?? "House"}: ${step.title}`),
      description: lines(
        `${crews.find((each) => each.id === crew)?.name ?? crew}. ${step.detail}\nNot sooner: ${because}.\n${floatText(float)}`,
      ),
      start: utc(start),
      startInputType: "utc",
      startOutputType: "utc",
      end: utc(finish),
      endInputType: "utc",
      endOutputType: "utc",
      productId,
    }),
  )
  const days = milestones(result).map(
    ({ id, title, on, because }): EventAttributes => ({
      uid: `milestone-${id}@${result.job.code}`,
      title: oneLine(title),
      description: lines(because),
      start: dayOf(on),
      end: dayOf(addDays(on, 1)),
      transp: "TRANSPARENT",
      productId,
    }),
  )
  return calendarText(job, [...worked, ...days], { productId, calName: result.job.title })
}

function floatText(float: number): string {
  return float > 0
    ? `May end ${fixed(float, 1)} working hours later without moving anything else.`
    : "Any delay moves something else."
}

/** `aftercare.ics` (RFC 5545): one event of a whole day for each time that something is due after the finish. */
export function aftercareFile(job: SetJob): string {
  const { result } = job
  const productId = "-//storey rod//aftercare//EN"
  const events = aftercareOf(result).flatMap((care) =>
    care.due.map(
      (day): EventAttributes => ({
        uid: `aftercare-${care.id}-${day}@${result.job.code}`,
        title: oneLine(care.what),
        description: lines(care.how),
        start: dayOf(day),
        end: dayOf(addDays(day, 1)),
        transp: "TRANSPARENT",
        productId,
      }),
    ),
  )
  return calendarText(job, events, { productId, calName: `${result.job.title}: aftercare` })
}

function calendarText(
  { result, revision }: SetJob,
  events: EventAttributes[],
  head: { productId: string; calName: string },
): string {
  const zone = result.programme.zone
  const stamp = new Date(instantAt(revision.on, "00:00", zone)).toISOString().replace(/[-:]|\.\d+/g, "")
  const { error, value } = createEvents(events, { ...head, calName: oneLine(head.calName) })
  if (error || !value)
    throw new Fault(`the calendar file of ${result.job.ref} was refused: ${error?.message}`)
  return folded(value.replace(/^DTSTAMP:.*$/gm, () => `DTSTAMP:${stamp}`))
}

/** Text without line ends and control characters: a name stays a name, whatever was written into it. */
function oneLine(text: string): string {
  return lines(text).replace(/\n+/g, " ")
}

/** Control characters (general category Cc), the line feed left out. */
const controls = /[^\P{Cc}\n]+/gu

/** Text whose only control character is the line feed, which the format can escape. */
function lines(text: string): string {
  return text.replace(/\r\n?|[\u0085\u2028\u2029]/g, "\n").replace(controls, " ")
}

function dayOf(date: IsoDate): DateArray {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number)
  return [year, month, day]
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
