import { type Money, money, moneyText } from "../kernels/money.ts"
import type { Block, Row } from "../kernels/paper.ts"
import { mmText } from "../kernels/units.ts"
import { ruleOfThumb } from "../orders/rule-of-thumb.ts"
import type { JobResult } from "./job-result.ts"

/** What the saw plan saves in money against the rule of thumb, profile by profile, and what the spare lengths cost; empty where nothing is sawn. */
export function lengthSavings({ orders, rules }: JobResult): Block[] {
  const lines = orders.cutLists.flatMap((list) => {
    const thumb = ruleOfThumb(list, rules)
    const spare = list.spares ? list.spares.price.times(list.spares.count) : money(0)
    return thumb ? [{ list, thumb, spare, saved: thumb.cost.minus(thumb.planCost) }] : []
  })
  if (lines.length === 0) return []
  const sum = (value: (line: (typeof lines)[number]) => Money) =>
    lines.reduce((total, line) => total.plus(value(line)), money(0))
  const rows = lines.map(
    (line): Row => ({
      cells: [
        line.list.product.name,
        `${line.thumb.lengths} of ${mmText(line.thumb.length)}`,
        moneyText(line.thumb.cost, ""),
        String(line.thumb.planLengths),
        moneyText(line.thumb.planCost, ""),
        moneyText(line.saved, ""),
        moneyText(line.spare, ""),
      ],
    }),
  )
  return [
    {
      kind: "table",
      caption: "Lengths: rule of thumb against the saw plan",
      columns: [
        { label: "Profile", width: 24 },
        { label: "Rule of thumb", as: "figure", width: 18 },
        { label: "£", as: "figure", width: 12 },
        { label: "Plan", as: "figure", width: 8 },
        { label: "£", as: "figure", width: 12 },
        { label: "Saved £", as: "figure", width: 12 },
        { label: "Spare £", as: "figure", width: 12 },
      ],
      rows: [
        ...rows,
        {
          as: "total",
          cells: [
            "Total",
            "",
            moneyText(
              sum((line) => line.thumb.cost),
              "",
            ),
            "",
            moneyText(
              sum((line) => line.thumb.planCost),
              "",
            ),
            moneyText(
              sum((line) => line.saved),
              "",
            ),
            moneyText(
              sum((line) => line.spare),
              "",
            ),
          ],
        },
      ],
      note: `Rule of thumb: run and ${rules.value("joinery-waste")} %, in whole lengths, with no promise that the pieces come out of them. Spare lengths come over the plan.`,
    },
  ]
}
