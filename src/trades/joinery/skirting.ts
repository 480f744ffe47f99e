import { fixed, type Mm, mmText } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { Room, Wall } from "../../survey/room.ts"
import type { EndCut, Piece } from "../trade.ts"
import type { SetOfArchitraves } from "./architraves.ts"
import { type CornerEnd, externalEnd, internalEnd } from "./corners.ts"

/** What a room's skirting is cut from and stops at. */
export interface SkirtingTask {
  room: Room
  product: string
  thickness: Mm
  /** Longest piece to be handled: the longest stock less its trims, or what goes up the stair. */
  longest: Mm
  without: readonly number[]
  architraves: readonly SetOfArchitraves[]
  rules: Rules
}

/** One run of skirting along a wall, between corners and architraves. */
interface Run {
  wall: Wall
  from: Mm
  to: Mm
  left: CornerEnd
  right: CornerEnd
}

const square: CornerEnd = { cut: { as: "square", setting: 0 }, reach: 0 }
const stops: CornerEnd = { cut: { as: "against-architrave", setting: 0 }, reach: 0 }

/**
 * A room's skirting run by run, each wall left to right: scribed at internal corners (the left end of each wall is scribed over
 * the board before it), mitred at external ones, square against architraves, scarfed where a run is longer than can be handled.
 * @returns pieces with long points, settings and marks, in order of wall
 */
export function skirtingPieces(task: SkirtingTask): Piece[] {
  return skirtedWalls(task.room, task.without).flatMap((wall) =>
    runsOf(wall, task).flatMap((run, index) => piecesOf(run, index, task)),
  )
}

/** Length of wall that takes skirting, mm. */
export function skirtedLength(pieces: readonly Piece[]): Mm {
  return pieces.reduce((sum, piece) => sum + piece.length, 0)
}

function skirtedWalls(room: Room, without: readonly number[]): Wall[] {
  return room.walls.filter((wall) => isSkirted(wall) && !without.includes(wall.number))
}

function isSkirted(wall: Wall): boolean {
  return wall.is !== "open-edge" && wall.is !== "wardrobe"
}

function runsOf(wall: Wall, task: SkirtingTask): Run[] {
  const { room, thickness, without, architraves } = task
  const before = room.walls[(wall.number + room.walls.length - 2) % room.walls.length]!
  const after = room.walls[wall.number % room.walls.length]!
  const meets = (other: Wall) => isSkirted(other) && !without.includes(other.number)
  const leftEnd = endAt(wall.angleAtStart, thickness, { meets: meets(before), fixed: "second" })
  const rightEnd = endAt(wall.angleAtEnd, thickness, { meets: meets(after), fixed: "first" })
  const gaps = architraves.filter((set) => set.wall === wall.number).sort((a, b) => a.outerFrom - b.outerFrom)
  const runs: Run[] = []
  let from: Mm = 0
  let left = leftEnd
  for (const gap of gaps) {
    if (gap.outerFrom > from) runs.push({ wall, from, to: gap.outerFrom, left, right: stops })
    from = Math.max(from, gap.outerTo)
    left = stops
  }
  if (wall.length > from) runs.push({ wall, from, to: wall.length, left, right: rightEnd })
  return runs
}

function endAt(angle: number, thickness: Mm, at: { meets: boolean; fixed: "first" | "second" }): CornerEnd {
  if (!at.meets) return square
  if (angle > 180) return externalEnd(angle, thickness)
  return internalEnd(angle, thickness, at.fixed)
}

function piecesOf(run: Run, index: number, task: SkirtingTask): Piece[] {
  const length = run.to - run.from + run.left.reach + run.right.reach
  if (length <= 0) return []
  const parts = splitRun(length, task)
  return parts.map((part, number): Piece => {
    const left: EndCut = number === 0 ? run.left.cut : scarf(task.rules)
    const right: EndCut = number === parts.length - 1 ? run.right.cut : scarf(task.rules)
    const shorter = part - shortening(run, task.thickness)
    return {
      mark: `${task.room.id}-${run.wall.number}-S${index + 1}${parts.length > 1 ? "ab".charAt(number) || String(number) : ""}`,
      trade: "joinery",
      room: task.room.id,
      wall: run.wall.number,
      product: task.product,
      what: `skirting, wall ${run.wall.number}${parts.length > 1 ? `, part ${number + 1} of ${parts.length}` : ""}`,
      length: Math.round(part * 10) / 10,
      shortPoint: shorter < part ? Math.round(shorter * 10) / 10 : undefined,
      left,
      right,
      mayBeJointed: false,
    }
  })
}

/** How much shorter the back of an externally mitred piece is than its face. */
function shortening(run: Run, _thickness: Mm): Mm {
  return Math.max(0, run.left.reach) + Math.max(0, run.right.reach)
}

function scarf(rules: Rules): EndCut {
  return { as: "scarf", setting: rules.value("joinery-scarf-setting") }
}

/** A run cut into as few parts as can be handled; each joint takes the board's thickness at a 45 degree scarf; none near a corner. */
function splitRun(length: Mm, { longest, thickness, rules }: SkirtingTask): Mm[] {
  if (length <= longest) return [length]
  const overlap = thickness * Math.tan((rules.value("joinery-scarf-setting") * Math.PI) / 180)
  const count = Math.ceil((length - overlap) / (longest - overlap))
  const total = length + overlap * (count - 1)
  const least = rules.value("joinery-scarf-corner")
  const rest = total - longest * (count - 1)
  if (rest >= least) return [...Array.from({ length: count - 1 }, () => longest), rest]
  const shared = (longest + rest) / 2
  return [...Array.from({ length: count - 2 }, () => longest), shared, shared]
}

/** A skirting run in words for the workings. */
export function runText(pieces: readonly Piece[]): string {
  return `${pieces.length} pieces, ${fixed(skirtedLength(pieces) / 1000, 2)} m; longest ${mmText(Math.max(0, ...pieces.map((piece) => piece.length)))}`
}
