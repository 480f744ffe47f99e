import { regionArea } from "../../kernels/polygon/measure.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import type { Region } from "../../kernels/polygon/region.ts"
import type { Mm } from "../../kernels/units.ts"
import { areaOf, type Offcut, type Stretch } from "./layout/boards.ts"
import type { CutPiece, EndLimits, EndPlan, Run } from "./layout/end-plan.ts"
import { fillRuns } from "./layout/ends.ts"
import { type Frame, frameOf, regionFromFrame, regionToFrame } from "./layout/frame.ts"
import { type GridChoice, gridChoices } from "./layout/grid.ts"
import { type PackedLength, packRun, packsHolding } from "./layout/packs.ts"
import { endLean, type Notch, notchesOf, partBetween } from "./layout/pieces.ts"
import { type Rip, ripOf, ripOfPiece, ripWidth } from "./layout/rips.ts"
import { fieldsOf, type RunShape, runsOf } from "./layout/row-runs.ts"

/** A floor to be laid in rows. */
export interface RowTask {
  /** What is covered, on the plan, gap already taken off. */
  floor: readonly Region[]
  /** Left and right end of the wall that the first row lies against, as faced from inside. */
  from: { start: Point; end: Point }
  board: { width: Mm; length: Mm; mix?: readonly PackedLength[] }
  /** Offcuts of other rooms that may be used, each with its mark and the room that opened its board. */
  hand?: readonly Offcut[]
  limits: Omit<EndLimits, "boardLength" | "boardWidth" | "mix"> & {
    /** Least width of a row along an edge. */
    leastRow: Mm
  }
}

/** One piece of board as laid. */
export interface LaidPiece extends Stretch {
  role: CutPiece["role"]
  /** Mark of the offcut it is cut from; null for a fresh board. */
  source: string | null
  /** Ends in the frame, mm from the left end of the first row's wall; length at its longer edge. */
  left: Mm
  right: Mm
  /** Width it is ripped to at its left and right end, over its whole length, before notching. */
  rip: { left: Mm; right: Mm }
  notches: Notch[]
  /** True shape on the plan. */
  shape: Region[]
  /** Covered, mm2. */
  area: number
}

/** A stretch of a row from wall to wall. */
export interface LaidRun {
  /** `4`, or `4a`, `4b` where the row is broken. */
  name: string
  left: Mm
  right: Mm
  /** How far its ends lean out of square over the row, mm: positive where the far edge reaches further right. */
  leans: { left: Mm; right: Mm }
  widths: { left: Mm; right: Mm }
  pieces: LaidPiece[]
}

/** One row. */
export interface LaidRow {
  number: number
  /** Edges in the frame, mm from the first row's wall: whole board widths apart. */
  bottom: Mm
  top: Mm
  runs: LaidRun[]
}

/** A floor laid out in rows, boards followed from the pack to the floor. */
export interface FloorLayout {
  frame: Frame
  board: RowTask["board"]
  limits: RowTask["limits"]
  /** The stretches that are filled, row by row. */
  runs: readonly Run[]
  rows: LaidRow[]
  /** Boards opened here, and the length of each by its number, mm. */
  boards: number
  lengths: Mm[]
  /** Packs opened of a mix of lengths; null where all boards are of one length. */
  packs: number | null
  /** Offcuts of other rooms cut into here, as they came. */
  brought: Offcut[]
  /** Of this room's boards; of what was brought the rest, too, with its room. */
  offcuts: Offcut[]
  cuts: number
  /** Stagger or end length that could not be kept anywhere, mm over all; 0 where every rule is kept. */
  breach: Mm
  /** mm2: covered; bought; brought from other rooms; left over as offcuts with a mark; lost to saw cuts, rips, notches, short ends. */
  areas: { laid: number; bought: number; brought: number; offcuts: number; lost: number }
  /** No plan within the rules takes fewer boards (of a mix: packs); where they equal it, they are proven fewest for these rows. */
  bound: number
  /** Least distance between end joints of neighbouring rows; null where no two meet. */
  stagger: Mm | null
  /** Shortest piece that begins or ends a jointed run; null where none is jointed. */
  shortestEnd: Mm | null
  /** Narrowest width that a run is ripped to at an end. */
  narrowest: Mm
}

/** Settings of the rows that are laid out in full, best balanced first. */
const settingsTried = 3
/** Their distance from one another, mm. */
const settingsApart: Mm = 12
/** Ratios of areas are cleared of binary noise before they are rounded up. */
const noise = 1e-9

/**
 * Lays a floor out in rows, from the first row's wall, each row left to right as one faces that wall.
 * Rows are set so that none is thinner than the least and the first and last are balanced; boards are counted piece by piece.
 * Deterministic. A good plan, proven only where it meets its `bound`.
 */
export function layRows(task: RowTask): FloorLayout {
  const frame = frameOf(task.from.start, task.from.end)
  const floor = task.floor.map((region) => regionToFrame(frame, region))
  const rows: RunShape[] = []
  for (const field of fieldsOf(floor)) {
    const setting = bestSetting(field, task)
    rows.push(...runsOf(field, setting.joint, task.board.width, (rows.at(-1)?.row ?? 0) + 1))
  }
  return layoutOf(task, frame, rows, fill(rows, task))
}

