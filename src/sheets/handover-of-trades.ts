import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { dayBlocks } from "../programme/day-blocks.ts"
import { waitsFor } from "../programme/house-rules.ts"
import type { DatedStep, Visit } from "../programme/programme.ts"
import { waysOf } from "../programme/ways.ts"
import type { JobResult } from "./job-result.ts"

/** What one visit takes over and hands on, room by room. */
export interface VisitHandover {
  visit: Visit
  /** Work of other crews that must be behind it, the last of each crew in each room. */
  ready: { step: DatedStep; before: DatedStep }[]
  /** Work of other crews that waits for it, the first of each crew in each room. */
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

/** The visits of a crew, each with what other crews leave it and what it leaves them. */
export function visitHandovers(result: JobResult, crew: string): VisitHandover[] {
  const { programme, house } = result
  const steps = programme.steps.map(({ step }) => step)
  const ways = waysOf(house)
  const waits = waitsFor({ steps, site: house, ways, blocks: dayBlocks(steps, house, ways) })
  const dated = new Map(programme.steps.map((each) => [each.step.key, each]))
  const pairs = programme.steps.flatMap((step) =>
    (waits.get(step.step.key) ?? []).flatMap(({ key }) => {
      const before = dated.get(key)
      return before && before.crew !== step.crew && step.step.hours > 0 ? [{ step, before }] : []
    }),
  )
  return programme.visits
    .filter((visit) => visit.crew === crew)
    .map((visit) => {
      const isOwn = (each: DatedStep) => visit.keys.includes(each.step.key)
      const ready = pairs.filter(({ step }) => isOwn(step))
      const left = pairs
        .filter(({ before, step }) => isOwn(before) && before.step.hours > 0 && step.step.hours > 0)
        .map(({ step, before }) => ({ step: before, next: step }))
      return {
        visit,
        ready: lastOf(
          ready,
          ({ before }) => `${before.step.room}/${before.crew}`,
          ({ before }) => before.ready,
        ),
        left: lastOf(
          left,
          ({ step, next }) => `${step.step.room}/${next.crew}`,
          ({ next }) => -next.start,
        ),
      }
    })
}

/** Of each group the one with the greatest figure, in order of room. */
function lastOf<T>(list: readonly T[], group: (item: T) => string, figure: (item: T) => number): T[] {
  const found = new Map<string, T>()
  for (const item of list) {
    const name = group(item)
    const known = found.get(name)
    if (known === undefined || figure(item) > figure(known)) found.set(name, item)
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, item]) => item)
}

function visitBlocks({ visit, ready, left }: VisitHandover, result: JobResult): Block[] {
  const { crews, zone } = result.programme
  const name = (id: string) => crews.find((crew) => crew.id === id)?.name.toLowerCase() ?? id
  const day = (moment: DatedStep["start"]) => dayText(clockAt(moment, zone).date)
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
          `${step.step.room && step.step.room !== before.step.room ? `${step.step.room}: ` : ""}${step.step.title}`,
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
          `${next.step.room && next.step.room !== step.step.room ? `${next.step.room}: ` : ""}${next.step.title}`,
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
