import { Decimal } from "decimal.js"

/** Significant digits kept inside sums: far more than any job's total in pence, and than three-decimal quantities times four-decimal prices need. */
const PRECISION = 28

/** The project's one decimal arithmetic: 28 significant digits, halves rounded away from zero. */
const Exact = Decimal.clone({ precision: PRECISION, rounding: Decimal.ROUND_HALF_UP })

/** An amount of money in units of its currency (pounds, not pence), exact. */
export type Money = Decimal

/** No money. */
export const nothing: Money = new Exact(0)

/**
 * An amount of money, exactly as written.
 * @param amount text such as `"12.34"`; a number is taken by its shortest decimal form, so 12.34 is 12.34
 * @throws if the text is no decimal number (intake has already refused such text)
 */
export function money(amount: string | number | Money): Money {
  return new Exact(amount)
}

/** An amount rounded to whole pence, halves away from zero: 2.345 gives 2.35. */
export function toPence(amount: Money): Money {
  return amount.toDecimalPlaces(2, Decimal.ROUND_HALF_UP)
}

/**
 * The total of one line of an order: quantity times price, rounded half up to pence, as each line of an invoice is.
 * @param quantity number bought, in the unit of the price
 */
export function lineTotal(quantity: number, price: Money): Money {
  return toPence(money(price).times(quantity))
}

/** The sum of amounts, exact. */
export function sumOf(amounts: readonly Money[]): Money {
  return amounts.reduce((total, amount) => total.plus(amount), nothing)
}

/**
 * The tax on a net amount, rounded half up to pence.
 * @param percent rate, e.g. 20 for 20 %
 */
export function taxOn(net: Money, percent: number): Money {
  return toPence(money(net).times(percent).dividedBy(100))
}

/**
 * A sum shared out in whole pence so that the shares add up to it: each share is the rise of the running total, rounded half up, so no
 * share is a whole penny off its exact value, and what has no weight gets nothing.
 * @param weights any unit, of any sign; where they come to nothing the last takes all
 */
export function shareOut(total: Money, weights: readonly (number | Money)[]): Money[] {
  const whole = toPence(total)
  const sum = sumOf(weights.map((weight) => money(weight)))
  if (sum.isZero()) return weights.map((_, index) => (index === weights.length - 1 ? whole : nothing))
  let before = nothing
  let weighed = nothing
  return weights.map((weight) => {
    weighed = weighed.plus(weight)
    const now = toPence(whole.times(weighed).dividedBy(sum))
    const share = now.minus(before)
    before = now
    return share
  })
}

/** A net amount with its tax: net and tax each to the penny, and their sum. */
export function withTax(net: Money, percent: number): { net: Money; tax: Money; gross: Money } {
  const rounded = toPence(net)
  const tax = taxOn(rounded, percent)
  return { net: rounded, tax, gross: rounded.plus(tax) }
}

/**
 * An amount for the reader, to the penny with thousands set apart: `£1,234.56`; negative amounts as `−£1,234.56`.
 * @param sign currency sign set before the figure, e.g. `£`
 */
export function moneyText(amount: Money, sign: string): string {
  const [whole = "0", pence = "00"] = toPence(amount).abs().toFixed(2).split(".")
  const minus = toPence(amount).isNegative() && !toPence(amount).isZero() ? "−" : ""
  return `${minus}${sign}${whole.replace(/\B(?=(\d{3})+$)/g, ",")}.${pence}`
}
