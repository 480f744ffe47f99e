import { describe, expect, it } from "vitest"
import type { Money } from "../../src/kernels/money.ts"
import { money } from "../../src/kernels/money.ts"
import { type BillLine, billOf, type Cost, grouped, splitBy } from "../../src/orders/bill.ts"
import { type Price, priceOf } from "../../src/orders/price.ts"
import { moneyTable, vatTable } from "../../src/sheets/money-tables.ts"
import { generatedPrice } from "../fixtures/generated-prices.ts"
import { moneyOf } from "../fixtures/programme.ts"

const cost = (given: Partial<Cost>): Cost => ({
  kind: "materials",
  what: "x",
  trade: "floors",
  room: "R1",
  stage: "floor",
  cost: money("1.01"),
  ...given,
})
const text = (amounts: Money[]) => amounts.map((each) => each.toFixed(2))

describe("a bill", () => {
  it("shares what is worked out on the whole in pence that add up, by hand", () => {
    // Three lines of 1.01: 10 % of 3.03 is 0.303, 0.30, a tenth each; VAT 20 % of 3.33 is 0.666, 0.67: running 0.22, 0.45, 0.67.
    const { lines, taxes } = billOf(
      [cost({}), cost({}), cost({})],
      moneyOf({ overheadAndProfit: 10, contingency: 0 }),
    )
    expect(text(lines.map((line) => line.overhead))).toEqual(["0.10", "0.10", "0.10"])
    expect(text(lines.map((line) => line.vat))).toEqual(["0.22", "0.23", "0.22"])
    expect(text([taxes[0]!.net, taxes[0]!.vat])).toEqual(["3.33", "0.67"])
    const [alone] = grouped([lines[1]!], taxes, () => "second")
    expect(text([alone!.vat, alone!.vatAlone])).toEqual(["0.23", "0.22"])
  })

  it("gives a line the rate of the first exception that matches all it names, and the job's own otherwise", () => {
    const file = moneyOf({
      vat: {
        percent: 20,
        because: "ordinary",
        except: [
          { percent: 0, because: "both", trades: ["floors"], rooms: ["R2"] },
          { percent: 5, because: "goods", products: ["p"] },
          { percent: 0, because: "named", lines: ["skip"] },
        ],
      },
    })
    const { lines, taxes } = billOf(
      [
        cost({}),
        cost({ room: "R2" }),
        cost({ trade: "doors", room: "R2", product: "p" }),
        cost({ kind: "plant", what: "skip", trade: null, room: null }),
        cost({ what: "skip" }),
      ],
      file,
    )
    expect(lines.map((line) => taxes[line.rate]!.because)).toEqual([
      "ordinary",
      "both",
      "goods",
      "named",
      "ordinary",
    ])
  })

  it("puts no overhead on allowances and agreed sums", () => {
    const { lines } = billOf([cost({ kind: "provisional" }), cost({ kind: "sum" }), cost({})], moneyOf())
    expect(lines.map((line) => line.overhead.isZero())).toEqual([true, true, false])
    expect(text(Object.values(splitBy(money("10.01"), 0.25)))).toEqual(["2.50", "7.51"])
  })
})

/** Whole pence of a printed amount, by its digits alone. */
const pence = (printed = "") => {
  const digits = Number(printed.replace(/[£,.−]/g, ""))
  return printed.startsWith("−") ? -digits : digits
}
const sum = (list: number[]) => list.reduce((total, each) => total + each, 0)

/** Half away from zero of an exact decimal text, by whole-number arithmetic: no decimal library. */
function halfUp(numerator: bigint, denominator: bigint): number {
  const [size, sign] = numerator < 0n ? [-numerator, -1] : [numerator, 1]
  return Number((2n * size + denominator) / (2n * denominator)) * sign || 0
}

const groupings: [string, (line: BillLine, price: Price) => string][] = [
  ["room", (line) => line.room ?? "house"],
  ["stage", (line) => line.stage ?? "none"],
  ["trade", (line) => line.trade ?? "none"],
  ["rate", (line, price) => price.taxes[line.rate]!.because],
  ["kind", (line) => line.kind],
  ["room and trade", (line) => `${line.room}/${line.trade}`],
]

/**
 * Generated jobs, each printed and added up again from what is printed: `GENERATED=5000 npm test -- tests/orders/bill.test.ts` takes
 * five thousand of them.
 */
describe("prices of generated jobs", () => {
  const count = Number(process.env.GENERATED ?? 250)

  it("add up to the printed totals in any grouping, to the penny", () => {
    let pennies = 0
    for (let seed = 0; seed < count; seed++) {
      const task = generatedPrice(seed)
      const price = priceOf(task)
      for (const [name, keyOf] of groupings) {
        const table = moneyTable(name, price, { label: name, keyOf: (line) => keyOf(line, price) })
        if (table.kind !== "table") throw new Error("no table")
        const rows = table.rows.map((row) => row.cells.slice(1).map(pence))
        const [total = [], ...lines] = rows.reverse()
        const printed = [price.net, price.vat, price.gross].map((each) =>
          pence(each.toFixed(2).replace("-", "−")),
        )
        expect(total, `${seed} ${name}`).toEqual(printed)
        for (const column of [0, 1, 2])
          expect(sum(lines.map((row) => row[column]!)), `${seed} ${name}`).toBe(total[column])
        for (const [net = 0, vat = 0, gross = 0] of lines) expect(net + vat).toBe(gross)
        const differs = grouped(price.bill, price.taxes, (line) => keyOf(line, price)).some(
          (group) => !group.vat.equals(group.vatAlone),
        )
        expect(table.note !== undefined, `${seed} ${name}: a penny of difference is explained`).toBe(differs)
        if (differs) pennies++
      }
      checkedByWholeNumbers(price, task)
    }
    expect(pennies).toBeGreaterThan(0)
  }, 600_000)

  /** Every level against arithmetic in whole numbers: labour, overhead, tax of each rate. */
  function checkedByWholeNumbers(price: Price, { file }: ReturnType<typeof generatedPrice>): void {
    const exact = (amount: { toFixed(places: number): string }, places: number) =>
      BigInt(amount.toFixed(places).replace(".", ""))
    for (const { hours, rate, amount } of price.labour)
      expect(pence(amount.toFixed(2))).toBe(halfUp(BigInt(Math.round(hours * 10)) * exact(rate, 4), 1000n))
    const base = exact(price.labourTotal.plus(price.materialsTotal).plus(price.plantTotal), 2)
    const share = (percent: number) => halfUp(base * BigInt(Math.round(percent * 100)), 10_000n)
    expect(pence(price.overheadAndProfit.toFixed(2))).toBe(share(file.overheadAndProfit))
    expect(pence(price.contingency.toFixed(2))).toBe(share(file.contingency))
    for (const tax of price.taxes)
      expect(Number(exact(tax.vat, 2))).toBe(halfUp(exact(tax.net, 2) * BigInt(tax.percent), 100n))
    const parts = [
      price.labourTotal,
      price.materialsTotal,
      price.plantTotal,
      price.provisionalTotal,
      price.sumsTotal,
      price.overheadAndProfit,
      price.contingency,
    ]
    expect(sum(parts.map((each) => Number(exact(each, 2))))).toBe(Number(exact(price.net, 2)))
    const rates = vatTable(price)
    if (rates.kind !== "table") throw new Error("no table")
    expect(sum(rates.rows.map((row) => pence(row.cells[2])))).toBe(Number(exact(price.vat, 2)))
  }
})
