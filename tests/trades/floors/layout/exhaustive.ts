import type { EndLimits, Run } from "../../../../src/trades/floors/layout/end-plan.ts"
import { seeded } from "../generated.ts"

/** One piece to be cut, by the factory end it must keep, and the lanes of the board it takes up: along the groove, along the tongue. */
interface Wanted {
  length: number
  needs: "left" | "right" | "none"
  lanes: readonly (0 | 1)[]
}

/** What a run takes across its boards: full width, or a strip with the groove or with the tongue. */
export interface Ripped {
  run: Run
  strip: { keeps: "groove" | "tongue"; width: number } | null
}

/**
 * Fewest boards for a few runs, by trying every start on a grid and every way to share boards; infinite if no start keeps the rules.
 * Exact where all lengths, the kerf and the limits are whole steps: starts then differ only by whole steps from a best plan.
 */
export function fewestBoards(rows: readonly Ripped[], limits: EndLimits, step: number): number {
  let best = Number.POSITIVE_INFINITY
  const visit = (index: number, before: readonly number[], wanted: Wanted[], wholes: number): void => {
    if (wholes >= best) return
    const row = rows[index]
    if (!row) {
      best = Math.min(best, wholes + fewestForPieces(wanted, limits, best - wholes))
      return
    }
    const { run } = row
    const lanes = lanesOf(row, rows, limits)
    const length = run.right - run.left
    if (length <= limits.boardLength)
      visit(index + 1, [], [...wanted, { length, needs: "none", lanes }], wholes)
    for (let start = limits.leastEnd; start <= limits.boardLength && start < length; start += step) {
      const joints = [run.left + start]
      while (run.right - joints.at(-1)! > limits.boardLength) joints.push(joints.at(-1)! + limits.boardLength)
      const finish = run.right - joints.at(-1)!
      if (finish < limits.leastEnd) continue
      if (joints.some((a) => before.some((b) => Math.abs(a - b) < limits.stagger))) continue
      const pieces: Wanted[] = [
        { length: start, needs: "right", lanes },
        { length: finish, needs: "left", lanes },
      ]
      const between = Array.from(
        { length: joints.length - 1 },
        (): Wanted => ({ length: limits.boardLength, needs: "none", lanes }),
      )
      if (lanes.length === 2) visit(index + 1, joints, [...wanted, ...pieces], wholes + between.length)
      else visit(index + 1, joints, [...wanted, ...pieces, ...between], wholes)
    }
  }
  visit(0, [], [], 0)
  return best
}

/** A strip takes one lane if any strip of the other kind is narrow enough to lie beside it in one board; else the whole board. */
function lanesOf(row: Ripped, rows: readonly Ripped[], limits: EndLimits): readonly (0 | 1)[] {
  const { strip } = row
  if (!strip) return [0, 1]
  const others = rows.filter((other) => other.strip && other.strip.keeps !== strip.keeps)
  const fits = others.some((other) => other.strip!.width + limits.kerf + strip.width <= limits.boardWidth)
  return fits ? [strip.keeps === "groove" ? 0 : 1] : [0, 1]
}

/** One lane of a board: length still free, and the factory ends already given away. */
interface Lane {
  room: number
  left: boolean
  right: boolean
}

/** Fewest boards that give all pieces: in each lane at most one that needs the left end, one that needs the right, others between. */
function fewestForPieces(wanted: readonly Wanted[], limits: EndLimits, most: number): number {
  const { boardLength, kerf } = limits
  const pieces = [...wanted].sort((a, b) => b.length - a.length || b.lanes.length - a.lanes.length)
  const boards: [Lane, Lane][] = []
  let best = most
  const takes = (lane: Lane, { length, needs }: Wanted) =>
    lane.room - length >= 0 && !(needs === "left" && lane.left) && !(needs === "right" && lane.right)
  const put = (lane: Lane, { length, needs }: Wanted) => {
    lane.room -= length + kerf
    lane.left ||= needs === "left" || length === boardLength
    lane.right ||= needs === "right" || length === boardLength
  }
  const place = (index: number): void => {
    if (boards.length >= best) return
    const piece = pieces[index]
    if (!piece) {
      best = boards.length
      return
    }
    for (const board of boards) {
      const lanes = piece.lanes.map((lane) => board[lane])
      if (!lanes.every((lane) => takes(lane, piece))) continue
      const before = lanes.map((lane) => ({ ...lane }))
      for (const lane of lanes) put(lane, piece)
      place(index + 1)
      lanes.forEach((lane, which) => {
        Object.assign(lane, before[which])
      })
    }
    const fresh = (): Lane => ({ room: boardLength, left: false, right: false })
    const board: [Lane, Lane] = [fresh(), fresh()]
    for (const lane of piece.lanes) put(board[lane], piece)
    boards.push(board)
    place(index + 1)
    boards.pop()
  }
  place(0)
  return best
}

/** A row of full-width boards from 0 to `right`. */
export const plainRun = (row: number, right: number): Run => ({
  row,
  name: String(row),
  left: 0,
  right,
  profile: null,
})

/** A row that is ripped: keeping its groove (a last row) or its tongue (a first row). */
export const rippedRun = (
  row: number,
  right: number,
  strip: { keeps: "groove" | "tongue"; width: number },
  board = 189,
): Run => {
  const [low, high] = strip.keeps === "groove" ? [0, strip.width] : [board - strip.width, board]
  return { ...plainRun(row, right), profile: [{ from: 0, to: right, low: [low, low], high: [high, high] }] }
}

/** A few rows drawn at random on a grid of 50 mm, a third of the floors with a ripped first and last row. */
export function smallFloor(seed: number): { rows: Ripped[]; small: EndLimits } {
  const random = seeded(seed * 7)
  const kerf = random() < 0.5 ? 0 : 50
  const small = { boardLength: 1000, boardWidth: 400, kerf, leastEnd: 200, stagger: 200 }
  const length = () => 300 + 50 * Math.floor(random() * 46)
  const count = 2 + Math.floor(random() * 2.2)
  const usual = length()
  const withRips = seed % 3 === 0
  const width = () => 100 + 50 * Math.floor(random() * 5)
  const rows = Array.from({ length: count }, (_, index): Ripped => {
    const right = random() < 0.6 ? usual : length()
    const keeps = index === 0 ? "tongue" : index === count - 1 ? "groove" : null
    if (!withRips || !keeps) return { run: plainRun(index + 1, right), strip: null }
    const strip = { keeps, width: width() } as const
    return { run: rippedRun(index + 1, right, strip, small.boardWidth), strip }
  })
  return { rows, small }
}
