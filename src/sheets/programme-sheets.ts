import { dateText, dayText, momentText } from "../kernels/calendar/date-text.ts"
import { addDays, datesBetween, diffDays, mondayOf } from "../kernels/calendar/dates.ts"
import { clockAt, type Instant } from "../kernels/calendar/instant.ts"
import { isWorkingDay, spansOn } from "../kernels/calendar/work-calendar.ts"
import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import type { DatedStep, Programme, Visit } from "../programme/programme.ts"
import type { JobResult } from "./job-result.ts"

/** Drawing units of the bar chart: one day wide, one row high (it is drawn to fit, not to a scale). */
const day = 100
const row = 80
const bar = 46
/** Weeks and rows on one landscape page. */
const weeksPerPage = 5
const rowsPerPage = 25

/** The bar chart over days: work in black, drying hatched, free days grey, as many landscape pages as needed. */
export function programmeSheet(result: JobResult): SheetModel | null {
  const { programme } = result
  if (programme.steps.length === 0) return null
  return {
    kind: "programme",
    title: "Programme",
    purpose: `${dateText(programme.start)} to ${dateText(programme.finish)}, ${workingDays(programme)} working days. Black: work. Hatched: drying, nobody goes on. Grey: no work.`,
    room: null,
    trade: null,
    audience: ["trade", "client", "office"],
    hosted: true,
    orientation: "landscape",
    datum: null,
    blocks: [...chartPages(result)],
    rests: [],
  }
}

function workingDays(programme: Programme): number {
  return datesBetween(programme.start, programme.finish).filter((date) =>
    isWorkingDay(date, programme.calendar),
  ).length
}

interface ChartRow {
  label: string
  steps: DatedStep[]
}

/** One row a crew and room: what that crew does in that room. */
function chartRows(result: JobResult): ChartRow[] {
  const rows: ChartRow[] = []
  const rooms = [...result.house.rooms.map((room) => room.id), null]
  for (const room of rooms) {
    for (const crew of result.programme.crews) {
      const steps = result.programme.steps.filter((each) => each.step.room === room && each.crew === crew.id)
      if (steps.length > 0) rows.push({ label: `${room ?? "House"}  ${crew.name}`, steps })
    }
  }
  return rows
}

function chartPages(result: JobResult): Block[] {
  const { programme } = result
  const rows = chartRows(result)
  const first = mondayOf(programme.start)
  const last = programme.steps.reduce((latest, each) => {
    const ready = clockAt(each.ready, programme.zone).date
    return ready > latest ? ready : latest
  }, programme.finish)
  const weeks = Math.ceil((diffDays(first, last) + 1) / 7)
  const blocks: Block[] = []
  for (let week = 0; week < weeks; week += weeksPerPage) {
    const from = addDays(first, week * 7)
    const to = addDays(from, Math.min(weeksPerPage, weeks - week) * 7 - 1)
    const here = rows.filter((each) => each.steps.some((step) => touches(step, from, to, programme.zone)))
    for (let index = 0; index < here.length; index += rowsPerPage) {
      const part = here.slice(index, index + rowsPerPage)
      blocks.push({
        kind: "drawing",
        drawing: chart(part, from, to, programme),
        caption: `${dayText(from)} to ${dateText(to)}`,
        scale: 20,
      })
    }
  }
  return blocks
}

function touches(step: DatedStep, from: string, to: string, zone: string): boolean {
  return clockAt(step.start, zone).date <= to && clockAt(step.ready, zone).date >= from
}

function chart(rows: readonly ChartRow[], from: string, to: string, programme: Programme): Drawing {
  const dates = datesBetween(from, to)
  const height = rows.length * row
  const shapes: Shape[] = dates.flatMap((date, index): Shape[] => {
    const column: Shape[] = isWorkingDay(date, programme.calendar)
      ? []
      : [{ kind: "box", at: { x: index * day, y: -height }, width: day, height, fill: "light" }]
    return [
      ...column,
      {
        kind: "line",
        from: { x: index * day, y: -height },
        to: { x: index * day, y: day * 0.4 },
        stroke: { width: 0.18 },
      },
      {
        kind: "text",
        at: { x: (index + 0.5) * day, y: day * 0.25 },
        text: date.slice(8).replace(/^0/, ""),
        height: 2.5,
        fixed: true,
      },
      ...(index % 7 === 0
        ? [
            {
              kind: "text" as const,
              at: { x: index * day, y: day * 1.05 },
              text: dayText(date),
              height: 2.5,
              bold: true,
              anchor: "start" as const,
              fixed: true,
            },
          ]
        : []),
    ]
  })
  rows.forEach((each, index) => {
    const y = -(index + 1) * row
    shapes.push(
      { kind: "line", from: { x: -900, y }, to: { x: dates.length * day, y }, stroke: { width: 0.18 } },
      {
        kind: "text",
        at: { x: -890, y: y + row / 2 },
        text: each.label,
        height: 2.5,
        anchor: "start",
        fixed: true,
      },
      ...each.steps.flatMap((step) => bars(step, y, from, dates.length, programme)),
    )
  })
  return {
    title: `Bar chart from ${dayText(from)} to ${dayText(to)}`,
    description: `Bar chart of ${rows.length} rows, one a room and crew; the same dates stand in words on the visits and room sheets.`,
    shapes,
  }
}

