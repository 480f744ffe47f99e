import type { Mm } from "../../../kernels/units.ts"
import { type EndLimits, type Run, same } from "./end-plan.ts"
import type { StripDemand } from "./floor-state.ts"
import type { Choice, Place } from "./stock.ts"

/** Lengths worth leaving whole for other runs when a board is cut, mm. */
export interface WorthLeaving {
  /** A board is cut across here before it is ripped. */
  firstCuts: readonly Mm[]
  /** Left on the left of a wall-to-wall piece cut out of the middle of a board. */
  besideSingles: readonly Mm[]
}

/** So many lengths of each sort are tried. */
const mostLengths = 8
const asComes: Choice = {}

/**
 * Lengths at which a board may be cut across before it is ripped, longer than the piece needs: the other strip then serves a ripped run
 * that wants so much, or the rest of the board a run of full width; and lengths to leave beside a piece cut out of the middle.
 */
export function worthLeaving(runs: readonly Run[], limits: EndLimits): WorthLeaving {
  const { boardLength, kerf } = limits
  const ripped = runs.filter((run) => run.profile)
  const full = runs.filter((run) => !run.profile)
  const singles = runs.some((run) => run.right - run.left < boardLength - same)
  const rest = wantedOf(full, limits).map((length) => boardLength - kerf - length)
  return {
    firstCuts: ripped.length > 1 ? spread([...wantedOf(ripped, limits), ...rest], limits) : [],
    besideSingles: singles ? spread(wantedOf(runs, limits), limits) : [],
  }
}

/**
 * How the pieces of a jointed run may be taken, one choice a piece in each way.
 * @param hard whether each end piece is looked at by itself
 */
export function waysJointed(
  run: Run,
  places: readonly Place[],
  { demand, leaving, hard }: { demand: StripDemand; leaving: WorthLeaving; hard: boolean },
): Choice[][] {
  const all = (choice: Choice) => places.map(() => choice)
  if (!run.profile || isLastWanted(demand)) return [all(asComes)]
  if (!hard) return [all(asComes), all({ ripFirst: true })]
  const ways = ripWays(leaving)
  return ways.flatMap((first) =>
    ways.map((last) =>
      places.map((_, index) => (index === 0 ? first : index === places.length - 1 ? last : asComes)),
    ),
  )
}

/** How a piece from wall to wall may be taken. */
export function waysSingle(
  run: Run,
  { demand, leaving, hard }: { demand: StripDemand; leaving: WorthLeaving; hard: boolean },
): Choice[] {
  if (demand.length === 0) return [asComes]
  const rips = run.profile && !isLastWanted(demand) ? ripWays(hard ? leaving : null) : [asComes]
  const sides = [
    { fromRight: false },
    { fromRight: true },
    ...(hard ? leaving.besideSingles.map((leave) => ({ leave })) : []),
  ]
  return rips.flatMap((rip) => sides.map((side) => ({ ...rip, ...side })))
}

function ripWays(leaving: WorthLeaving | null): Choice[] {
  return [asComes, { ripFirst: true }, ...(leaving?.firstCuts ?? []).map((firstCut) => ({ firstCut }))]
}

/** True where no run to come takes a strip. */
function isLastWanted({ groove, tongue }: StripDemand): boolean {
  return groove === 0 && tongue === 0
}

/** Lengths that runs can take in one piece at an end: what whole boards leave, shared with a shortest piece or not. */
function wantedOf(runs: readonly Run[], { boardLength, leastEnd }: EndLimits): Mm[] {
  return runs.flatMap((run) => {
    const rest = (run.right - run.left) % boardLength
    return [rest, rest - leastEnd, rest + boardLength - leastEnd]
  })
}

/** Different lengths of an end piece's size, spread over all of them where they are too many. */
function spread(lengths: readonly Mm[], { boardLength, kerf, leastEnd }: EndLimits): Mm[] {
  const fit = [...new Set(lengths)]
    .filter((length) => length >= leastEnd && length < boardLength - kerf)
    .sort((a, b) => a - b)
  if (fit.length <= mostLengths) return fit
  return Array.from(
    { length: mostLengths },
    (_, index) => fit[Math.round((index * (fit.length - 1)) / (mostLengths - 1))]!,
  )
}
