import { describe, expect, it } from "vitest"
import { money } from "../../src/kernels/money.ts"
import type { OrderLine } from "../../src/orders/orders.ts"
import { priceOf } from "../../src/orders/price.ts"
import { whenAndHow } from "../fixtures/generated-prices.ts"
import { rollProduct } from "../fixtures/products.ts"
import { datedOf, moneyOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const line = (total: string, net = 1): OrderLine => ({
  product: rollProduct,
  net,
  gross: net,
  unit: "m2",
  packs: [],
  bought: 1,
  total: money(total),
  uses: [{ trade: "floors", room: "R1", net, gross: net, stage: "floor" }],
  trades: ["floors"],
  rooms: ["R1"],
  ...whenAndHow,
})

const programme = datedOf(
  [stepOf({ key: "a", hours: 2.25 }), stepOf({ key: "b", hours: 5.1, trade: "floors", stage: "floor" })],
  [surveyed()],
)

describe("the price", () => {
  const rates = [
    { crew: "joiner", perHour: "31.25" },
    { crew: "decorator", perHour: "24.10" },
  ]
  const provisional = [{ what: "plaster made good", amount: "333.335" }]
  const price = priceOf({
    lines: [line("41.50"), line("98.15"), line("0.07")],
    programme,
    file: moneyOf({ rates, provisional, overheadAndProfit: 12.5, contingency: 3 }),
    sums: [],
  })

  it("is that of a sum done by hand on paper, line by line, halves of a penny up", () => {
    const written = Object.fromEntries(
      Object.entries(price).flatMap(([key, value]) =>
        typeof value === "object" && "toFixed" in value ? [[key, value.toFixed(2)]] : [],
      ),
    )
    // Labour: 5.1 h at 31.25 = 159.375, to the penny 159.38; 2.25 h count as 2.3 h at 24.10 = 55.43; 214.81 together.
    // Materials 139.72. Overhead 12.5 % of 354.53 = 44.31625, 44.32. Contingency 3 % = 10.6359, 10.64.
    // Net 139.72 + 214.81 + 333.34 + 44.32 + 10.64 = 742.83. Tax at 20 % = 148.566, 148.57.
    expect(written).toEqual({
      materialsTotal: "139.72",
      labourTotal: "214.81",
      plantTotal: "0.00",
      sumsTotal: "0.00",
      provisionalTotal: "333.34",
      overheadAndProfit: "44.32",
      contingency: "10.64",
      net: "742.83",
      vat: "148.57",
      gross: "891.40",
    })
  })

  it("has totals that are the sums of the lines as printed", () => {
    const pence = (amounts: { toFixed(decimals: number): string }[]) =>
      amounts.reduce<number>((sum, amount) => sum + Math.round(Number(amount.toFixed(2)) * 100), 0)
    expect(pence(price.materials.map((each) => each.amount))).toBe(pence([price.materialsTotal]))
    expect(pence(price.labour.map((each) => each.amount))).toBe(pence([price.labourTotal]))
    expect(pence([price.net, price.vat])).toBe(pence([price.gross]))
  })

  it("counts a crew without a rate as nothing, and it can be seen", () => {
    const { labour } = priceOf({ lines: [], programme, file: moneyOf({ rates: [] }), sums: [] })
    expect(labour.map(({ crew, amount }) => [crew, amount.toFixed(2)])).toEqual([
      ["decorator", "0.00"],
      ["joiner", "0.00"],
    ])
  })

  it("adds plant to what carries overhead, and sums of variations as they stand, by hand", () => {
    const plant = [{ what: "extractor", number: 3, unit: "week", amount: "38.005" }]
    const sums = [
      { what: "shelf", amount: "100.00", omit: false },
      { what: "making good", amount: "40.004", omit: true },
    ]
    const own = priceOf({
      lines: [],
      programme,
      file: moneyOf({ rates: [], plant, overheadAndProfit: 10, contingency: 0 }),
      sums,
    })
    // 3 x 38.005 = 114.015, 114.02; 10 % of it 11.402, 11.40; 100.00 - 40.00 = 60.00; net 185.42; tax 37.084, 37.08
    expect(own.plantTotal.toFixed(2)).toBe("114.02")
    expect(own.overheadAndProfit.toFixed(2)).toBe("11.40")
    expect(own.sums.map((each) => each.amount.toFixed(2))).toEqual(["100.00", "-40.00"])
    expect([own.net, own.vat, own.gross].map((each) => each.toFixed(2))).toEqual([
      "185.42",
      "37.08",
      "222.50",
    ])
  })

  it("tells what of a product's price is waste, spares and part packs: 0.6 of 1 used of 41.50 leaves 16.60", () => {
    const [own] = priceOf({ lines: [line("41.50", 0.6)], programme, file: moneyOf(), sums: [] }).materials
    expect(own?.waste.toFixed(2)).toBe("16.60")
  })
})