function bestSetting(floor: readonly Region[], task: RowTask): GridChoice {
  const choices = gridChoices(floor, task.board.width, task.limits.leastRow)
  const first = choices[0]!
  const tried: GridChoice[] = []
  for (const choice of choices) {
    if (choice.thin > first.thin || tried.length === settingsTried) break
    if (tried.every((other) => Math.abs(other.joint - choice.joint) >= settingsApart)) tried.push(choice)
  }
  if (tried.length === 1) return first
  const counted = tried.map((choice) => {
    const plan = fill(runsOf(floor, choice.joint, task.board.width), task, true)
    return { choice, plan }
  })
  const better = (a: EndPlan, b: EndPlan) => a.breach - b.breach || a.boards - b.boards
  return counted.reduce((best, next) => (better(next.plan, best.plan) < 0 ? next : best)).choice
}

function fill(runs: readonly Run[], task: RowTask, quick = false): EndPlan {
  const { width, length, mix } = task.board
  const limits = { ...task.limits, boardLength: length, boardWidth: width, ...(mix ? { mix } : {}) }
  return fillRuns(runs, limits, { quick, hand: task.hand ?? [] })
}

function layoutOf(task: RowTask, frame: Frame, runs: readonly RunShape[], plan: EndPlan): FloorLayout {
  const { board } = task
  const laidRuns = runs.map((run, index) => ({ run, laid: laidRun(frame, run, plan.pieces[index]!) }))
  const rows = [...new Set(runs.map((run) => run.row))].map((number): LaidRow => {
    const own = laidRuns.filter(({ run }) => run.row === number)
    const { bottom, top } = own[0]!.run
    return { number, bottom, top, runs: own.map(({ laid }) => laid) }
  })
  const pieces = laidRuns.flatMap(({ laid }) => laid.pieces)
  const laid = pieces.reduce((sum, piece) => sum + piece.area, 0)
  const bought = plan.lengths.reduce((sum, length) => sum + length * board.width, 0)
  const { brought, offcuts } = fromOtherRooms(task, plan)
  const area = (stretches: readonly Offcut[]) => stretches.reduce((sum, each) => sum + areaOf(each), 0)
  const areas = { laid, bought, brought: area(brought), offcuts: area(offcuts) }
  const unit = board.mix ? packRun(board.mix) : board.length
  return {
    frame,
    board,
    limits: task.limits,
    runs: runs.map(({ row, name, left, right, profile }) => ({ row, name, left, right, profile })),
    rows,
    boards: plan.boards,
    lengths: plan.lengths,
    packs: board.mix ? packsOf(plan.lengths, board.mix) : null,
    brought,
    offcuts,
    cuts: plan.cuts,
    breach: plan.breach,
    areas: { ...areas, lost: bought + areas.brought - laid - areas.offcuts },
    bound: Math.max(plan.bound, Math.ceil((laid - area(task.hand ?? [])) / (board.width * unit) - noise)),
    stagger: leastStagger(rows),
    shortestEnd: shortestEnd(pieces),
    narrowest: Math.min(
      board.width,
      ...laidRuns.flatMap(({ laid: { widths } }) => [widths.left, widths.right]),
    ),
  }
}

/** What was cut into of the offcuts brought, and all that is left over: of those, only what was cut into. */
function fromOtherRooms(task: RowTask, plan: EndPlan): { brought: Offcut[]; offcuts: Offcut[] } {
  const used = new Set(plan.pieces.flat().map((piece) => piece.source))
  const hand = task.hand ?? []
  return {
    brought: hand.filter((offcut) => used.has(offcut.mark)),
    offcuts: plan.offcuts.filter((offcut) => !hand.some((other) => other.mark === offcut.mark)),
  }
}

function packsOf(lengths: readonly Mm[], mix: readonly PackedLength[]): number {
  return packsHolding(
    mix.map((each) => lengths.filter((length) => length === each.length).length),
    mix,
  )
}

function laidRun(frame: Frame, run: RunShape, pieces: readonly CutPiece[]): LaidRun {
  const ripped = ripOf(run.shape, run)
  const width = (rip: Rip, x: Mm) => Math.min(run.top - run.bottom, ripWidth(rip, x))
  return {
    name: run.name,
    left: run.left,
    right: run.right,
    leans: { left: endLean(run.shape, "left"), right: endLean(run.shape, "right") },
    widths: { left: width(ripped, run.left), right: width(ripped, run.right) },
    pieces: pieces.map((piece): LaidPiece => {
      const parts = partBetween(run.shape, piece.left, piece.right)
      const rip = ripOfPiece(ripped, parts, run)
      return {
        board: piece.board,
        room: piece.room,
        of: piece.of,
        from: piece.from,
        to: piece.to,
        low: piece.low,
        high: piece.high,
        role: piece.role,
        source: piece.source,
        left: piece.left,
        right: piece.right,
        rip: { left: width(rip, piece.left), right: width(rip, piece.right) },
        notches: notchesOf(parts, rip),
        shape: parts.map((part) => regionFromFrame(frame, part)),
        area: parts.reduce((sum, part) => sum + regionArea(part), 0),
      }
    }),
  }
}

function jointsOf(row: LaidRow): Mm[] {
  return row.runs.flatMap((run) => run.pieces.slice(1).map((piece) => piece.left))
}

function leastStagger(rows: readonly LaidRow[]): Mm | null {
  let least: Mm | null = null
  rows.slice(1).forEach((row, index) => {
    for (const joint of jointsOf(row)) {
      for (const other of jointsOf(rows[index]!)) {
        const apart = Math.abs(joint - other)
        if (least === null || apart < least) least = apart
      }
    }
  })
  return least
}

function shortestEnd(pieces: readonly LaidPiece[]): Mm | null {
  const ends = pieces.filter((piece) => piece.role === "start" || piece.role === "finish")
  return ends.length === 0 ? null : Math.min(...ends.map((piece) => piece.right - piece.left))
}
