import type { Block, Row } from "../../../kernels/paper.ts"
import { fixed, mmText } from "../../../kernels/units.ts"
import type { JobFacts } from "../../trade.ts"
import { type Fitted, type HungDoor, needsSmoke } from "../hanging/hung-door.ts"
import { leafText } from "../hanging/leaf.ts"
import { furniture } from "../materials.ts"
import { halfText } from "../messages.ts"
import type { RulesRead } from "../rules-read.ts"
import { gapRecord, handText, leafChecks, workOrder } from "./door-order.ts"
import { leafDrawing } from "./elevation.ts"

/** Everything to hang one leaf from, in working order. */
export function doorBlocks(hung: HungDoor, fitted: Fitted, job: JobFacts, rules: RulesRead): Block[] {
  return [
    { kind: "heading", text: `Door ${hung.door.id}: ${hung.door.name}` },
    lead(hung, fitted),
    {
      kind: "drawing",
      drawing: leafDrawing(hung, fitted),
      caption: `Door ${hung.door.id} seen from where the knuckles show; figures from the top of the leaf as hung, mm`,
      scale: 20,
    },
    ...(fitted.lining ? [liningTable(hung, fitted)] : []),
    acrossTable(hung, fitted),
    upTable(hung, fitted),
    thresholdTable(hung, fitted),
    ironmongery(hung, fitted, job),
    workOrder(hung, fitted, rules),
    gapRecord(hung, fitted),
    leafChecks(hung, fitted),
  ]
}

function lead(hung: HungDoor, fitted: Fitted): Block {
  const { ask, door, work, leaf } = hung
  const { mass } = fitted.hinges ?? {}
  return {
    kind: "figures",
    items: [
      { label: "What we hang", value: leafText(leaf, door, work) },
      { label: "Guidance's minimum", value: ask.minimumText },
      { label: "Hand", value: handText(hung) },
      {
        label: "Leaf as hung",
        value: `${halfText(fitted.size.width)} x ${halfText(fitted.size.height)}`,
        unit: "mm",
      },
      { label: "Weight", value: mass ? fixed(mass.leaf, 0) : "not known", unit: mass ? "kg" : "" },
      {
        label: "Under the foot",
        value: halfText(fitted.up[0]!.undercut),
        unit: "mm over the highest finished floor",
      },
    ],
  }
}

function liningTable(hung: HungDoor, fitted: Fitted): Block {
  const lining = fitted.lining!
  const sides = lining.packingSides.map((each) => [
    `Width ${each.at}`,
    halfText(each.opening),
    halfText(lining.thickness),
    halfText(lining.internalWidth),
    `${halfText(each.each)} each side`,
  ])
  const heads = lining.packingHead.map((each) => [
    `Height ${each.at}`,
    halfText(each.opening),
    halfText(lining.thickness),
    halfText(lining.internalHeight),
    `${halfText(each.over)} over the head`,
  ])
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: new lining in its opening, mm (heights over the finished floor)`,
    columns: [
      { label: "Where" },
      { label: "Opening", as: "figure" },
      { label: "Lining thick", as: "figure" },
      { label: "Inside lining", as: "figure" },
      { label: "Packing", as: "figure" },
    ],
    rows: [...together(sides, "Width"), ...together(heads, "Height")].map((cells) => ({ cells })),
    note: `Rip the lining to the finished wall, ${halfText(hung.door.wall)} mm. Head laid over the legs and screwed down through. Legs stand on the finished floor.`,
  }
}

function acrossTable(hung: HungDoor, fitted: Fitted): Block {
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: widths and what comes off, mm`,
    columns: ["Where", "Opening", "Hinge gap", "Off hinge edge", "Leaf", "Off lock edge", "Lock gap"].map(
      (label, n) => (n === 0 ? { label } : { label, as: "figure" as const }),
    ),
    rows: together(
      fitted.across.map((point) => [
        point.at,
        ...[point.opening, point.hingeGap, point.hingeTrim, point.leaf, point.lockTrim, point.lockGap].map(
          halfText,
        ),
      ]),
    ).map((cells) => ({ cells })),
    note: allowed(fitted, ["hinge", "lock"]),
  }
}