/** Least width of a bar, so that half an hour can be seen. */
const leastBar = 9

function bars(step: DatedStep, y: number, from: string, days: number, programme: Programme): Shape[] {
  const place = (instant: Instant) => {
    const { date, time } = clockAt(instant, programme.zone)
    const share = (Number(time.slice(0, 2)) + Number(time.slice(3)) / 60) / 24
    return Math.min(Math.max((diffDays(from, date) + share) * day, 0), days * day)
  }
  const bottom = y + (row - bar) / 2
  const [finish, ready] = [place(step.finish), place(step.ready)]
  const waiting: Shape[] = ready > finish ? hatched(finish, ready, bottom) : []
  const worked = workedSpans(step, programme).flatMap(({ start, end }): Shape[] => {
    const left = place(start)
    const width = Math.max(place(end) - left, leastBar)
    return left < days * day && place(end) > 0
      ? [{ kind: "box", at: { x: left, y: bottom }, width, height: bar, fill: "black" }]
      : []
  })
  return [...waiting, ...worked]
}

/** Working stretches of the calendar between a step's start and its finish. */
function workedSpans(step: DatedStep, { calendar, zone }: Programme): { start: Instant; end: Instant }[] {
  const dates = datesBetween(clockAt(step.start, zone).date, clockAt(step.finish, zone).date)
  return dates.flatMap((date) => {
    const spans = spansOn(date, calendar)
    const first = spans[0]
    const last = spans[spans.length - 1]
    if (!first || !last) return []
    const start = Math.max(first.start, step.start) as Instant
    const end = Math.min(last.end, step.finish) as Instant
    return end >= start ? [{ start, end }] : []
  })
}

function hatched(left: number, right: number, bottom: number): Shape[] {
  const box = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: bottom + bar },
    { x: left, y: bottom + bar },
  ]
  return [
    { kind: "hatch", region: { outline: box, holes: [] }, spacing: 1.2, angle: 45 },
    { kind: "polygon", points: box, stroke: { width: 0.18 } },
  ]
}

/** One sheet a crew: each visit with its days, rooms, what must be ready and what to leave ready. */
export function visitSheets(result: JobResult): SheetModel[] {
  return result.programme.crews.flatMap((crew): SheetModel[] => {
    const visits = result.programme.visits.filter((visit) => visit.crew === crew.id)
    if (visits.length === 0) return []
    return [
      {
        kind: "trade-visits",
        part: crew.id,
        title: `Visits: ${crew.name.toLowerCase()}`,
        purpose: "When to come, where to go, what must be ready, what to leave ready.",
        room: null,
        trade: crew.trades[0] ?? null,
        audience: ["trade", "office"],
        hosted: true,
        orientation: "portrait",
        datum: null,
        blocks: visits.flatMap((visit, index) => visitBlocks(visit, index + 1, result)),
        rests: [],
      },
    ]
  })
}

function visitBlocks(visit: Visit, number: number, result: JobResult): Block[] {
  const { zone, steps } = result.programme
  const own = steps.filter((each) => visit.keys.includes(each.step.key))
  return [
    {
      kind: "heading",
      text: `Visit ${number}: ${visit.from === visit.to ? dateText(visit.from) : `${dayText(visit.from)} to ${dateText(visit.to)}`}`,
    },
    {
      kind: "table",
      caption: "Work in order",
      columns: [
        { label: "Start", as: "figure", width: 17 },
        { label: "Room", width: 8, as: "mark" },
        { label: "Step, as on the room's order of work", width: 38 },
        { label: "Why not sooner", width: 30 },
        { label: "Left ready", as: "tick", width: 8 },
      ],
      rows: own.map((each) => ({
        cells: [momentText(each.start, zone), each.step.room ?? "House", each.step.title, each.because, ""],
      })),
    },
    { kind: "sign", roles: ["Ready to start", "Left ready"] },
  ]
}
