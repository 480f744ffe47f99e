import type { Mm } from "../../../kernels/units.ts"
import { lengthOf, type Stretch } from "./boards.ts"
import { type EndLimits, type Role, type Run, same } from "./end-plan.ts"
import { leastNeeds, type Need, needOf } from "./profile.ts"

/** A piece of a filling. */
interface Piece {
  length: Mm
  role: Role
  need: Need
}

/** What a piece weighs, in boards, by its length and its place in the run. */
type LengthWeight = (length: Mm, role: Role) => number
/** Share of a piece's weight that counts, by the long edges it needs. */
type LaneWeight = (need: Need) => number

/** Rounding functions with so many steps are tried. */
const mostSteps = 4
/** Thresholds tried between the least end and half a board. */
const thresholds = 6
/** How far weights by place lean on length: 0 not at all, 1 wholly. */
const leanings = [0, 1 / 4, 1 / 2, 3 / 4, 1]
/** Just beside a length at which a weight jumps, mm. */
const beside: Mm = 0.02
/** Weights are cleared of binary noise before they are rounded up. */
const noise = 1e-6

/**
 * A number of boards that no plan within the rules can go below. For weights under which no board's pieces can weigh more than 1, every
 * run weighs at least its lightest filling, and the boards at least the sum: the greatest such sum over a family of weights, rounded up.
 * Weights by length are dual feasible functions of length and saw cut (Fekete and Schepers, Mathematical Programming 91, 2001, and the
 * plain share of length); by place: one starter and one finisher at most come of one length of board. Rips: at any place along a board
 * lies one full piece, or at most one strip with a groove and one with a tongue; each lane alone is a bound, and so is the sum of
 * those too wide to lie side by side.
 * @param hand offcuts of other rooms that may be used besides: each weighs no more than its share of a length, or than one board
 */
export function fewestPossible(
  runs: readonly Run[],
  limits: EndLimits,
  hand: readonly Stretch[] = [],
): number {
  const lanes = laneWeights(runs, limits)
  const cuts = cutsOf(runs, limits)
  const ways = new Map<string, Piece[][]>()
  const waysOf = (run: Run) => {
    const key = run.profile ? run.name : (run.right - run.left).toFixed(3)
    const found = ways.get(key) ?? waysToFill(run, limits, cuts)
    ways.set(key, found)
    return found
  }
  const { boardLength, kerf } = limits
  const inHand = sumOf(hand, (offcut) => (lengthOf(offcut) + kerf) / (boardLength + kerf))
  let bound = runs.length > hand.length ? 1 : 0
  for (const { weight, isShare } of lengthWeights(runs, limits)) {
    const given = isShare ? inHand : hand.length
    const full = sumOf(
      runs.filter((run) => !run.profile),
      (run) => lightest(waysOf(run), weight, () => 1),
    )
    for (const lane of lanes) {
      const partly = sumOf(
        runs.filter((run) => run.profile),
        (run) => lightest(waysOf(run), weight, lane),
      )
      bound = Math.max(bound, Math.ceil(full + partly - given - noise))
    }
  }
  return bound
}

function sumOf<T>(list: readonly T[], of: (item: T) => number): number {
  return list.reduce((sum, item) => sum + of(item), 0)
}

function lengthWeights(
  runs: readonly Run[],
  limits: EndLimits,
): { weight: LengthWeight; isShare: boolean }[] {
  const { boardLength, kerf, leastEnd } = limits
  const whole = boardLength + kerf
  const share = (length: Mm) => (length + kerf) / whole
  const cuts = cutsOf(runs, limits)
  const leastPiece = cuts[0] ?? 1 / 2
  const steps = Array.from({ length: mostSteps }, (_, index) => index + 1)
  const others: LengthWeight[] = [
    ...steps.map((k) => (length: Mm) => stepped(share(length), k)),
    ...cuts.map((cut) => (length: Mm) => {
      const x = share(length)
      return x > 1 - cut + noise ? 1 : x < cut - noise ? 0 : x
    }),
    ...leanings.map((leaning) => byPlace(share, { leaning, leastPiece, leastEnd: share(leastEnd) })),
  ]
  return [{ weight: share, isShare: true }, ...others.map((weight) => ({ weight, isShare: false }))]
}

/** Thresholds of length as a share of a board, from the shortest piece there can be to half a board. */
function cutsOf(runs: readonly Run[], { boardLength, kerf, leastEnd }: EndLimits): number[] {
  const singles = runs.map((run) => run.right - run.left).filter((length) => length <= boardLength + same)
  const least = Math.max(noise, (Math.min(leastEnd, ...singles) + kerf) / (boardLength + kerf))
  if (least >= 1 / 2) return [1 / 2]
  return Array.from(
    { length: thresholds },
    (_, index) => least + ((1 / 2 - least) * index) / (thresholds - 1),
  )
}

/** Fekete and Schepers' rounding: floor((k + 1) x) / k, and x itself where (k + 1) x is whole. */
function stepped(x: number, k: number): number {
  const scaled = (k + 1) * x
  return Math.abs(scaled - Math.round(scaled)) < noise ? x : Math.floor(scaled) / k
}

