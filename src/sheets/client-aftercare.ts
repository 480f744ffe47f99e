import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { aftercare } from "../orders/aftercare.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"

/** How to look after what was made, with the days it is due; null where nothing asks for it. */
export function aftercareSheet(result: JobResult): SheetModel | null {
  const cares = aftercareOf(result)
  if (cares.length === 0) return null
  const { inService } = result.job.climate
  const weekly = result.rules.value("aftercare-alarms")
  const did = (trade: string) =>
    result.results.some((each) => each.trade === trade && each.work.steps.length > 0)
  const always: string[] = [
    ...(did("floors")
      ? [
          `Keep the air at about ${inService.temperature} °C and between ${inService.humidityLow} and ${inService.humidityHigh} % humidity all year: wood shrinks in dry air and swells in damp. A small gauge costs little.`,
          "Sweep or vacuum grit up, wipe spilt water at once, felt under chair legs, a mat at the door. Never a steam cleaner or a soaking mop.",
        ]
      : []),
    ...(did("decorating")
      ? [
          "New paint is soft for some weeks: wipe it gently, hang nothing on it with tape, put no furniture hard against it.",
        ]
      : []),
    ...(did("electrics")
      ? [
          `Press the test button of the smoke alarms every ${weekly} days, or as their leaflet says; vacuum them once a year.`,
        ]
      : []),
    ...(did("tiling") || did("plumbing")
      ? ["Air the wash room after every shower; clean joints with mild soap, not with acid or wire."]
      : []),
    "New houses and new rooms dry out for a year: fine cracks at corners are usual, wait a year before filling them. A crack that grows or a door that starts to stick is not: ring us.",
  ]
  const blocks: Block[] = [
    {
      kind: "table",
      caption: "When it is due",
      columns: [
        { label: "First due", as: "figure", width: 21 },
        { label: "Then", width: 14 },
        { label: "What", width: 22 },
        { label: "How", width: 38 },
        { label: "Done", as: "tick", width: 7 },
      ],
      rows: cares.map((care) => ({
        cells: [dateText(care.due[0]!), care.often === "once" ? "–" : care.often, care.what, care.how, ""],
      })),
      note: "The office can send these days as a calendar file (aftercare.ics) for your telephone. Days count from the planned finish; if the finish moves, ask for this sheet again. The leaflets of the makers come before this sheet where they say otherwise.",
    },
    { kind: "list", caption: "All year round", items: always },
  ]
  return clientSheet(
    {
      kind: "client-aftercare",
      title: "Aftercare",
      purpose: "How to keep what was made in good order, with what was really used and the days it is due.",
      rests: [
        ...cares.map((care) => care.rest),
        "aftercare-years",
        ...(did("electrics") ? ["aftercare-alarms"] : []),
      ],
    },
    blocks,
  )
}

/** What this job asks of its household after the finish. */
export function aftercareOf({ orders, programme, rules }: Pick<JobResult, "orders" | "programme" | "rules">) {
  return aftercare({ lines: orders.lines, programme, rules })
}
