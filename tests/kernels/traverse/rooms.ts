import { distance, type Point } from "../../../src/kernels/polygon/point.ts"
import { swappedDigits } from "../../../src/kernels/traverse/mends.ts"
import { solveOutline } from "../../../src/kernels/traverse/solve-outline.ts"
import type { Check, MeasurementRef, OutlineSurvey, Run } from "../../../src/kernels/traverse/survey.ts"
import { whole } from "../polygon/outlines.ts"

/** What a tape and an assumed square corner are trusted to. */
export const tolerances = { length: 3, assumedTurn: 2, measuredTurn: 0.5 }
/** Taping errors of the generated surveys stay within this, mm, before reading to the whole mm. */
const tapingError = 2

/** A room as it truly is, nearly square at its corners, and as taped with no misread. */
export interface TapedRoom {
  corners: Point[]
  survey: OutlineSurvey
}

/**
 * A generated room of four, six or eight walls, taped with small errors, with the checks that fix it and so many more.
 * @param spare checks beyond those that fix the shape; minus one for no check at all
 */
export function tapedRoom(random: () => number, spare: number): TapedRoom {
  const { corners, turns } = trueRoom(random)
  const runs = corners.map((corner, index): Run => {
    const next = corners[(index + 1) % corners.length]!
    return { length: taped(random, distance(corner, next)), turn: turns[index]! }
  })
  const bare: OutlineSurvey = { runs, checks: [], tolerances }
  if (spare < 0) return { corners, survey: bare }
  const needs = solveOutline(bare).needs
  const pairs = [...needs, ...sparePairs(random, corners.length, needs).slice(0, spare)]
  const checks = pairs.map(({ from, to }): Check => {
    return { from, to, length: taped(random, distance(corners[from]!, corners[to]!)) }
  })
  return { corners, survey: { ...bare, checks } }
}

/** The same survey with one figure misread the way people do. */
export function withMisread(
  random: () => number,
  survey: OutlineSurvey,
): { survey: OutlineSurvey; wrong: MeasurementRef; read: number } {
  const lengths = survey.runs.length + survey.checks.length
  const kind = whole(random, 0, 3)
  if (kind === 3) {
    const index = whole(random, 0, survey.runs.length - 1)
    const runs = survey.runs.map((run, i) => (i === index ? { ...run, turn: -run.turn } : run))
    return { survey: { ...survey, runs }, wrong: { kind: "turn", index }, read: runs[index]!.turn }
  }
  const place = whole(random, 0, lengths - 1)
  const isRun = place < survey.runs.length
  const index = isRun ? place : place - survey.runs.length
  const right = isRun ? survey.runs[index]!.length : survey.checks[index]!.length
  const read = misread(random, kind, right)
  if (read === null) return withMisread(random, survey)
  const wrong: MeasurementRef = { kind: isRun ? "run" : "check", index }
  const changed = <Taped extends { length: number }>(list: readonly Taped[]) =>
    list.map((taped, i) => (i === index ? { ...taped, length: read } : taped))
  return isRun
    ? { survey: { ...survey, runs: changed(survey.runs) }, wrong, read }
    : { survey: { ...survey, checks: changed(survey.checks) }, wrong, read }
}

function misread(random: () => number, kind: number, right: number): number | null {
  const sign = random() < 0.5 ? -1 : 1
  const options = kind === 0 ? swappedDigits(right) : [right + sign * (kind === 1 ? 100 : 1000)]
  const read = options[whole(random, 0, options.length - 1)]
  return read === undefined || read < 100 ? null : read
}

function trueRoom(random: () => number): { corners: Point[]; turns: number[] } {
  const wide = whole(random, 2400, 5500)
  const deep = whole(random, 2000, 5000)
  const a = whole(random, 800, wide - 1200)
  const b = whole(random, 700, deep - 900)
  const shapes: [number, number][][] = [
    [
      [0, 0],
      [wide, 0],
      [wide, -deep],
      [0, -deep],
    ],
    [
      [0, 0],
      [wide, 0],
      [wide, -b],
      [a, -b],
      [a, -deep],
      [0, -deep],
    ],
    [
      [0, 0],
      [wide, 0],
      [wide, -deep],
      [a + 1000, -deep],
      [a + 1000, -deep + 450],
      [a, -deep + 450],
      [a, -deep],
      [0, -deep],
    ],
  ]
  const turns = [
    [90, 90, 90, 90],
    [90, 90, -90, 90, 90, 90],
    [90, 90, 90, -90, -90, 90, 90, 90],
  ]
  const kind = whole(random, 0, 2)
  const square = shapes[kind]!.map(([x, y]) => ({ x, y }))
  return {
    corners: square.map((corner, index) => pushed(random, square, corner, index)),
    turns: turns[kind]!,
  }
}

/** A corner pushed out of square so far that no turn leaves its tolerance: walls swing by 0.7 degrees at most. */
function pushed(random: () => number, square: Point[], corner: Point, index: number): Point {
  const count = square.length
  const before = distance(corner, square[(index + count - 1) % count]!)
  const after = distance(corner, square[(index + 1) % count]!)
  const most = Math.min(before, after) * 0.006
  const push = () => (random() * 2 - 1) * most
  return { x: corner.x + push(), y: corner.y + push() }
}

function taped(random: () => number, length: number): number {
  return Math.round(length + (random() * 2 - 1) * tapingError)
}

function sparePairs(random: () => number, count: number, taken: { from: number; to: number }[]) {
  const pairs: { from: number; to: number }[] = []
  for (let from = 0; from < count; from++) {
    for (let to = from + 2; to < count; to++) {
      if (from === 0 && to === count - 1) continue
      if (!taken.some((pair) => pair.from === from && pair.to === to)) pairs.push({ from, to })
    }
  }
  return pairs.sort(() => random() - 0.5)
}
