import { fixed, type Mm, mmText, roundHalfUp } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { Room } from "../../survey/room.ts"
import type { EndCut, Piece } from "../trade.ts"
import { jointsOf, partsOf } from "./joints.ts"
import { type Run, runsOfRoom, type Stop } from "./runs.ts"

/** What a room's skirting is cut from and stops at. */
export interface SkirtingTask {
  room: Room
  product: string
  thickness: Mm
  /** Longest piece to be handled: the longest stock less its trims, or what goes up the stair. */
  longest: Mm
  without: readonly number[]
  architraves: readonly Stop[]
  rules: Rules
}

/** Letters of the parts of a jointed run. */
const partLetters = "abcdefgh"

/**
 * A room's skirting run by run, each wall left to right: scribed at internal corners (the left end of each wall is scribed over
 * the board before it), mitred at external ones, square against architraves, returned at an open edge, scarfed over a fixing where
 * a run is longer than can be handled.
 * @returns pieces with long and short points, settings and marks, in order of wall; tenths of a millimetre
 */
export function skirtingPieces(task: SkirtingTask): Piece[] {
  const { runs } = skirtingRuns(task)
  return runs.flatMap((run) =>
    piecesOf(run, 1 + runs.filter((each) => each.wall === run.wall).indexOf(run), task),
  )
}

/** The stretches of wall that bear skirting, and those too short for a piece. */
export interface SkirtingRuns {
  /** In the order in which their pieces are numbered on each wall. */
  runs: Run[]
  /** The wall's number, and the length that a piece would have, mm. */
  slivers: { wall: number; length: Mm }[]
}

/** Where a room's skirting runs, and where next to nothing is left for it. */
export function skirtingRuns(task: SkirtingTask): SkirtingRuns {
  const scribed = task.rules.value("joinery-scribe-widest")
  const least = task.rules.value("joinery-skirting-least")
  const all = runsOfRoom({ ...task, scribed, stops: task.architraves })
  return {
    runs: all.filter((run) => longPoints(run) >= least),
    slivers: all
      .filter((run) => longPoints(run) < least)
      .map((run) => ({ wall: run.wall.number, length: tenths(Math.max(0, longPoints(run))) })),
  }
}

/** Length of a run between its long points, mm; below 0 where the boards beside it fill it. */
function longPoints({ from, to, left, right }: Run): Mm {
  return to + right.reach - (from - left.reach)
}

/** Length of wall that takes skirting, mm. */
export function skirtedLength(pieces: readonly Piece[]): Mm {
  return pieces.reduce((sum, piece) => sum + piece.length, 0)
}

/** A skirting run in words for the workings. */
export function runText(pieces: readonly Piece[]): string {
  return `${pieces.length} pieces, ${fixed(skirtedLength(pieces) / 1000, 2)} m; longest ${mmText(Math.max(0, ...pieces.map((piece) => piece.length)))}`
}

function piecesOf(run: Run, number: number, task: SkirtingTask): Piece[] {
  const { rules, thickness, longest, room, product } = task
  const setting = rules.value("joinery-scarf-setting")
  const overlap = thickness * Math.tan((setting * Math.PI) / 180)
  const ends = { from: run.from - run.left.reach, to: run.to + run.right.reach, overlap }
  const joints = jointsOf({
    ...ends,
    longest,
    spacing: rules.value("joinery-skirting-fixing"),
    clear: rules.value("joinery-scarf-corner"),
  })
  const parts = partsOf(ends, joints.at)
  const scarf: EndCut = { as: "scarf", setting }
  const wall = run.wall.number
  return parts.map((part, index): Piece => {
    const isFirst = index === 0
    const isLast = index === parts.length - 1
    const shorter = shortening({
      left: isFirst ? run.left.short : null,
      right: isLast ? run.right.short : null,
      overlap,
    })
    const length = tenths(part)
    return {
      mark: `${room.id}-${wall}-S${number}${parts.length > 1 ? partLetters.charAt(index) : ""}`,
      trade: "joinery",
      room: room.id,
      wall,
      product,
      what: parts.length > 1 ? partText({ wall, index, of: parts.length, joints }) : `skirting, wall ${wall}`,
      length,
      shortPoint: shorter > 0 ? tenths(part - shorter) : undefined,
      left: isFirst ? run.left.cut : scarf,
      right: isLast ? run.right.cut : scarf,
      mayBeJointed: false,
    }
  })
}

interface Part {
  wall: number
  index: number
  of: number
  joints: { at: readonly Mm[]; overFixing: boolean }
}

function partText({ wall, index, of, joints }: Part): string {
  const at = joints.at[index] ?? joints.at[index - 1]!
  const block = joints.overFixing ? "" : " over a block"
  return `skirting, wall ${wall}, part ${index + 1} of ${of}; joint${block} at ${mmText(at)}`
}

/**
 * How much shorter the shorter face of a part is than its long points. At a scarf the right-hand board laps over the face of the
 * left-hand one: the left one is long at the back, the right one at the face. `null` stands for a scarf.
 */
function shortening({ left, right, overlap }: { left: Mm | null; right: Mm | null; overlap: Mm }): Mm {
  if (right === null) return left === null ? overlap : Math.max(left, overlap)
  return (left ?? overlap) + right
}

function tenths(length: Mm): Mm {
  return roundHalfUp(length, 1)
}
