import type { SheetModel } from "../kernels/paper.ts"
import type { Room } from "../survey/room.ts"
import type { Caution } from "../trades/trade.ts"
import { type JobResult, resultsIn } from "./job-result.ts"

/** What can hurt in one room: each caution once, whichever trade raises it, with whom to ask. */
export function cautionsSheet(result: JobResult, room: Room): SheetModel {
  const cautions = distinct(resultsIn(result, room).flatMap((each) => each.work.cautions))
  const warnings = [...room.findings, ...resultsIn(result, room).flatMap((each) => each.work.findings)]
    .filter((finding) => finding.severity !== "note")
    .map((finding) => `${finding.message}${finding.mend ? ` ${finding.mend}` : ""}`)
  return {
    kind: "cautions",
    title: "Cautions",
    purpose: "Read before starting. These advise; local rules, the makers and the licensed trades decide.",
    room: room.id,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      ...(warnings.length > 0
        ? [
            {
              kind: "warning" as const,
              caption: "Open questions in this room",
              items: [...new Set(warnings)],
            },
          ]
        : []),
      { kind: "cautions", items: cautions.map(({ text, why, defer }) => ({ text, why, defer })) },
      { kind: "sign", roles: ["Read by", "Read by", "Read by"] },
    ],
    rests: [],
  }
}

/** Cautions with the same id once, in the order met. */
export function distinct(cautions: readonly Caution[]): Caution[] {
  return cautions.filter((caution, index) => cautions.findIndex((other) => other.id === caution.id) === index)
}
