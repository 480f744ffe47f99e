import { dateText, dayText, momentText } from "../kernels/calendar/date-text.ts"
import { datesBetween, mondayOf } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { isWorkingDay } from "../kernels/calendar/work-calendar.ts"
import { moneyText } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep, Programme } from "../programme/programme.ts"
import type { JobResult } from "./job-result.ts"

/** The client's sheets: the schedule of works in plain words, the choices to make, the price. None of them is published. */
export function clientSheets(result: JobResult): SheetModel[] {
  return [schedule(result), ...choices(result), ...price(result)]
}

function sheet(kind: string, title: string, purpose: string): Omit<SheetModel, "blocks"> {
  return {
    kind,
    title,
    purpose,
    room: null,
    trade: null,
    audience: ["client", "office"],
    hosted: false,
    orientation: "portrait",
    datum: null,
    rests: [],
  }
}

function schedule(result: JobResult): SheetModel {
  const { start, finish } = result.programme
  return {
    ...sheet(
      "client-schedule",
      "Schedule of works",
      "What happens in which week, in which rooms, and where nobody may walk.",
    ),
    blocks: [
      {
        kind: "text",
        as: "lead",
        paragraphs: [`Work starts on ${dateText(start)} and is planned to finish on ${dateText(finish)}.`],
      },
      {
        kind: "table",
        caption: "Week by week",
        columns: [
          { label: "Week of", width: 14, as: "figure" },
          { label: "What is done", width: 34 },
          { label: "Rooms worked in, and on how many days", width: 28 },
          { label: "Keep out: wet", width: 24 },
        ],
        rows: weeksOf(result.programme).map((week) => weekRow(week, result)),
        note: "A room is out of use on the days it is worked in, and while its floor is wet. Drying runs on through nights and weekends.",
      },
      { kind: "sign", roles: ["Client", "Builder"] },
    ],
  }
}

/** Mondays of every week in which something is worked on or a floor is wet, in order. */
function weeksOf(programme: Programme): IsoDate[] {
  const dates = programme.steps.flatMap((each) => [
    ...workedDates(each, programme),
    ...wetDates(each, programme),
  ])
  return [...new Set(dates.map(mondayOf))].sort()
}

function weekRow(week: IsoDate, result: JobResult): Row {
  const { programme, trades } = result
  const names = new Map(result.house.rooms.map((room) => [room.id, room.name]))
  const nameOf = (each: DatedStep) => names.get(each.step.room ?? "") ?? "the house"
  const here = (dates: readonly IsoDate[]) => dates.filter((date) => mondayOf(date) === week)
  const worked = programme.steps.filter((each) => here(workedDates(each, programme)).length > 0)
  const done = trades.flatMap((trade) => {
    const own = worked.filter((each) => each.step.trade === trade.id)
    return own.length > 0 ? [`${trade.title}: ${listText([...new Set(own.map(nameOf))])}.`] : []
  })
  const rooms = [...new Set(worked.filter((each) => each.step.room !== null).map(nameOf))].map((name) => {
    const own = worked.filter((each) => nameOf(each) === name)
    return `${name} ${new Set(own.flatMap((each) => here(workedDates(each, programme)))).size}`
  })
  const wet = programme.steps
    .filter((each) => here(wetDates(each, programme)).length > 0)
    .map(
      (each) =>
        `${nameOf(each)}, from ${momentText(each.finish, programme.zone)} until ${momentText(each.ready, programme.zone)}`,
    )
  return {
    cells: [
      dayText(week),
      done.join(" "),
      rooms.join(", ") || "none",
      [...new Set(wet)].join("; ") || "nowhere",
    ],
  }
}

/** Working days on which a step is worked on. */
function workedDates({ start, finish }: DatedStep, { zone, calendar }: Programme): IsoDate[] {
  return datesBetween(clockAt(start, zone).date, clockAt(finish, zone).date).filter((date) =>
    isWorkingDay(date, calendar),
  )
}

/** Days on which nobody may walk where a step was done. */
function wetDates({ step, finish, ready }: DatedStep, { zone }: Programme): IsoDate[] {
  return step.gate?.forbids.includes("walk")
    ? datesBetween(clockAt(finish, zone).date, clockAt(ready, zone).date)
    : []
}

/** Words joined for the reader: `a, b and c`. */
export function listText(words: readonly string[]): string {
  if (words.length < 2) return words.join("")
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`
}

function choices(result: JobResult): SheetModel[] {
  const { decisions = [], notes = [] } = result.moneyFile?.client ?? {}
  if (decisions.length === 0 && notes.length === 0) return []
  const asked: Block[] =
    decisions.length > 0
      ? [
          {
            kind: "table",
            caption: "Choices",
            columns: [
              { label: "Please choose", width: 40 },
              { label: "By", as: "figure", width: 18 },
              { label: "Your choice", as: "write", width: 30 },
              { label: "Signed", as: "write", width: 14 },
            ],
            rows: decisions.map((each) => ({ cells: [each.what, dateText(each.by), "", ""] })),
          },
        ]
      : []
  const noted: Block[] = notes.length > 0 ? [{ kind: "list", caption: "Please note", items: notes }] : []
  return [
    {
      ...sheet(
        "client-choices",
        "Choices to make",
        "Each choice holds up the work if it comes later than its day.",
      ),
      blocks: [...asked, ...noted],
    },
  ]
}

function price(result: JobResult): SheetModel[] {
  if (!result.price) return []
  const { gross, net, vat, vatPercent, vatBecause } = result.price
  const provisional = result.price.provisional.map(
    (line): Row => ({ cells: [`Provisional: ${line.what}`, moneyText(line.amount, "£")] }),
  )
  const works = net.minus(result.price.provisionalTotal)
  return [
    {
      ...sheet("client-price", "Price", "What the works cost."),
      blocks: [
        {
          kind: "table",
          caption: "Price of the works",
          columns: [
            { label: "What", width: 70 },
            { label: "£", as: "figure", width: 30 },
          ],
          rows: [
            { cells: ["Works as described, materials and labour", moneyText(works, "£")] },
            ...provisional,
            { as: "total", cells: ["Before tax", moneyText(net, "£")] },
            { cells: [`VAT at ${vatPercent} %`, moneyText(vat, "£")] },
            { as: "total", cells: ["To pay", moneyText(gross, "£")] },
          ],
          note: `VAT at ${vatPercent} %: ${vatBecause}. Ask a tax adviser if this may not hold. A provisional sum is an allowance; what it really costs is charged.`,
        },
      ],
    },
  ]
}
