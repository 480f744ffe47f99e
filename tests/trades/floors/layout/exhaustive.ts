import type { EndLimits, Run } from "../../../../src/trades/floors/layout/ends.ts"

/** One piece to be cut, by the factory ends it must keep. */
interface Wanted {
  length: number
  needs: "left" | "right" | "none"
}

/**
 * Fewest boards for a few runs, by trying every start on a grid and every way to share boards; infinite if no start keeps the rules.
 * Exact where all lengths, the kerf and the limits are whole steps: starts then differ only by whole steps from a best plan.
 */
export function fewestBoards(runs: readonly Run[], limits: EndLimits, step: number): number {
  let best = Number.POSITIVE_INFINITY
  const visit = (index: number, before: readonly number[], wanted: Wanted[], wholes: number): void => {
    if (wholes >= best) return
    const run = runs[index]
    if (!run) {
      best = Math.min(best, wholes + fewestForPieces(wanted, limits, best - wholes))
      return
    }
    const length = run.right - run.left
    if (length <= limits.boardLength) visit(index + 1, [], [...wanted, { length, needs: "none" }], wholes)
    for (let start = limits.leastEnd; start <= limits.boardLength && start < length; start += step) {
      const joints = [run.left + start]
      while (run.right - joints.at(-1)! > limits.boardLength) joints.push(joints.at(-1)! + limits.boardLength)
      const finish = run.right - joints.at(-1)!
      if (finish < limits.leastEnd) continue
      if (joints.some((a) => before.some((b) => Math.abs(a - b) < limits.stagger))) continue
      const pieces: Wanted[] = [
        { length: start, needs: "right" },
        { length: finish, needs: "left" },
      ]
      visit(index + 1, joints, [...wanted, ...pieces], wholes + joints.length - 1)
    }
  }
  visit(0, [], [], 0)
  return best
}

/** Fewest boards that give all pieces: at most one that needs the left end, one that needs the right, others between. */
function fewestForPieces(wanted: readonly Wanted[], limits: EndLimits, most: number): number {
  const pieces = [...wanted].sort((a, b) => b.length - a.length)
  const boards: { room: number; left: boolean; right: boolean; pieces: number }[] = []
  let best = most
  const place = (index: number): void => {
    if (boards.length >= best) return
    const piece = pieces[index]
    if (!piece) {
      best = boards.length
      return
    }
    for (const board of boards) {
      const room = board.room - limits.kerf - piece.length
      if (room < 0 || (piece.needs === "left" && board.left) || (piece.needs === "right" && board.right))
        continue
      const kept = { ...board }
      board.room = room
      board.pieces++
      if (piece.needs === "left") board.left = true
      if (piece.needs === "right") board.right = true
      place(index + 1)
      Object.assign(board, kept)
    }
    boards.push({
      room: limits.boardLength - piece.length,
      left: piece.needs === "left" || piece.length === limits.boardLength,
      right: piece.needs === "right" || piece.length === limits.boardLength,
      pieces: 1,
    })
    place(index + 1)
    boards.pop()
  }
  place(0)
  return best
}
