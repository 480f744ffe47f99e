import { momentText } from "../kernels/calendar/date-text.ts"
import type { Row, SheetModel } from "../kernels/paper.ts"
import { fixed } from "../kernels/units.ts"
import type { Room } from "../survey/room.ts"
import type { JobResult } from "./job-result.ts"

/** The order of work in one room: dates, crew, hold points, what must be dry first; a box to tick and a place to sign. */
export function sequenceSheet(result: JobResult, room: Room): SheetModel {
  const { steps, zone, crews } = result.programme
  const own = steps.filter((each) => each.step.room === room.id)
  const rows = own.flatMap((each, index): Row[] => {
    const crew = crews.find((one) => one.id === each.crew)?.name ?? ""
    const gate = each.step.gate
    const after = gate
      ? `${gate.process} (${hoursText(gate.hours)}): ${momentText(each.ready, zone)}${gate.until ? `, and ${gate.until}` : ""}`
      : ""
    const row: Row = {
      cells: [
        String(index + 1),
        `${each.step.title}. ${each.step.detail}${each.doneBy ? ` Solvent: put on by ${each.doneBy} each day; people sleep on this storey.` : ""}`,
        crew,
        momentText(each.start, zone),
        after,
        "",
      ],
    }
    return each.step.hold
      ? [row, { as: "hold", cells: ["", `Stop and check: ${each.step.hold}`, "", "", "", ""] }]
      : [row]
  })
  return {
    kind: "sequence",
    title: "Order of work",
    purpose: "Work down the list; tick a step when it is done; do not pass a stop line unsigned.",
    room: room.id,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "table",
        caption: "Steps in order",
        columns: [
          { label: "No.", as: "figure", width: 5 },
          { label: "Step", width: 46 },
          { label: "Who", width: 13 },
          { label: "Start", as: "figure", width: 14 },
          { label: "Go on after", width: 20 },
          { label: "Done", as: "tick", width: 7 },
        ],
        rows,
        note: "Times assume the air stated for the job; the drying board gives the hours for the air on the day.",
      },
      { kind: "sign", roles: ["Foreman", "Room handed over"] },
    ],
    rests: [],
  }
}

/** Elapsed hours for the reader: hours under two days, else days. */
export function hoursText(hours: number): string {
  return hours < 48
    ? `${fixed(hours, hours % 1 === 0 ? 0 : 1)} h`
    : `${fixed(hours / 24, hours % 24 === 0 ? 0 : 1)} days`
}
