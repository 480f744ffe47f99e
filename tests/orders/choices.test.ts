import { describe, expect, it } from "vitest"
import { lateChoices } from "../../src/orders/choices.ts"
import { moneyOf } from "../fixtures/programme.ts"
import { smallResult } from "../fixtures/small-job.ts"

describe("choices", () => {
  it("that come after the last day to order are named where they are written", async () => {
    const { lines } = (await smallResult()).orders
    const [line] = lines
    const choose = (by: string) => ({ by, what: "board", product: line!.product.id })
    const file = moneyOf({
      client: { decisions: [choose(line!.orderBy), choose("2027-12-01"), { by: "2027-12-01", what: "x" }] },
    })
    const findings = lateChoices(file, lines)
    expect(findings.map(({ code, severity, at }) => [code, severity, at.path.join("/")])).toEqual([
      ["choice-after-order", "warning", "client/decisions/1/by"],
    ])
    expect(lateChoices(null, lines)).toEqual([])
  })
})