function upTable(hung: HungDoor, fitted: Fitted): Block {
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: heights over the highest finished floor and what comes off, mm`,
    columns: ["Where", "Floor to head", "Head gap", "Off head", "Leaf", "Off foot", "Under foot"].map(
      (label, n) => (n === 0 ? { label } : { label, as: "figure" as const }),
    ),
    rows: together(
      fitted.up.map((point) => [
        point.at,
        ...[point.opening, point.headGap, point.headTrim, point.leaf, point.footTrim, point.undercut].map(
          halfText,
        ),
      ]),
    ).map((cells) => ({ cells })),
    note: allowed(fitted, ["head", "foot"]),
  }
}

/** Rows of measured points as one row where all figures are the same. */
function together(rows: string[][], what = ""): string[][] {
  const figures = new Set(rows.map((row) => row.slice(1).join("|")))
  if (rows.length < 2 || figures.size > 1) return rows
  return [[`${what} all points`.trim(), ...rows[0]!.slice(1)]]
}

function allowed(fitted: Fitted, edges: ("hinge" | "lock" | "head" | "foot")[]): string {
  const { trim } = fitted.leaf
  return `May come off by the leaf's data: ${edges.map((edge) => `${edge} ${halfText(trim[edge])}`).join(", ")}.`
}

function thresholdTable(hung: HungDoor, fitted: Fitted): Block {
  const { demands, clash } = fitted.threshold
  const rows: Row[] = demands.map((each) => ({
    cells: [
      each.what,
      each.least === undefined ? "" : halfText(each.least),
      each.most === undefined ? "" : halfText(each.most),
    ],
  }))
  const { rise } = hung.floors
  if (rise !== 0) {
    const way = rise > 0 ? "higher" : "lower"
    rows.push({
      cells: [`the new floor lies ${mmText(Math.abs(rise))} mm ${way} than the old; counted in`, "", ""],
    })
  }
  rows.push({
    cells: ["We leave under the foot", halfText(fitted.up[0]!.undercut), halfText(fitted.up[0]!.undercut)],
    as: "total",
  })
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: what is asked of the gap under the foot, mm`,
    columns: [{ label: "Asked by" }, { label: "At least", as: "figure" }, { label: "At most", as: "figure" }],
    rows,
    note: clash ? "Two of these cannot both be met: ask before cutting the foot." : "All can be met.",
  }
}

function ironmongery(hung: HungDoor, fitted: Fitted, job: JobFacts): Block {
  const { hinges, latch } = fitted
  const rows: string[][] = []
  if (hinges) {
    const grade = hinges.grade === null ? "ask the maker" : `grade ${hinges.grade}`
    const tops = hinges.tops.map(halfText).join(", ")
    rows.push([
      `${hinges.count} hinges ${hinges.length} mm, ${grade}`,
      `tops at ${tops} from the top of the leaf`,
    ])
    const added = hinges.mass.added.map((each) => `${each.what} +${fixed(each.percent, 0)} %`).join(", ")
    rows.push([
      `Weight on the hinges ${fixed(hinges.mass.adjusted, 1)} kg`,
      added ? `${fixed(hinges.mass.leaf, 1)} kg and ${added}` : "leaf alone",
    ])
  }
  rows.push([
    "Spindle",
    `${halfText(latch.fromTop)} from the top of the leaf (${mmText(latch.height)} over the floor), ${halfText(latch.backset)} from the lock edge`,
  ])
  for (const each of furniture(hung, job)) rows.push([each.what, placeOf(each.what)])
  for (const cut of fitted.seals) {
    rows.push([
      `${needsSmoke(hung) ? "Strip with smoke blade" : "Intumescent strip"}, ${cut.where}`,
      cut.lengths.map(halfText).join(" + "),
    ])
  }
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: ironmongery and seals`,
    columns: [
      { label: "What", width: 4 },
      { label: "Where, mm", width: 6 },
      { label: "In", as: "tick" },
    ],
    rows: rows.map((cells) => ({ cells: [...cells, ""] })),
    note:
      fitted.leaf.minutes > 0
        ? "Hinges fire-rated; pads under hinges, latch and keep where the certificate asks. Strips in lining or leaf, as tested, not both."
        : "First screw of each hinge long enough for the stud.",
  }
}

function placeOf(what: string): string {
  if (what.startsWith("Closer")) return "closes from any angle and latches; on the face the maker states"
  if (what.startsWith("Thumb-turn")) return "below the handle, turn inside, coin slot outside"
  if (what.startsWith("Seal at the foot")) return "let into the foot or planted, as its maker says"
  return "on the spindle line"
}
