import { dayText } from "../kernels/calendar/date-text.ts"
import { clockAt, type Instant } from "../kernels/calendar/instant.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { Evening } from "../programme/evenings.ts"
import { eveningsIn } from "./evenings-of-job.ts"
import type { JobResult } from "./job-result.ts"

/** What is special about each evening: leaves hung that day, alarm covers to take off, wet floors, work that goes on over night. */
export function eveningsSheet(result: JobResult): SheetModel | null {
  const evenings = eveningsIn(result)
  if (evenings.length === 0) return null
  return {
    kind: "evenings",
    title: "Evenings of the programme",
    purpose:
      "Find the day, then fill in the end-of-day sheet (J-90): what to take off, shut, keep dry and make safe that evening.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      ...notKept(result),
      {
        kind: "table",
        caption: "Evening by evening",
        columns: [
          { label: "Day", as: "figure", width: 23 },
          { label: "Hung today: must latch", width: 17 },
          { label: "Alarm covers off, at the latest", width: 27 },
          { label: "Wet: nobody walks until", width: 30 },
          { label: "Goes on tomorrow: make safe", width: 46 },
          { label: "Done", as: "tick", width: 10 },
        ],
        rows: evenings.map((evening) => eveningRow(evening, result)),
        note: "An alarm is covered only while dust flies in its room or next door, one after the other where that can be, and somebody stays in the house meanwhile; every cover is off before the last one leaves. It is planned so that no doorway on a way out stands open, no stair in use is wet at bedtime and no alarm is covered on any of these evenings; where that cannot be kept, this sheet says so above. Look each evening all the same.",
      },
    ],
    rests: ["programme-dust-reach"],
  }
}

/** Findings of the programme that leave an evening not as it should be. */
const eveningCodes = ["door-day-too-long", "doorway-left-open", "stair-day-too-long", "stair-wet-at-night"]

/** What the programme cannot keep of an evening, before anything else is read. */
function notKept({ programme }: JobResult): Block[] {
  const items = programme.findings
    .filter(({ code }) => eveningCodes.includes(code))
    .map(({ message, mend }) => [message, mend].filter(Boolean).join(" "))
  return items.length > 0 ? [{ kind: "warning", caption: "Not kept: settle before work begins", items }] : []
}

function eveningRow(evening: Evening, { programme }: JobResult): Row {
  const { zone } = programme
  const hung = evening.doorways.filter(({ leaf }) => leaf === "today").map(({ door }) => door)
  const covers = evening.covers.map(({ room, off }) => unbroken(`${room} ${clockAt(off, zone).time}`))
  const wet = new Map<string, Instant>()
  for (const { room, until } of evening.wet) if ((wet.get(room) ?? 0) < until) wet.set(room, until)
  const wetText = [...wet].map(([room, until]) => {
    const { date, time } = clockAt(until, zone)
    return `${room} ${unbroken(`${dayText(date)} ${time}`)}`
  })
  const over = evening.overnight.map(
    ({ step }) => `${step.room ?? "House"}: ${step.title}${safeText(step.trade)}`,
  )
  return {
    cells: [
      unbroken(dayText(evening.date)),
      hung.join(", "),
      covers.join(", "),
      wetText.join("; "),
      over.join("; "),
      "",
    ],
  }
}

/** Text that is not parted at the end of a line. */
function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00a0")
}

/** What work left for the morrow may leave open, by trade. */
function safeText(trade: string): string {
  if (trade === "electrics") return " (ends safe, supply on)"
  if (trade === "plumbing") return " (pipes shut, water on)"
  return ""
}
