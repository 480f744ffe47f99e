import type { Block, Row } from "../../kernels/paper.ts"
import { fixed } from "../../kernels/units.ts"
import { dryingProcesses } from "../../rulebook/drying.ts"
import type { Task } from "../trade.ts"
import { type CoatLine, paintName } from "./coats.ts"
import { gateOf } from "./gates.ts"
import { type CoatGroup, coatGroups } from "./groups.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { coatOrder } from "./systems.ts"

/** Every coat in order, a row a coat and group of surfaces: how much, how long to wait, when it was done. */
export function coatTable(task: Task<DecoratingInputs>, lines: CoatLine[]): Block {
  return {
    kind: "table",
    caption: "Coats, in order",
    columns: [
      { label: "Coat and paint", width: 4.4 },
      { label: "On", width: 2.5 },
      { label: "m²", as: "figure", width: 1.4 },
      { label: "Paint l", as: "figure", width: 1.1 },
      { label: "Water l", as: "figure", width: 1.2 },
      { label: "Wait h", as: "figure", width: 0.95 },
      { label: "Done", as: "tick", width: 1.1 },
      { label: "Date, hour", as: "write", width: 1.7 },
      { label: "Next coat from", as: "write", width: 1.7 },
    ],
    rows: coatOrder.flatMap((key) => {
      const coat = lines.filter((line) => line.coat.key === key)
      return coatGroups(coat).map((group, index, all) =>
        groupRow(task, group, index > 0 && group.lines[0]!.product === all[index - 1]!.lines[0]!.product),
      )
    }),
    note: `Litres are net. Waits are elapsed hours in the planned air, nights included; then ready when: ${readyWords(lines)}.`,
  }
}

function groupRow(task: Task<DecoratingInputs>, group: CoatGroup, isSamePaint: boolean): Row {
  const { coat, product } = group.lines[0]!
  return {
    cells: [
      isSamePaint ? "" : `${coat.name}: ${product ? paintName(product) : "paint to be chosen"}`,
      group.name,
      fixed(group.area, 2),
      fixed(group.paint, 2),
      coat.mist ? fixed(group.water, 2) : "",
      waitText(task, group.lines),
      "",
      "",
      "",
    ],
  }
}

function waitText(task: Task<DecoratingInputs>, lines: CoatLine[]): string {
  const hours = lines.map(({ process }) => gateOf(task, process)?.hours ?? Number.POSITIVE_INFINITY)
  const longest = Math.max(...hours)
  return Number.isFinite(longest) ? String(longest) : "do not"
}

/** What each paint is ready by, once for paints that are ready alike. */
function readyWords(lines: CoatLine[]): string {
  const byUntil = new Map<string, Set<string>>()
  for (const { process } of lines) {
    const { what, until } = dryingProcesses[process]
    byUntil.set(until, (byUntil.get(until) ?? new Set()).add(what.toLowerCase()))
  }
  return [...byUntil].map(([until, whats]) => `${[...whats].join(", ")}: ${until}`).join("; ")
}
