import { dayText } from "../kernels/calendar/date-text.ts"
import type { Block, Row } from "../kernels/paper.ts"
import { compared, type Shifted, type StepShift } from "../programme/compare.ts"
import type { Move } from "../programme/programme.ts"
import type { JobResult } from "./job-result.ts"

/** Most steps that are told one by one; the rest move along with them. */
const told = 60

/**
 * What moved and why: against the last issue with other days, or, before anything is issued, against the days first planned where days
 * were reported.
 */
export function movedBlocks(result: JobResult): Block[] {
  const { issuedBefore, programme, programmeFile } = result
  if (!issuedBefore) return programme.moves.length > 0 ? [reportedTable(programme.moves, result)] : []
  const since = `Moved since revision ${issuedBefore.revision} of ${dayText(issuedBefore.on)}`
  const { origins, shifts, finish, firstNight } = compared(
    issuedBefore.programme,
    programme,
    programmeFile.progress,
  )
  const ends = [
    shiftText("The job ends", finish),
    ...(firstNight.was || firstNight.now ? [shiftText("The first night is", firstNight)] : []),
  ]
  if (shifts.length === 0) return [{ kind: "text", as: "note", paragraphs: [`${since}: ${ends.join(" ")}`] }]
  return [
    { kind: "heading", text: since },
    { kind: "text", paragraphs: [ends.join(" ")] },
    {
      kind: "table",
      caption: "What set it off",
      columns: [
        { label: "No.", width: 5, as: "figure" },
        { label: "Room", width: 9, as: "mark" },
        { label: "Step", width: 34 },
        { label: "Because", width: 40 },
        { label: "Steps moved", width: 12, as: "figure" },
      ],
      rows: origins.map(({ room, title, because, moved }, index) => ({
        cells: [String(index + 1), room ?? "House", title, because, String(moved)],
      })),
    },
    {
      kind: "table",
      caption: "Steps moved, in their new order",
      columns: [
        { label: "Room", width: 9, as: "mark" },
        { label: "Step", width: 26 },
        { label: "Was", width: 17, as: "figure" },
        { label: "Now", width: 17, as: "figure" },
        { label: "Because", width: 34 },
        { label: "From no.", width: 7, as: "figure" },
      ],
      rows: shifts.slice(0, told).map(shiftRow),
      ...(shifts.length > told ? { note: `And ${shifts.length - told} more steps behind them.` } : {}),
    },
  ]
}

function shiftRow({ room, title, start, finish, because, origin }: StepShift): Row {
  return {
    cells: [
      room ?? "House",
      title,
      span(start.was, finish.was, "new"),
      span(start.now, finish.now, "taken out"),
      because,
      origin === null ? "" : String(origin + 1),
    ],
  }
}

function span(from: string | null, to: string | null, none: string): string {
  if (!from || !to) return none
  if (from === to) return dayText(from)
  const isOneMonth = from.slice(0, 7) === to.slice(0, 7)
  return `${isOneMonth ? dayText(from).split(" ").slice(0, 2).join(" ") : dayText(from)} to ${dayText(to)}`
}

function shiftText(what: string, { was, now }: Shifted): string {
  const day = (date: string | null) => (date ? dayText(date) : "not planned")
  return was === now ? `${what} on ${day(now)} as before.` : `${what}: ${day(now)}, was ${day(was)}.`
}

function reportedTable(moves: readonly Move[], { programme }: JobResult): Block {
  const rest = moves.length - told
  return {
    kind: "table",
    caption: "Moved by what was reported",
    columns: [
      { label: "Room", width: 8, as: "mark" },
      { label: "Step", width: 36 },
      { label: "Was to end", width: 14, as: "figure" },
      { label: "Ends now", width: 14, as: "figure" },
      { label: "Why", width: 34 },
    ],
    rows: moves.slice(0, told).map((move) => {
      const { step } = programme.steps.find((each) => each.step.key === move.key)!
      return {
        cells: [step.room ?? "House", step.title, dayText(move.was), dayText(move.now), move.because],
      }
    }),
    ...(rest > 0 ? { note: `And ${rest} more steps behind them.` } : {}),
  }
}