/**
 * A starter and a finisher weigh half a board each, and more or less as they are longer or shorter than half of one, so that any two that
 * fit one board weigh 1 at most; a piece between them what they leave; 1 for what leaves no room for another.
 */
function byPlace(
  share: (length: Mm) => number,
  { leaning, leastPiece, leastEnd }: { leaning: number; leastPiece: number; leastEnd: number },
): LengthWeight {
  return (length, role) => {
    const x = share(length)
    if (role === "whole" || x > 1 - leastPiece + noise) return 1
    const leant = 1 / 2 + leaning * (x - 1 / 2)
    if (role !== "single") return leant
    return x > 1 / 2 + noise && x + 2 * leastEnd > 1 + noise ? leant : leaning * x
  }
}

function laneWeights(runs: readonly Run[], limits: EndLimits): LaneWeight[] {
  const { boardWidth, kerf } = limits
  const widths = { groove: [] as Mm[], tongue: [] as Mm[] }
  for (const run of runs) {
    for (const { need } of needsOf(run, limits)) {
      if (need.groove && !need.tongue) widths.groove.push(need.width)
      if (need.tongue && !need.groove) widths.tongue.push(need.width)
    }
  }
  const isFull = (need: Need) => need.groove && need.tongue
  const lane =
    (groove: (width: Mm) => number, tongue: (width: Mm) => number): LaneWeight =>
    (need) =>
      isFull(need) ? 1 : need.groove ? groove(need.width) : need.tongue ? tongue(need.width) : 0
  const half = () => 1 / 2
  const apart = [...new Set(widths.groove)].map((least) =>
    lane(
      (width) => (width >= least - noise ? 1 : 0),
      (width) => (width > boardWidth - kerf - least + noise ? 1 : 0),
    ),
  )
  return [
    lane(
      () => 1,
      () => 0,
    ),
    lane(
      () => 0,
      () => 1,
    ),
    lane(half, half),
    ...apart,
  ]
}

/** The lightest filling of one run; nothing where no filling keeps the rules. */
function lightest(ways: readonly Piece[][], weight: LengthWeight, lane: LaneWeight): number {
  let least = Number.POSITIVE_INFINITY
  for (const pieces of ways) {
    let sum = 0
    for (const { length, role, need } of pieces) sum += lane(need) * weight(length, role)
    if (sum < least) least = sum
  }
  return Number.isFinite(least) ? least : 0
}

/** Every filling of one run within the rules at which a weight can be least. */
function waysToFill(run: Run, limits: EndLimits, cuts: readonly number[]): Piece[][] {
  const { boardLength, leastEnd } = limits
  const narrowest = needsOf(run, limits)
  const pieces = (joints: readonly Mm[]) => {
    const ends = [run.left, ...joints, run.right]
    return ends.slice(1).map((right, index): Piece => {
      const left = ends[index]!
      const role =
        joints.length === 0 ? "single" : index === 0 ? "start" : index === joints.length ? "finish" : "whole"
      const need = leastNeed(needOf(run.profile, limits.boardWidth, { left, right }), narrowest)
      return { length: Math.min(right - left, boardLength), role, need }
    })
  }
  const ways = run.right - run.left <= boardLength + same ? [pieces([])] : []
  for (const start of starts(run, limits, cuts)) {
    const joints = [run.left + start]
    while (run.right - joints.at(-1)! > boardLength + same) joints.push(joints.at(-1)! + boardLength)
    if (start < leastEnd - same || run.right - joints.at(-1)! < leastEnd - same) continue
    ways.push(pieces(joints))
  }
  return ways
}

/** Starters at and beside every length where a weight can jump, for the starter itself and for the finisher. */
function starts(run: Run, { boardLength, kerf, leastEnd }: EndLimits, cuts: readonly number[]): Mm[] {
  const length = run.right - run.left
  const whole = boardLength + kerf
  const jumps = new Set<Mm>([leastEnd, boardLength])
  for (let k = 1; k <= mostSteps; k++)
    for (let step = 1; step <= k; step++) jumps.add((step * whole) / (k + 1) - kerf)
  for (const cut of cuts) {
    jumps.add(cut * whole - kerf)
    jumps.add((1 - cut) * whole - kerf)
  }
  const found = new Set<Mm>()
  const add = (start: Mm) => {
    for (const each of [start - beside, start, start + beside])
      if (each > same && each <= boardLength && each < length) found.add(each)
  }
  for (const jump of jumps) {
    add(jump)
    const start = (((length - jump) % boardLength) + boardLength) % boardLength
    add(start < same ? boardLength : start)
  }
  for (const { from } of run.profile ?? []) add((from - run.left) % boardLength)
  return [...found]
}

/** What a piece needs at least: where it needs less than full width, no more than the run's narrowest place. */
function leastNeed(need: Need, spans: readonly { need: Need }[]): Need {
  if (need.groove && need.tongue) return need
  const widths = spans
    .filter((span) => span.need.groove === need.groove && span.need.tongue === need.tongue)
    .map((span) => span.need.width)
  return { ...need, width: Math.min(need.width, ...widths) }
}

function needsOf(run: Run, { boardWidth, leastEnd }: EndLimits): { need: Need }[] {
  return leastNeeds(run.profile, boardWidth, { left: run.left, right: run.right, leastEnd })
}
