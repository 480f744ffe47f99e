import type { MoneyFile } from "../intake/schema/money.ts"
import { dateText } from "../kernels/calendar/date-text.ts"
import type { Finding } from "../kernels/finding.ts"
import type { OrderLine } from "./orders.ts"

/** Choices of the client that would come after the last day to order what is chosen. */
export function lateChoices(file: MoneyFile | null, lines: readonly OrderLine[]): Finding[] {
  return (file?.client.decisions ?? []).flatMap(({ by, what, product }, index): Finding[] => {
    const line = lines.find((each) => each.product.id === product)
    if (!line || by <= line.orderBy) return []
    return [
      {
        code: "choice-after-order",
        severity: "warning",
        at: { file: "money.yaml", path: ["client", "decisions", index, "by"] },
        message: `"${what}" is to be chosen by ${dateText(by)}, but ${line.product.name} must be ordered by ${dateText(line.orderBy)}.`,
        mend: "Ask for the choice sooner, or let what waits for it begin later.",
      },
    ]
  })
}
