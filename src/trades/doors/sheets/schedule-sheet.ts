import type { Row, SheetModel } from "../../../kernels/paper.ts"
import { fixed } from "../../../kernels/units.ts"
import type { Caution, JobFacts, Quantity } from "../../trade.ts"
import type { HungDoor } from "../hanging/hung-door.ts"
import { leafText } from "../hanging/leaf.ts"
import { furniture } from "../materials.ts"
import { halfText } from "../messages.ts"

interface Schedule {
  doors: readonly HungDoor[]
  /** Of the doors trade, all rooms. */
  quantities: readonly Quantity[]
  job: JobFacts
  cautions: readonly Caution[]
  rests: readonly string[]
}

/** Door schedule of the house: what guidance asks, what we hang and why; measures and ironmongery; totals. */
export function scheduleSheet({ doors, quantities, job, cautions, rests }: Schedule): SheetModel {
  return {
    kind: "door-schedule",
    title: "Door schedule",
    purpose: "Every doorway of the house: what guidance asks at least, what we hang, and why.",
    room: null,
    trade: "doors",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "landscape",
    datum: "Sizes in mm; trims are the most that comes off an edge",
    blocks: [
      {
        kind: "table",
        caption: "Which leaf, and why",
        columns: [
          { label: "Door", as: "mark", width: 2 },
          { label: "From, to", width: 3 },
          { label: "Guidance's minimum", width: 5 },
          { label: "What we hang", width: 6 },
          { label: "Why", width: 13 },
          { label: "Clause", width: 8 },
        ],
        rows: doors.map(reasonRow),
        note: "England's guidance, in the edition named; what is quoted or from memory says so. Building control decides; regions differ.",
      },
      {
        kind: "table",
        caption: "Measures (a dash: stays as it is, or not taken)",
        columns: [
          { label: "Door", as: "mark", width: 2 },
          { label: "Lining", width: 3 },
          { label: "Leaf", width: 6 },
          { label: "As hung", as: "figure", width: 5 },
          { label: "Off hinge / lock", as: "figure", width: 3 },
          { label: "Off head / foot", as: "figure", width: 3 },
          { label: "Under foot", as: "figure", width: 2 },
          { label: "Hinges", width: 6 },
          { label: "Hand", width: 2 },
          { label: "Furniture", width: 9 },
          { label: "Clear before / after", as: "figure", width: 5 },
        ],
        rows: doors.map((hung) => measureRow(hung, job)),
      },
      {
        kind: "table",
        caption: "Ironmongery and leaves, whole house",
        columns: [
          { label: "What", width: 6 },
          { label: "Number", as: "figure" },
          { label: "Unit" },
          { label: "Here", as: "tick" },
        ],
        rows: totals(quantities),
      },
      { kind: "cautions", items: [...cautions] },
    ],
    rests: [...rests],
  }
}

function reasonRow({ door, ask, leaf, work }: HungDoor): Row {
  const more =
    leaf && ask.minutes > 0 && leaf.minutes > ask.minutes
      ? ` FD${leaf.minutes} is hung because FD${ask.minutes} leaves are rarely sold (common practice).`
      : ""
  const question = ask.question ? ` Question: ${ask.question}` : ""
  return {
    cells: [
      door.id,
      door.between.join(" to "),
      ask.minimumText,
      leafText(leaf, door, work),
      `${ask.why}${more}${question}`,
      ask.clause,
    ],
  }
}

function measureRow(hung: HungDoor, job: JobFacts): Row {
  const { door, fitted, leaf } = hung
  if (!fitted || !leaf)
    return {
      cells: [
        door.id,
        door.lining,
        stays(hung),
        ...Array.from({ length: 5 }, () => dash),
        door.hinges ?? dash,
        dash,
        dash,
      ],
    }
  const most = (values: number[]) => halfText(Math.max(...values))
  const { across, up, hinges, clear } = fitted
  return {
    cells: [
      door.id,
      door.lining,
      `${leaf.width} x ${leaf.height} x ${leaf.thickness}`,
      `${halfText(fitted.size.width)} x ${halfText(fitted.size.height)}`,
      `${most(across.map((each) => each.hingeTrim))} / ${most(across.map((each) => each.lockTrim))}`,
      `${most(up.map((each) => each.headTrim))} / ${most(up.map((each) => each.footTrim))}`,
      halfText(up[0]!.undercut),
      hinges
        ? `${hinges.count} x ${hinges.length}${hinges.grade === null ? "" : `, grade ${hinges.grade}`}`
        : "ask",
      door.hinges ?? "ask",
      furniture(hung, job)
        .map((each) => each.what.toLowerCase())
        .join("; "),
      `${clear.before === null ? dash : halfText(clear.before)} / ${halfText(clear.after)}`,
    ],
  }
}

const dash = "–"

/** What stands in place of the measures of a leaf that none are worked out for. */
function stays({ door, work }: HungDoor): string {
  if (work.hang === "stays")
    return door.leafNow ? `stays: ${door.leafNow}` : door.swingsInto ? "stays" : "no leaf"
  return "not chosen yet"
}

function totals(quantities: readonly Quantity[]): Row[] {
  const sums = new Map<string, { what: string; unit: string; gross: number }>()
  for (const each of quantities) {
    const key = `${each.what}|${each.product ?? ""}|${each.unit}`
    const held = sums.get(key) ?? { what: each.what, unit: each.unit, gross: 0 }
    sums.set(key, { ...held, gross: held.gross + each.gross })
  }
  return [...sums.values()].map(({ what, unit, gross }) => ({
    cells: [what, unit === "nr" ? String(gross) : fixed(gross, 2), unit, ""],
  }))
}
