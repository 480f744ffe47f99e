import { dateText } from "../kernels/calendar/date-text.ts"
import { addWorkingDays } from "../kernels/calendar/work-calendar.ts"
import { moneyText } from "../kernels/money.ts"
import type { SheetModel } from "../kernels/paper.ts"
import type { IsoDate } from "../kernels/units.ts"
import { paymentPlan } from "../orders/payments.ts"
import { emptied } from "./client-rooms.ts"
import { listText } from "./client-schedule.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"
import { kindNumbers } from "./numbers.ts"

interface Asked {
  on: IsoDate
  what: string
  kind: string
}

/** The cover: for whom and when, what we need from the client day by day, and which sheet answers which question. */
export function coverSheet(result: JobResult, others: readonly SheetModel[]): SheetModel {
  const { job, programme, price } = result
  const asked = askedOf(result)
  return clientSheet(
    {
      kind: "client-cover",
      title: "Your pack",
      purpose:
        "What happens in your house, what we need from you and by when, and where to find the answers.",
    },
    [
      { kind: "text", as: "lead", paragraphs: [`For: ${job.client}`] },
      {
        kind: "figures",
        items: [
          { label: "Start", value: dateText(programme.start) },
          { label: "Planned finish", value: dateText(programme.finish) },
          ...(price ? [{ label: "Price with VAT", value: moneyText(price.gross, "£") }] : []),
        ],
      },
      {
        kind: "table",
        caption: "What we need from you, in order",
        columns: [
          { label: "By", as: "figure", width: 22 },
          { label: "What", width: 58 },
          { label: "Sheet", as: "mark", width: 12 },
          { label: "Done", as: "tick", width: 8 },
        ],
        rows: asked.map(({ on, what, kind }) => ({ cells: [dateText(on), what, numberOf(kind), ""] })),
      },
      {
        kind: "table",
        caption: "What is in this pack",
        columns: [
          { label: "Sheet", as: "mark", width: 12 },
          { label: "Title", width: 32 },
          { label: "What it answers", width: 56 },
        ],
        rows: others.map((sheet) => ({ cells: [numberOf(sheet.kind), sheet.title, sheet.purpose] })),
        note: "Each sheet explains its own words at its foot. A sheet with a newer letter takes the place of the old one: throw that away.",
      },
      {
        kind: "boxes",
        caption: "Whom to ring",
        labels: ["Foreman, by day", "Office", "At night, for water or power"],
      },
    ],
  )
}

function numberOf(kind: string): string {
  return `J-${kindNumbers[kind]}`
}

/** Choices, rooms to empty, the insurer and payments, in order of their day. */
function askedOf(result: JobResult): Asked[] {
  const { programme, moneyFile, account, price } = result
  const before = addWorkingDays(programme.start, -1, programme.calendar)
  const choices = (moneyFile?.client.decisions ?? []).map(
    ({ by, what }): Asked => ({ on: by, what: `Choose: ${what}`, kind: "client-choices" }),
  )
  const byDay = new Map<IsoDate, string[]>()
  for (const { room, by } of emptied(result)) byDay.set(by, [...(byDay.get(by) ?? []), room.name])
  const rooms = [...byDay].map(
    ([on, names]): Asked => ({ on, what: `Rooms ready for work: ${listText(names)}`, kind: "client-rooms" }),
  )
  const agreed = (account?.contract ?? result).price
  const plan = moneyFile && agreed ? paymentPlan(agreed.gross, moneyFile, programme) : null
  const payments = (plan?.payments ?? []).map(
    ({ payBy, what, toPay }): Asked => ({
      on: payBy,
      what: `Pay ${moneyText(toPay, "£")}: ${what}`,
      kind: "client-payments",
    }),
  )
  const open = (account?.changes ?? []).filter(
    ({ variation }) => price && !variation.accepted && !variation.declined,
  )
  const changes = open.map(
    ({ variation }): Asked => ({
      on: before,
      what: `Accept or decline the change ${variation.id}: ${variation.what}`,
      kind: "client-variations",
    }),
  )
  return [
    ...choices,
    {
      on: before,
      what: "Tell your home insurer, and see to the other things before the start",
      kind: "client-terms",
    },
    ...rooms,
    ...changes,
    ...payments,
    { on: programme.finish, what: "Walk through the finished rooms with us", kind: "client-handover" },
  ].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
}
