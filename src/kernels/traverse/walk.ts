import { turnsOf } from "../polygon/angles.ts"
import { cosSin, distance, type Point } from "../polygon/point.ts"
import type { Degrees, Mm } from "../units.ts"
import { compassRule, type Leg } from "./compass-rule.ts"
import type { Check, Misclosure, Run } from "./survey.ts"

/** The legs of a walk: run 0 heads along x, each turn to the right lessens the heading. */
export function legsOf(runs: readonly Run[]): Leg[] {
  let heading = 0
  return runs.map(({ length, turn }) => {
    const leg = { length, heading }
    heading -= turn
    return leg
  })
}

/** The corners of a walk as read, from the origin: where each run starts; the last run may miss the origin. */
export function openWalk(runs: readonly Run[]): Point[] {
  let at = { x: 0, y: 0 }
  return legsOf(runs).map(({ length, heading }) => {
    const corner = at
    const { cos, sin } = cosSin(heading)
    at = { x: at.x + length * cos, y: at.y + length * sin }
    return corner
  })
}

/** By how much a walk as read misses its start, and a full circle of turns. */
export function misclosureOf(runs: readonly Run[]): Misclosure {
  const { misclosure } = compassRule(legsOf(runs))
  return { ...misclosure, turn: runs.reduce((sum, run) => sum + run.turn, -360) }
}

/** A walk forced shut by the compass rule, laid with run 0 along x: with measured turns a result, else only a first guess. */
export function shutWalk(runs: readonly Run[]): Point[] {
  const spread = misclosureOf(runs).turn / runs.length
  const balanced = runs.map((run) => ({ ...run, turn: run.turn - spread }))
  let at = { x: 0, y: 0 }
  const corners = compassRule(legsOf(balanced)).legs.map(({ x, y }) => {
    const corner = at
    at = { x: at.x + x, y: at.y + y }
    return corner
  })
  return laid(corners)
}

/** Corners turned about corner 0 so that run 0 lies along x. */
export function laid(corners: readonly Point[]): Point[] {
  const next = corners[1]!
  const first = corners[0]!
  const length = distance(first, next)
  if (length === 0) return [...corners]
  const cos = (next.x - first.x) / length
  const sin = (next.y - first.y) / length
  return corners.map(({ x, y }) => {
    const dx = x - first.x
    const dy = y - first.y
    return { x: dx * cos + dy * sin, y: dy * cos - dx * sin }
  })
}

/** Lengths of the runs of a closed outline. */
export function runLengths(corners: readonly Point[]): Mm[] {
  return corners.map((corner, index) => distance(corner, corners[(index + 1) % corners.length]!))
}

/** Turn at the end of each run of a closed outline. */
export function runTurns(corners: readonly Point[]): Degrees[] {
  const turns = turnsOf(corners)
  return turns.map((_, index) => turns[(index + 1) % turns.length]!)
}

/** Length of a check in an outline. */
export function checkLength(corners: readonly Point[], check: Pick<Check, "from" | "to">): Mm {
  return distance(corners[check.from]!, corners[check.to]!)
}
