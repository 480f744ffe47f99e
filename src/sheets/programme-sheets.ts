import { dateText, dayText, momentText } from "../kernels/calendar/date-text.ts"
import { datesBetween } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { isWorkingDay } from "../kernels/calendar/work-calendar.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import type { DatedStep, Programme, Visit } from "../programme/programme.ts"
import { chartPages, foldOutPage } from "./bar-chart.ts"
import type { JobResult } from "./job-result.ts"
import { movedBlocks } from "./moved-since.ts"

/** The bar chart over days: work in black, drying hatched, free days grey, as many landscape pages as needed. */
export function programmeSheet(result: JobResult): SheetModel | null {
  const { programme } = result
  if (programme.steps.length === 0) return null
  return {
    kind: "programme",
    title: "Programme",
    purpose: `${dateText(programme.start)} to ${dateText(programme.finish)}, ${workingDays(programme)} working days. Black: work. Hatched: drying, nobody goes on. Thin line: may end so much later. Grey: no work.`,
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "landscape",
    datum: null,
    blocks: [...chartPages(result), ...standing(result), ...movedBlocks(result)],
    ...(result.job.foldOuts ? { foldOut: chartPages(result, foldOutPage) } : {}),
    rests: [],
  }
}

function workingDays(programme: Programme): number {
  return datesBetween(programme.start, programme.finish).filter((date) =>
    isWorkingDay(date, programme.calendar),
  ).length
}

/** What the finish rests on, and the first night. */
function standing({ programme }: JobResult): Block[] {
  const { bound, firstNight, finish } = programme
  const rests = bound.proven
    ? `Proven shortest: no order of work under these rules ends before ${dateText(finish)}; what forces it is ${bound.by}.`
    : `The finish cannot lie before ${dateText(bound.finish)}: ${bound.by}. It is planned for ${dateText(finish)}; what lies between is not proven.`
  const night = firstNight
    ? `No sleeping in the new storey before the evening of ${dateText(firstNight.on)}. It waits for every door on the way out hung and its gaps measured, alarms on all storeys tested together, guarding, handrail and nosings fixed, and building control’s word.`
    : ""
  return [{ kind: "text", as: "note", paragraphs: [rests, night].filter(Boolean) }]
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
        { label: "Start", as: "figure", width: 16 },
        { label: "Room", width: 8, as: "mark" },
        { label: "Steps, as on the room's order of work", width: 40 },
        { label: "Why not sooner", width: 30 },
        { label: "Left ready", as: "tick", width: 8 },
      ],
      rows: stretchesOf(own, zone).map((stretch) => {
        const first = stretch[0]!
        const because =
          first.heldBy === null && first.because.includes("busy") ? "next in turn" : first.because
        const titles = stretch
          .map(({ step, doneBy }) =>
            doneBy ? `${step.title} (done by ${doneBy}: people sleep here)` : step.title,
          )
          .join("; ")
        return {
          cells: [momentText(first.start, zone), first.step.room ?? "House", titles, because, ""],
        }
      }),
    },
    { kind: "sign", roles: ["Ready to start", "Left ready"] },
  ]
}

/** Steps in one room that follow one another on one day. */
function stretchesOf(steps: readonly DatedStep[], zone: string): DatedStep[][] {
  const stretches: DatedStep[][] = []
  for (const each of steps) {
    const last = stretches[stretches.length - 1]
    const before = last?.[last.length - 1]
    const goesOn =
      before?.step.room === each.step.room &&
      clockAt(before.start, zone).date === clockAt(each.start, zone).date
    if (last && goesOn) last.push(each)
    else stretches.push([each])
  }
  return stretches
}
