import type { MoneyFile } from "../intake/schema/money.ts"
import { addDays, isoDate } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { type Money, nothing, shareOut, sumOf, taxOn } from "../kernels/money.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { Programme } from "../programme/programme.ts"

/** One payment of the agreed price. */
export interface Payment {
  what: string
  /** Share of the price, per cent; null for what was held back. */
  percent: number | null
  /** The day its milestone is planned for, and the last day to pay. */
  reached: IsoDate
  payBy: IsoDate
  /** Worth of the work it pays for with tax, what is held back of it, and what is paid. */
  worth: Money
  heldBack: Money
  toPay: Money
}

/** The payments of a price in order: stages, then the two halves of what was held back. Their `toPay` make the price exactly. */
export interface PaymentPlan {
  payments: Payment[]
  within: number
  retention: { percent: number; months: number; total: Money } | null
  total: Money
}

/**
 * Stage payments tied to milestones of the programme, less the retention; half of what was held back is paid at the finish and half
 * after the months agreed. Shares are whole pence that add up.
 * @param gross the price with tax
 */
export function paymentPlan(gross: Money, file: MoneyFile, programme: Programme): PaymentPlan | null {
  if (!file.payments) return null
  const { within, stages } = file.payments
  const worths = shareOut(
    gross,
    stages.map((stage) => stage.percent),
  )
  const held = file.retention ? taxOn(gross, file.retention.percent) : nothing
  const helds = shareOut(held, worths)
  const paid = stages.map((stage, index): Payment => {
    const reached = reachedOn(stage, programme)
    return {
      what: stage.what,
      percent: stage.percent,
      reached,
      payBy: addDays(reached, within),
      worth: worths[index]!,
      heldBack: helds[index]!,
      toPay: worths[index]!.minus(helds[index]!),
    }
  })
  const payments = [...paid, ...releases(held, file, programme)]
  return {
    payments,
    within,
    retention: file.retention ? { ...file.retention, total: held } : null,
    total: sumOf(payments.map((each) => each.toPay)),
  }
}

type Stage = NonNullable<MoneyFile["payments"]>["stages"][number]

/** The day all work that a payment waits for is done and dry. */
function reachedOn({ at, done }: Stage, programme: Programme): IsoDate {
  if (at === "start") return programme.start
  const own = programme.steps.filter(
    ({ step }) =>
      done !== undefined &&
      (done.trade === undefined || step.trade === done.trade) &&
      (done.room === undefined || step.room === done.room),
  )
  const last = own.map((each) => clockAt(each.ready, programme.zone).date).sort()
  return last[last.length - 1] ?? programme.finish
}

function releases(held: Money, { retention, payments }: MoneyFile, { finish }: Programme): Payment[] {
  if (!retention || held.isZero()) return []
  const [first, second] = shareOut(held, [1, 1])
  const later = monthsAfter(finish, retention.months)
  const release = (what: string, reached: IsoDate, toPay: Money): Payment => ({
    what,
    percent: null,
    reached,
    payBy: addDays(reached, payments?.within ?? 0),
    worth: nothing,
    heldBack: nothing,
    toPay,
  })
  return [
    release("First half of what was held back, when the work is finished", finish, first!),
    release("Second half of what was held back, when faults have been put right", later, second!),
  ]
}

/** The same day so many months later, or the last of that month where it has no such day. */
export function monthsAfter(date: IsoDate, months: number): IsoDate {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number)
  const lastOfMonth = Number(isoDate(year, month + months + 1, 0).slice(8))
  return isoDate(year, month + months, Math.min(day, lastOfMonth))
}
