import type { Block, Column } from "../../../kernels/paper.ts"
import { fixed, mmText } from "../../../kernels/units.ts"
import type { JobFacts, Piece } from "../../trade.ts"
import { liningFixings } from "../hanging/fixings.ts"
import { type Fitted, type HungDoor, liningOf, makesLining, stopOf } from "../hanging/hung-door.ts"
import { leafText } from "../hanging/leaf.ts"
import type { ThresholdDemand } from "../hanging/threshold.ts"
import { liningPieces } from "../materials.ts"
import { halfText } from "../messages.ts"
import type { RulesRead } from "../rules-read.ts"
import { gapRecord, handText, leafChecks, workOrder } from "./door-order.ts"
import { partsTable } from "./door-parts.ts"
import { leafDrawing } from "./elevation.ts"

/** Everything to hang one leaf from, in working order. */
export function doorBlocks(hung: HungDoor, fitted: Fitted, job: JobFacts, rules: RulesRead): Block[] {
  return [
    lead(hung, fitted),
    {
      kind: "drawing",
      drawing: leafDrawing(hung, fitted),
      caption: `Door ${hung.door.id}: ${handText(hung)}; figures from the top of the leaf as hung, mm`,
      scale: drawingScale,
    },
    fitTable(hung, fitted, job, rules),
    partsTable(hung, fitted, job, rules),
    workOrder(hung, fitted, rules),
    gapRecord(hung, fitted),
    leafChecks(hung, fitted, rules),
  ]
}

/** Scale of the elevation: a leaf of two metres comes to 80 mm. */
const drawingScale = 50

function lead(hung: HungDoor, fitted: Fitted): Block {
  const { ask, door, work, leaf } = hung
  const { width, height } = fitted.size
  const mass = fitted.hinges ? `, ${fixed(fitted.hinges.mass.leaf, 0)} kg` : ", weight not known"
  return {
    kind: "text",
    as: "plain",
    paragraphs: [
      `We hang: ${leafText(leaf, door, work)}; as hung ${halfText(width)} × ${halfText(height)}${mass}.`,
      `Guidance's minimum: ${ask.minimumText}. ${ask.why} ${ask.clause}.`,
      openingText(hung),
      thresholdText(hung, fitted),
    ],
  }
}

const liningWords = {
  new: "new lining",
  replace: "lining replaced",
  keep: "lining stays",
  none: "no lining",
} as const
const takenTo = { plaster: "plaster faces", brick: "bricks", stud: "studs", lining: "linings" } as const
const datums = {
  deck: "bare deck",
  "old-floor": "old floor",
  "finished-floor": "finished floor",
  ground: "ground",
} as const

/** What the opening is: lining, rebate, wall, plumb, twist, and what it was taped to and from. */
function openingText({ door }: HungDoor): string {
  const parts = [
    liningWords[door.lining],
    ...(door.lining === "keep" && door.rebate ? [`rebate ${halfText(door.rebate)} deep`] : []),
    `wall ${halfText(door.wall)} thick`,
    door.plumb > 0 ? `${halfText(door.plumb)} out of plumb` : "plumb",
    door.twist === undefined ? "twist not taken" : `twist ${halfText(door.twist)}`,
    `taped: ${takenTo[door.lengthsTo]}, from ${datums[door.heightsFrom]}`,
  ]
  return `Opening: ${parts.join("; ")}.`
}

/** All that is asked of the gap under the foot, together, and what is left there. */
function thresholdText(hung: HungDoor, { threshold, up }: Fitted): string {
  const { own, other, rise } = hung.floors
  const sides =
    other === null || own === other
      ? []
      : [`floor here ${mmText(Math.abs(own - other))} ${own > other ? "over" : "under"} that beyond`]
  const risen =
    rise === 0 ? [] : [`new floor ${mmText(Math.abs(rise))} ${rise > 0 ? "over" : "under"} the old`]
  const counted = [...sides, ...risen].join(", ")
  const end = threshold.clash
    ? "Two of these cannot both be met: ask before cutting the foot."
    : "All can be met."
  return `Under the foot ${halfText(up[0]!.undercut)} over the higher floor${counted ? ` (${counted}: counted in)` : ""}. Asked: ${threshold.demands.map(demandText).join("; ")}. ${end}`
}

function demandText({ what, least, most }: ThresholdDemand): string {
  const figures = [
    ...(least === undefined ? [] : [`at least ${halfText(least)}`]),
    ...(most === undefined ? [] : [`at most ${halfText(most)}`]),
  ]
  return figures.length > 0 ? `${figures.join(", ")} (${what})` : what
}

