import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import { mondayOf } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { moneyText } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { DatedStep } from "../programme/programme.ts"
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
  const { steps, zone, start, finish } = result.programme
  const weeks = [...new Set(steps.map((each) => mondayOf(clockAt(each.start, zone).date)))].sort()
  return {
    ...sheet(
      "client-schedule",
      "Schedule of works",
      "What happens in which week, and which rooms you cannot use.",
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
          { label: "Week of", width: 16, as: "figure" },
          { label: "What is done", width: 50 },
          { label: "Rooms out of use", width: 34 },
        ],
        rows: weeks.map((week) => weekRow(week, result)),
        note: "Out of use: being worked in, or wet. Drying runs on through nights and weekends.",
      },
      { kind: "sign", roles: ["Client", "Builder"] },
    ],
  }
}

function weekRow(week: string, result: JobResult): Row {
  const { steps, zone } = result.programme
  const own = steps.filter((each) => mondayOf(clockAt(each.start, zone).date) === week)
  const names = new Map(result.house.rooms.map((room) => [room.id, room.name]))
  const done = result.trades.flatMap((trade) => {
    const here = own.filter((each) => each.step.trade === trade.id)
    if (here.length === 0) return []
    const rooms = [...new Set(here.map((each) => names.get(each.step.room ?? "") ?? "the house"))]
    return [`${trade.title}: ${listText(rooms)}.`]
  })
  const shut = [...new Set(own.filter(isShut).map((each) => names.get(each.step.room ?? "") ?? ""))].filter(
    Boolean,
  )
  return { cells: [dayText(week), done.join(" "), shut.length > 0 ? listText(shut) : "none"] }
}

function isShut(each: DatedStep): boolean {
  return each.step.room !== null
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
