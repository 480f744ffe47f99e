import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { DatedStep, Visit } from "../programme/programme.ts"
import type { JobResult } from "./job-result.ts"

/** What one visit takes over and hands on, room by room. */
export interface VisitHandover {
  visit: Visit
  /** The last work of each other crew in each of its rooms since it was last there, and its own first work behind that. */
  ready: { step: DatedStep; before: DatedStep }[]
  /** Its own last work in each room before the first of each other crew, until it comes back. */
  left: { step: DatedStep; next: DatedStep }[]
}

/** One sheet a crew: for each visit what must be ready and what is left ready, signed by both trades; none where one crew does all. */
export function tradeHandoverSheets(result: JobResult): SheetModel[] {
  const { crews } = result.programme
  if (crews.filter((crew) => result.programme.visits.some((visit) => visit.crew === crew.id)).length < 2)
    return []
  return crews.flatMap((crew): SheetModel[] => {
    const handovers = visitHandovers(result, crew.id).filter(
      ({ ready, left }) => ready.length + left.length > 0,
    )
    if (handovers.length === 0) return []
    return [
      {
        kind: "trade-handover",
        part: crew.id,
        title: `Handover: ${crew.name.toLowerCase()}`,
        purpose: "Take over and hand on room by room; what is not ready is written down before work begins.",
        room: null,
        trade: crew.trades[0] ?? null,
        audience: ["trade", "office"],
        hosted: true,
        orientation: "portrait",
        datum: null,
        blocks: handovers.flatMap((each) => visitBlocks(each, result)),
        rests: [],
      },
    ]
  })
}

/** The visits of a crew, each with what other crews leave it in its rooms and what it leaves them. */
export function visitHandovers({ programme }: JobResult, crew: string): VisitHandover[] {
  const worked = programme.steps.filter(({ step }) => step.hours > 0)
  const visits = programme.visits.filter((visit) => visit.crew === crew)
  const inVisit = (visit: Visit, room: string | null) =>
    worked.filter(({ step }) => visit.keys.includes(step.key) && step.room === room)
  return visits.map((visit, index) => {
    const rooms = [
      ...new Set(worked.filter(({ step }) => visit.keys.includes(step.key)).map(({ step }) => step.room)),
    ]
    const ready = rooms.flatMap((room) => {
      const own = inVisit(visit, room)
      const since = Math.max(
        0,
        ...visits
          .slice(0, index)
          .flatMap((each) => inVisit(each, room))
          .map((each) => each.finish),
      )
      return othersIn(worked, { crew, room }).flatMap((others) => {
        const step = own.find((each) =>
          others.some((other) => other.finish <= each.start && other.finish > since),
        )
        const before =
          step && others.filter((other) => other.finish <= step.start && other.finish > since).at(-1)
        return step && before ? [{ step, before }] : []
      })
    })
    const left = rooms.flatMap((room) => {
      const own = inVisit(visit, room)
      const until = Math.min(
        ...visits
          .slice(index + 1)
          .flatMap((each) => inVisit(each, room))
          .map((each) => each.start),
      )
      return othersIn(worked, { crew, room }).flatMap((others) => {
        const next = others.find(
          (other) => other.start < until && own.some((each) => each.finish <= other.start),
        )
        const step = next && own.filter((each) => each.finish <= next.start).at(-1)
        return step && next ? [{ step, next }] : []
      })
    })
    return { visit, ready, left }
  })
}

/** Steps of the other crews in one room, crew by crew, in order of time. */
function othersIn(
  worked: readonly DatedStep[],
  { crew, room }: { crew: string; room: string | null },
): DatedStep[][] {
  const others = worked.filter((each) => each.crew !== crew && each.step.room === room)
  return [...new Set(others.map((each) => each.crew))].map((id) =>
    others.filter((each) => each.crew === id).sort((a, b) => a.finish - b.finish),
  )
}

function visitBlocks({ visit, ready, left }: VisitHandover, result: JobResult): Block[] {
  const { crews, zone } = result.programme
  const name = (id: string) => crews.find((crew) => crew.id === id)?.name.toLowerCase() ?? id
  const day = (moment: DatedStep["start"]) => dayText(clockAt(moment, zone).date).replaceAll(" ", "\u00a0")
  const days =
    visit.from === visit.to ? dateText(visit.from) : `${dayText(visit.from)} to ${dateText(visit.to)}`
  const dry = ({ step }: DatedStep) => (step.gate && step.gate.hours > 0 ? `; then ${step.gate.process}` : "")
  return [
    { kind: "heading", text: days },
    ...part(
      "Ready to start",
      ready.map(({ step, before }) => ({
        cells: [
          before.step.room ?? "House",
          `${before.step.title}${dry(before)}`,
          `${name(before.crew)}, ${day(before.ready)}`,
          step.step.title,
          "",
          "",
        ],
      })),
      "From, ready",
      "For my",
    ),
    ...part(
      "Left ready",
      left.map(({ step, next }) => ({
        cells: [
          step.step.room ?? "House",
          `${step.step.title}${step.step.hold ? `. ${step.step.hold}` : ""}`,
          `${name(next.crew)}, ${day(next.start)}`,
          next.step.title,
          "",
          "",
        ],
      })),
      "To, from",
      "For their",
    ),
    {
      kind: "checks",
      caption: "Either way",
      items: [
        { text: "Rooms swept by vacuum, empty of tools and waste; covers whole", write: "not so" },
        { text: "Way, light, power and water there; alarms and doors as they must be", write: "not so" },
      ],
    },
    {
      kind: "sign",
      roles: ["Taken over: hands over", "Taken over: takes", "Left ready: hands over", "Left ready: takes"],
    },
  ]
}

function part(caption: string, rows: Row[], who: string, what: string): Block[] {
  if (rows.length === 0) return []
  return [
    {
      kind: "table",
      caption,
      columns: [
        { label: "Room", as: "mark", width: 9 },
        { label: "Work", width: 46 },
        { label: who, width: 24 },
        { label: what, width: 30 },
        { label: "So", as: "tick", width: 9 },
        { label: "If not: what", as: "write", width: 30 },
      ],
      rows,
    },
  ]
}