/** Opening, lining, gaps, what comes off and the leaf, one row a direction, each figure at its measured points. */
function fitTable(hung: HungDoor, fitted: Fitted, job: JobFacts, rules: RulesRead): Block {
  const { lining, across, up, leaf } = fitted
  const { trim } = leaf
  const off = (values: number[], most: number) => `${atPoints(values)} of ${halfText(most)}`
  const figure = (label: string, width: number): Column => ({ label, as: "figure", width })
  const width = [
    ...(lining
      ? [
          atPoints(lining.packingSides.map((each) => each.opening)),
          atPoints(lining.packingSides.map((each) => each.each)),
        ]
      : []),
    atPoints(across.map((each) => each.opening)),
    atPoints(across.map((each) => each.hingeGap)),
    off(
      across.map((each) => each.hingeTrim),
      trim.hinge,
    ),
    atPoints(across.map((each) => each.leaf)),
    off(
      across.map((each) => each.lockTrim),
      trim.lock,
    ),
    atPoints(across.map((each) => each.lockGap)),
  ]
  const height = [
    ...(lining
      ? [
          atPoints(lining.packingHead.map((each) => each.opening)),
          atPoints(lining.packingHead.map((each) => each.over)),
        ]
      : []),
    atPoints(up.map((each) => each.opening)),
    atPoints(up.map((each) => each.headGap)),
    off(
      up.map((each) => each.headTrim),
      trim.head,
    ),
    atPoints(up.map((each) => each.leaf)),
    off(
      up.map((each) => each.footTrim),
      trim.foot,
    ),
    atPoints(up.map((each) => each.undercut)),
  ]
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: opening, gaps and what comes off`,
    columns: [
      { label: "mm", width: 16 },
      ...(lining ? [figure("Opening", 43), figure("Packing each side, over head", 27)] : []),
      figure(lining ? "Inside lining" : "Inside lining, floor to head", lining ? 16 : 38),
      figure("Gap hinge, head", 20),
      figure("Off hinge, head", 20),
      figure("Leaf", lining ? 14 : 34),
      figure("Off lock, foot", lining ? 20 : 32),
      figure("Gap lock, foot", lining ? 20 : 21),
    ],
    rows: [{ cells: ["Width", ...width] }, { cells: ["Height", ...height] }],
    note: `Three figures: top / middle / bottom, left / middle / right. Off: of the most its data allow.${lining ? ` ${liningText(hung, fitted, job, rules)}` : ""}`,
  }
}

/** Figures at the measured points: one where all are the same. */
function atPoints(values: readonly number[]): string {
  const texts = values.map(halfText)
  return new Set(texts).size === 1 ? texts[0]! : texts.join(" / ")
}

/** Pieces of a new lining with their lengths, how it stands and where it is fixed. */
function liningText(hung: HungDoor, fitted: Fitted, job: JobFacts, rules: RulesRead): string {
  const lining = fitted.lining!
  const timber = liningOf(hung.work, job)
  const stop = stopOf(hung.work, job)
  const { places, screw } = liningFixings(
    {
      height: lining.internalHeight,
      thickness: lining.thickness,
      packing: Math.max(...lining.packingSides.map((each) => each.each)),
    },
    {
      end: rules.value("door-lining-fixing-end"),
      centres: rules.value("door-lining-fixing-centres"),
      hold: rules.value("door-screw-hold"),
    },
  )
  const cut = cutText(liningPieces(hung, job))
  const rip =
    makesLining(hung.door) && timber && timber.width > hung.door.wall
      ? `, ripped to the finished wall, ${halfText(hung.door.wall)}`
      : ""
  const planted = stop ? `; stop ${halfText(stop.thickness)} × ${halfText(stop.width)}` : ""
  return `Lining ${halfText(lining.thickness)} thick${rip}${planted}. Cut: ${cut}; legs on the deck, head over them. Packers, fixings from under the head ${places.join(", ")}; screws at least ${screw}.`
}

/** Pieces of one length together: `legs L1, L2 2013`. */
function cutText(pieces: readonly Piece[]): string {
  const groups = new Map<string, Piece[]>()
  for (const piece of pieces) {
    const name = piece.what.replace(/^Door [^:]*: /, "").replace(/,.*$/, "")
    const key = `${name}|${piece.length}`
    groups.set(key, [...(groups.get(key) ?? []), piece])
  }
  return [...groups]
    .map(([key, same]) => {
      const marks = same.map((piece) => piece.mark.split("-").at(-1)).join(", ")
      return `${key.split("|")[0]} ${marks} ${halfText(same[0]!.length)}`
    })
    .join("; ")
}
