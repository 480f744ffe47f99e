import type { BookedDelivery } from "../intake/schema/household.ts"
import { dayText } from "../kernels/calendar/date-text.ts"
import type { Finding } from "../kernels/finding.ts"
import type { OrderLine } from "./orders.ts"

/** Booked deliveries that come too early (wood before heat, above all) or after they are needed, and those that nothing asks for. */
export function bookedFindings(
  booked: readonly BookedDelivery[],
  lines: readonly Pick<OrderLine, "product" | "earliest" | "latest" | "notBefore">[],
): Finding[] {
  return booked.flatMap(({ product, on }, index): Finding[] => {
    const at = { file: "programme.yaml", path: ["booked", index, "on"] }
    const line = lines.find((each) => each.product.id === product)
    if (!line) {
      const message = `${product} is booked for ${dayText(on)}, and nothing in the job asks for it.`
      return [{ code: "booked-for-nothing", severity: "note", at, message }]
    }
    const name = line.product.name
    if (on < line.earliest) {
      const why = line.notBefore ? ` (${line.notBefore})` : ""
      return [
        {
          code: "delivery-too-early",
          severity: line.notBefore ? "error" : "warning",
          at,
          message: `${name} is booked for ${dayText(on)}; it must not come before ${dayText(line.earliest)}${why}.`,
          mend: `Move it to between ${dayText(line.earliest)} and ${dayText(line.latest)}.`,
        },
      ]
    }
    if (on <= line.latest) return []
    return [
      {
        code: "delivery-too-late",
        severity: "warning",
        at,
        message: `${name} is booked for ${dayText(on)}; it is needed by ${dayText(line.latest)}.`,
        mend: `Move it to between ${dayText(line.earliest)} and ${dayText(line.latest)}.`,
      },
    ]
  })
}
