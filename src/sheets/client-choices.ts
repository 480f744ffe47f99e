import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"

/** The choices to make, each with its day, what to look at first, and room to write and sign. */
export function choicesSheet(result: JobResult): SheetModel[] {
  const { decisions = [], notes = [] } = result.moneyFile?.client ?? {}
  if (decisions.length === 0 && notes.length === 0) return []
  const lines = new Map(result.orders.lines.map((line) => [line.product.id, line]))
  const sorted = [...decisions].sort((a, b) => (a.by < b.by ? -1 : a.by > b.by ? 1 : 0))
  const asked: Block[] =
    sorted.length > 0
      ? [
          {
            kind: "table",
            caption: "Choices",
            columns: [
              { label: "By", as: "figure", width: 22 },
              { label: "Please choose", width: 26 },
              { label: "Look at first", width: 20 },
              { label: "Your choice", as: "write", width: 22 },
              { label: "Signed", as: "write", width: 12 },
            ],
            rows: sorted.map((each) => {
              const line = each.product === undefined ? undefined : lines.get(each.product)
              const ordered = line ? ` It is ordered by ${dateText(line.orderBy)}.` : ""
              return {
                cells: [
                  dateText(each.by),
                  `${each.what}.${ordered}`,
                  each.sample ?? "ask us for a sample",
                  "",
                  "",
                ],
              }
            }),
            note: "Look at colours on a piece as large as this sheet, on the wall it is for, by day and by lamp. A choice that changes after its day is a change to the agreed work and is priced as one.",
          },
        ]
      : []
  const noted: Block[] = notes.length > 0 ? [{ kind: "list", caption: "Please note", items: notes }] : []
  return [
    clientSheet(
      {
        kind: "client-choices",
        title: "Choices to make",
        purpose: "Each choice holds up the work if it comes later than its day.",
      },
      [
        ...asked,
        ...noted,
        ...(sorted.length > 0 ? [{ kind: "sign" as const, roles: ["Client", "Builder"] }] : []),
      ],
    ),
  ]
}
