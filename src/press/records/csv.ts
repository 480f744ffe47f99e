import { stringify } from "csv-stringify/sync"
import { fixed } from "../../kernels/units.ts"
import { compared } from "../../programme/compare.ts"
import { packsText } from "../../sheets/deliveries.ts"
import { endText } from "../../sheets/saw.ts"
import type { SetJob } from "../set-job.ts"
import { siteClock } from "./job-json.ts"
import { milestones } from "./milestones.ts"

/** One CSV file of a job. */
export interface CsvFile {
  name: string
  text: string
}

type Cell = string | number

/** The job's tables as CSV (RFC 4180, UTF-8): orders, cut list, door schedule, programme. */
export function csvFiles(job: SetJob): CsvFile[] {
  return [
    { name: "orders.csv", text: ordersCsv(job) },
    { name: "cut-list.csv", text: cutListCsv(job) },
    { name: "door-schedule.csv", text: doorsCsv(job) },
    { name: "programme.csv", text: programmeCsv(job) },
  ]
}

function ordersCsv({ result }: SetJob): string {
  return csvText(
    [
      "supplier",
      "product",
      "name",
      "need",
      "unit",
      "packs",
      "bought",
      "price",
      "order by",
      "comes on",
      "needed on",
      "not before",
      "rooms",
    ],
    result.orders.lines.map((line) => [
      line.product.supplier,
      line.product.id,
      line.product.name,
      Number(fixed(line.gross, 3)),
      line.unit,
      packsText(line),
      Number(fixed(line.bought, 3)),
      line.total.toFixed(2),
      line.orderBy,
      line.comesOn,
      line.neededOn,
      line.notBefore === null ? "" : line.earliest,
      line.rooms.join(" "),
    ]),
  )
}

function cutListCsv({ result }: SetJob): string {
  const rows = result.orders.cutLists.flatMap(({ product, plan, pieces }) =>
    plan.bars.flatMap((bar, index) =>
      bar.pieces.map((mark): Cell[] => {
        const piece = pieces.find((each) => each.mark === mark)!
        return [
          product.id,
          index + 1,
          bar.length,
          mark,
          piece.room,
          piece.wall ?? "",
          piece.what,
          piece.length,
          endText(piece.left),
          endText(piece.right),
        ]
      }),
    ),
  )
  return csvText(
    ["product", "length no", "length", "mark", "room", "wall", "what", "cut to", "left end", "right end"],
    rows,
  )
}

/** The doors' own rows, as the trade that hangs them gives them in its results. */
function doorsCsv({ result }: SetJob): string {
  const rows = result.results.flatMap((each) => {
    const schedule = each.work.results.doorSchedule
    return Array.isArray(schedule) ? (schedule as Record<string, unknown>[]) : []
  })
  const keys = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  return csvText(
    keys.length > 0 ? keys : ["door"],
    rows.map((row) =>
      keys.map((key) => (typeof row[key] === "number" ? (row[key] as number) : String(row[key] ?? ""))),
    ),
  )
}

function programmeCsv({ result }: SetJob): string {
  const { steps, zone } = result.programme
  const was = finishBefore(result)
  return csvText(
    [
      "step",
      "what",
      "room",
      "trade",
      "crew",
      "people",
      "start date",
      "start time",
      "finish date",
      "finish time",
      "go on date",
      "go on time",
      "hours",
      "float hours",
      "not sooner because",
      "was to finish",
    ],
    [
      ...steps.map((each) => {
        const [from, to, on] = [each.start, each.finish, each.ready].map((at) => siteClock(at, zone))
        return [
          each.step.key,
          each.step.title,
          each.step.room ?? "",
          each.step.trade,
          each.crew,
          each.people,
          from!.date,
          from!.time,
          to!.date,
          to!.time,
          on!.date,
          on!.time,
          Number(fixed(each.step.hours, 2)),
          Number(fixed(each.float, 2)),
          each.because,
          was.get(each.step.key) ?? "",
        ]
      }),
      ...milestones(result).map(({ id, title, on, because }) => [
        `milestone/${id}`,
        title,
        ...["", "", "", "", on, "", on, "", "", "", "", ""],
        because,
        "",
      ]),
    ],
  )
}

/** Days of finish of the steps that moved: as issued, or as first planned before anything was issued. */
function finishBefore({ programme, programmeFile, issuedBefore }: SetJob["result"]): Map<string, string> {
  if (!issuedBefore) return new Map(programme.moves.map(({ key, was }) => [key, was]))
  const { shifts } = compared(issuedBefore.programme, programme, programmeFile.progress)
  return new Map(shifts.map(({ key, finish }) => [key, finish.was ?? "new"]))
}

/** Rows as CSV; text that a spreadsheet would run as a formula is set off with an apostrophe. */
export function csvText(head: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return stringify([head, ...rows.map((row) => row.map(harmless))], {
    record_delimiter: "\r\n",
    quoted_match: /[\r\n]/,
  })
}

function harmless(cell: Cell): Cell {
  return typeof cell === "string" && formula.test(cell) ? `'${cell}` : cell
}

/** What spreadsheets take for a formula: its signs, full-width ones too, also after blanks, and a cell that begins with a line end. */
const formula = /^(?:\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|[\t\r\n])/u
