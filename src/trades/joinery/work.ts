import type { Mm } from "../../kernels/units.ts"
import type { Piece, Quantity, Task, Work } from "../trade.ts"
import { noWork } from "../trade.ts"
import { architravePieces, architraveSets, type SetOfArchitraves } from "./architraves.ts"
import { joineryCautions } from "./cautions.ts"
import { joineryFindings } from "./findings.ts"
import type { JoineryInputs } from "./inputs.ts"
import { keptLinings } from "./kept-linings.ts"
import { madePieces, nosingPieces, thresholdPieces, trimPieces } from "./parts.ts"
import { outToPlinths, plinthPieces, plinthQuantity, plinthSize } from "./plinths.ts"
import { joineryQuantities } from "./quantities.ts"
import { type SkirtingRuns, skirtedLength, skirtingPieces, skirtingRuns } from "./skirting.ts"
import { stairPieces } from "./stairs/pieces.ts"
import { openEdges, stairCautions } from "./stairs/steps.ts"
import { joinerySteps } from "./steps.ts"
import { type ThresholdBar, thresholdBars } from "./thresholds.ts"

type JoineryTask = Task<JoineryInputs>
/** A product sold in lengths, as far as joinery minds it. */
type LengthGood = NonNullable<ReturnType<typeof product>>

/** Everything a room's joinery is cut into. */
export interface RoomPieces extends SkirtingRuns {
  skirting: LengthGood | undefined
  architrave: LengthGood | undefined
  sets: SetOfArchitraves[]
  bars: ThresholdBar[]
  skirtings: Piece[]
  architraves: Piece[]
  plinths: Piece[]
  trims: Piece[]
  made: Piece[]
  thresholds: Piece[]
  nosings: Piece[]
  stairs: Piece[]
}

/**
 * Skirting, architraves, trims, thresholds, nosings, stair parts and what is made on site in a room, as pieces to saw, with
 * quantities, steps, cautions and findings. Pieces that are sawn already are left out of `pieces` and named in `results.sawn`.
 */
export function joineryWork(task: JoineryTask): Work {
  const cut = roomPieces(task)
  const all = allOf(cut)
  const edges = openEdges(task)
  const goods = all.flatMap((piece) => task.job.product(piece.product, "length") ?? [])
  return {
    ...noWork(),
    pieces: all.filter((piece) => !task.input.sawn.includes(piece.mark)),
    quantities: quantities(task, cut),
    steps: joinerySteps({ task, ...cut }),
    cautions: [
      ...joineryCautions(goods, { adhesive: cut.skirtings.length + cut.nosings.length > 0 }),
      ...stairCautions(edges),
    ],
    findings: joineryFindings({ task, ...cut, marks: all.map((piece) => piece.mark) }),
    rests: all.length > 0 ? rests(cut, task) : [],
    results: {
      skirtingRun: skirtedLength(cut.skirtings),
      architraveSets: cut.sets.map(({ door, wall, inside }) => ({ door, wall, ...inside })),
      thresholds: cut.bars,
      keptLinings: keptLinings(task),
      stairs: task.input.stairs,
      sawn: all.filter((piece) => task.input.sawn.includes(piece.mark)).map((piece) => piece.mark),
    },
  }
}

/** Every piece of a room by what it is for, whether it is sawn already or not. */
export function roomPieces(task: JoineryTask): RoomPieces {
  const { room, job, input } = task
  const skirting = input.skirting === false ? undefined : product(task, input.skirting, "skirting")
  const architrave = input.architrave === false ? undefined : product(task, input.architrave, "architrave")
  const sets = architrave ? architraveSets({ room, width: architrave.width, job }) : []
  const block =
    input.plinths && skirting && architrave ? plinthSize(skirting, architrave, job.rules) : undefined
  const stops = block && architrave ? outToPlinths(sets, block, architrave) : sets
  const bars = thresholdBars(task)
  const skirted = skirting && {
    room,
    product: skirting.id,
    thickness: skirting.thickness,
    longest: longestPiece(skirting, task),
    without: input.without,
    architraves: stops,
    rules: job.rules,
  }
  return {
    skirting,
    architrave,
    sets,
    bars,
    skirtings: skirted ? skirtingPieces(skirted) : [],
    ...(skirted ? skirtingRuns(skirted) : { runs: [], slivers: [] }),
    architraves: architrave
      ? architravePieces(sets, {
          room,
          product: architrave.id,
          width: architrave.width,
          job,
          ...(block && { plinth: block.height }),
        })
      : [],
    plinths: block
      ? plinthPieces(sets, {
          room: room.id,
          product: product(task, undefined, "plinth")?.id,
          height: block.height,
        })
      : [],
    trims: trimPieces(task),
    made: madePieces(task),
    thresholds: thresholdPieces(bars, room.id),
    nosings: nosingPieces(task),
    stairs: stairPieces(input.stairs, room.id, job),
  }
}

/** The pieces of a room in the order of its sheet: by wall where they have one. */
export function allOf(cut: RoomPieces): Piece[] {
  return [
    ...cut.skirtings,
    ...cut.architraves,
    ...cut.plinths,
    ...cut.trims,
    ...cut.made,
    ...cut.thresholds,
    ...cut.nosings,
    ...cut.stairs,
  ]
}

function product(task: JoineryTask, id: string | undefined, use: string) {
  return task.job.product(id ?? task.job.chosen(use), "length")
}

function longestPiece(good: LengthGood, { job }: JoineryTask): Mm {
  const stock = Math.max(...good.lengths.map((each) => each.length)) - 2 * job.rules.value("saw-end-trim")
  return Math.min(stock, job.carry.longest)
}

function quantities(task: JoineryTask, cut: RoomPieces): Quantity[] {
  const { room, job, input } = task
  const groups = [
    { what: "Skirting", pieces: cut.skirtings },
    { what: "Architraves", pieces: cut.architraves },
    { what: "Plinth blocks", pieces: cut.plinths },
    { what: "Trims", pieces: cut.trims },
    { what: "Fitted parts", pieces: cut.made },
    { what: "Threshold bars", pieces: cut.thresholds },
    { what: "Nosings", pieces: cut.nosings },
    { what: "Stair parts", pieces: cut.stairs },
  ]
  const list = joineryQuantities(task, groups, cut.skirtings)
  const { skirting, architrave, sets } = cut
  if (!input.plinths || cut.plinths.length > 0 || !skirting || !architrave || sets.length === 0) return list
  return [...list, plinthQuantity(room.id, sets.length, plinthSize(skirting, architrave, job.rules))]
}

function rests(cut: RoomPieces, task: JoineryTask): string[] {
  return [
    "joinery-architrave-margin",
    ...(cut.skirtings.length > 0
      ? [
          "joinery-scarf-corner",
          "joinery-scarf-setting",
          "joinery-skirting-fixing",
          "joinery-skirting-least",
          "joinery-skirting-rate",
        ]
      : []),
    ...(cut.sets.length > 0 ? ["joinery-architrave-fixing", "joinery-architrave-hours"] : []),
    ...(task.input.plinths ? ["joinery-plinth-wider", "joinery-plinth-higher"] : []),
    ...(cut.made.length > 0 ? ["joinery-made-hours", "joinery-frame-centres"] : []),
    ...(cut.bars.length > 0 ? ["joinery-threshold-hours"] : []),
    ...(keptLinings(task).length > 0 ? ["floor-undercut-allowance"] : []),
    "saw-kerf",
  ]
}
