import { expect, it } from "vitest"
import { noWork } from "../../src/trades/trade.ts"

it("a work with nothing in it is a new one each time", () => {
  const first = noWork()
  first.rests.push("decor-waste")
  expect(noWork().rests).toEqual([])
  expect(Object.values(noWork()).flat()).toEqual([{}])
})
