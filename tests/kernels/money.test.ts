import { describe, expect, it } from "vitest"
import {
  lineTotal,
  money,
  moneyText,
  nothing,
  shareOut,
  sumOf,
  taxOn,
  toPence,
  withTax,
} from "../../src/kernels/money.ts"
import { HALF_UP, TAX } from "../facts/money.ts"

describe("money", () => {
  it.each(TAX)("tax: $what ($source)", ({ net, percent, tax, gross }) => {
    expect(taxOn(money(net), percent).toFixed(2)).toBe(tax)
    expect(withTax(money(net), percent).gross.toFixed(2)).toBe(gross)
  })

  it.each(HALF_UP)("half up: $what ($source)", ({ exact, pence }) => {
    expect(toPence(money(exact)).toFixed(2)).toBe(pence)
    expect(toPence(money(Number(exact))).toFixed(2)).toBe(pence)
  })

  it("rounds each line before the sum: three lines of 0.335 are 1.02, not 1.01", () => {
    const lines = [1, 1, 1].map((quantity) => lineTotal(quantity, money("0.335")))
    expect(sumOf(lines).toFixed(2)).toBe("1.02")
    expect(sumOf([]).equals(nothing)).toBe(true)
  })

  it("is shared out in pence that add up, none a whole penny off, by hand: 1.00 in three, and by weights of either sign", () => {
    const shares = (total: string, weights: number[]) =>
      shareOut(money(total), weights).map((each) => each.toFixed(2))
    expect(shares("1.00", [1, 1, 1])).toEqual(["0.33", "0.34", "0.33"])
    expect(shares("-1.00", [1, 1, 1])).toEqual(["-0.33", "-0.34", "-0.33"])
    expect(shares("10.00", [3, 0, -1])).toEqual(["15.00", "0.00", "-5.00"])
    expect(shares("0.05", [0, 0])).toEqual(["0.00", "0.05"])
    expect(shares("0.05", [])).toEqual([])
  })

  it("sums exactly where binary fractions drift", () => {
    const dimes = Array.from({ length: 1000 }, () => money("0.10"))
    expect(sumOf(dimes).toFixed(20)).toBe("100.00000000000000000000")
  })

  it("keeps a long product exact: 1,234,567.89 of 98,765.4321", () => {
    // 1234567.89 × 98765.4321 by integer arithmetic: 123456789 × 987654321 = 121932631112635269, six decimals
    expect(money("98765.4321").times("1234567.89").toFixed()).toBe("121932631112.635269")
  })

  it("is written with thousands set apart and the given sign", () => {
    expect(moneyText(money("1234.56"), "£")).toBe("£1,234.56")
    expect(moneyText(money("1234567.005"), "£")).toBe("£1,234,567.01")
    expect(moneyText(money("-12.3"), "€")).toBe("−€12.30")
    expect(moneyText(money("-0.001"), "£")).toBe("£0.00")
    expect(moneyText(nothing, "£")).toBe("£0.00")
  })
})
