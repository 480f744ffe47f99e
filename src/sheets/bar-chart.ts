import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import { addDays, datesBetween, diffDays, mondayOf } from "../kernels/calendar/dates.ts"
import { clockAt, type Instant, instantAt } from "../kernels/calendar/instant.ts"
import { isWorkingDay, spansOn } from "../kernels/calendar/work-calendar.ts"
import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import type { Block } from "../kernels/paper.ts"
import type { DatedStep, Programme } from "../programme/programme.ts"
import type { JobResult } from "./job-result.ts"

/** Drawing units of the bar chart: one day wide, one row high (it is drawn to fit, not to a scale). */
const day = 100
const row = 88
const bar = 50
/** Weeks and rows on one page. */
interface PageRoom {
  weeks: number
  rows: number
}
const lyingPage: PageRoom = { weeks: 5, rows: 20 }
/** The same on a fold-out of twice the size. */
export const foldOutPage: PageRoom = { weeks: 9, rows: 38 }

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

/** The bar chart in drawings of some weeks and rows each: work, drying, spare time, free days. */
export function chartPages(result: JobResult, page: PageRoom = lyingPage): Block[] {
  const { programme } = result
  const rows = chartRows(result)
  const first = mondayOf(programme.start)
  const ends = programme.steps.map((each) => clockAt(each.ready, programme.zone).date)
  const last = [...ends, programme.finish].sort().at(-1)!
  const weeks = Math.ceil((diffDays(first, last) + 1) / 7)
  const blocks: Block[] = []
  for (let week = 0; week < weeks; week += page.weeks) {
    const from = addDays(first, week * 7)
    const to = addDays(from, Math.min(page.weeks, weeks - week) * 7 - 1)
    const here = rows.filter((each) => each.steps.some((step) => touches(step, from, to, programme.zone)))
    for (let index = 0; index < here.length; index += page.rows) {
      const part = here.slice(index, index + page.rows)
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
        to: { x: index * day, y: 0 },
        stroke: { width: 0.18, dash: index % 7 === 0 ? "continuous" : "dotted" },
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
    const at: RowPlace = { y, from, days: dates.length, next: Number.POSITIVE_INFINITY }
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
      ...each.steps.flatMap((step) => spare(step, { ...at, next: nextIn(each.steps, step) }, programme)),
      ...each.steps.flatMap((step) => bars(step, at, programme)),
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

/** Where a row lies, and when the next bar in it begins. */
interface RowPlace {
  y: number
  from: string
  days: number
  next: number
}

/** Start of the next step in the row; spare time is drawn up to there. */
function nextIn(steps: readonly DatedStep[], step: DatedStep): number {
  return Math.min(...steps.filter((each) => each.start > step.start).map((each) => each.start))
}

/** Where a moment stands across the page, from the left edge of the first day. */
function placeOf(instant: Instant, { from, days }: RowPlace, programme: Programme): number {
  const { date } = clockAt(instant, programme.zone)
  const share = shareOfDay(instant, date, programme)
  return Math.min(Math.max((diffDays(from, date) + share) * day, 0), days * day)
}

/** A thin line with a stop: so much later the step may end without moving the end of the job. */
function spare(step: DatedStep, at: RowPlace, programme: Programme): Shape[] {
  const middle = at.y + row / 2
  const idle = placeOf(Math.max(step.finish, step.ready) as Instant, at, programme)
  const latest = placeOf(Math.min(step.latest, at.next) as Instant, at, programme)
  if (latest <= idle + leastBar || step.step.hours === 0) return []
  return [
    { kind: "line", from: { x: idle, y: middle }, to: { x: latest, y: middle }, stroke: { width: 0.18 } },
    {
      kind: "line",
      from: { x: latest, y: middle - bar / 4 },
      to: { x: latest, y: middle + bar / 4 },
      stroke: { width: 0.25 },
    },
  ]
}

function bars(step: DatedStep, at: RowPlace, programme: Programme): Shape[] {
  const bottom = at.y + (row - bar) / 2
  const [finish, ready] = [placeOf(step.finish, at, programme), placeOf(step.ready, at, programme)]
  const waiting: Shape[] = ready > finish ? hatched(finish, ready, bottom) : []
  const spans = step.step.hours > 0 ? workedSpans(step, programme) : []
  const worked = spans.flatMap(({ start, end }): Shape[] => {
    const [left, right] = [placeOf(start, at, programme), placeOf(end, at, programme)]
    const width = Math.max(right - left, leastBar)
    return left < at.days * day && right > 0
      ? [{ kind: "box", at: { x: left, y: bottom }, width, height: bar, fill: "black" }]
      : []
  })
  return [...waiting, ...worked]
}

/** How far through a day's column a moment stands: nights take no width on a working day, so that short work shows. */
function shareOfDay(instant: Instant, date: string, { calendar, zone }: Programme): number {
  const spans = spansOn(date, calendar)
  const opens = spans[0]?.start ?? instantAt(date, "00:00", zone)
  const closes = spans[spans.length - 1]?.end ?? instantAt(date, "24:00", zone)
  return Math.min(Math.max((instant - opens) / (closes - opens), 0), 1)
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
    { kind: "polygon", points: box, fill: "white" },
    { kind: "hatch", region: { outline: box, holes: [] }, spacing: 1.2, angle: 45 },
    { kind: "polygon", points: box, stroke: { width: 0.18 } },
  ]
}
