import { type Seeded, seeded } from "../kernels/schedule/seeded.ts"
import { type Choice, type Placeable, type Placing, placeAll } from "./place.ts"
import type { Chains } from "./turns.ts"
import type { UnitPlan } from "./units.ts"
import { type WaitNet, waitsWith } from "./wait-net.ts"

/**
 * Attempts of the improving search after the rules of priority, by the number of units; fewer where each places so many units that all
 * together would take long. Counted, never timed, so that the dates are the same everywhere.
 */
const attempts = { perUnit: 4, most: 600, placed: 200_000 }
/** Start of the seeded numbers; any would do. */
const seed = 20270301
/** Shares of the kinds of change that are tried. */
const changeBatch = 0.25
const changePeople = 0.35

/** A placing with what is held against it. */
export interface Found {
  placing: Placing
  choice: Choice
  /** Visits over a crew's limit, finish in ms, visits of all crews, changes of room: less is better, in this order. */
  score: readonly number[]
}

/**
 * The best placing found: several rules of priority with and without saving work up for visits, then seeded changes of
 * which those are kept that are no worse. Visits over the limit weigh before the finish, the finish before returns.
 * @param limit changes tried; by the number of units if not given
 */
export function bestPlacing(given: Placeable, chains: Chains, limit?: number): Found {
  const { plan } = given
  const groups = groupsOf(plan)
  const saved: Saved = { groups, known: new Map() }
  const tried = rules(plan, chains.tail, chains.start).flatMap((priority) =>
    batchings(plan, groups).map((joined) => ({ priority, people: usualPeople(plan), joined })),
  )
  let best: { state: State; found: Found } | null = null
  for (const state of tried) {
    const found = scored(given, state, saved)
    if (found && (!best || isLess(found.score, best.found.score))) best = { state, found }
  }
  const next = seeded(seed)
  const count = plan.units.length
  const most = limit ?? Math.min(attempts.perUnit * count, attempts.most, Math.ceil(attempts.placed / count))
  for (let attempt = 0; best && attempt < most; attempt++) {
    const state = changed(best.state, plan, groups, next)
    const found = scored(given, state, saved)
    if (found && !isLess(best.found.score, found.score)) best = { state, found }
  }
  return best!.found
}

/** A crew's work of one stage: what may be saved up for one visit. */
interface Group {
  crew: number
  units: number[]
}

/** The groups, and the waits of each way of saving up that was tried. */
interface Saved {
  groups: readonly Group[]
  known: Map<string, WaitNet>
}

/** For each group whether it is placed freely, saved up for a visit of its own, or for the visit of the group before it. */
type Joined = ("free" | "own" | "with-last")[]

interface State {
  priority: number[]
  people: number[]
  joined: Joined
}

function groupsOf(plan: UnitPlan): Group[] {
  const groups = new Map<string, Group>()
  plan.units.forEach((unit, index) => {
    if (!unit.work) return
    const name = `${String(unit.crew).padStart(3, "0")} ${String(unit.rank).padStart(3, "0")}`
    const group = groups.get(name) ?? { crew: unit.crew, units: [] }
    group.units.push(index)
    groups.set(name, group)
  })
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group)
}

function rules(plan: UnitPlan, tails: readonly number[], heads: readonly number[]): number[][] {
  const { units } = plan
  const end = Math.max(0, ...units.map((_, unit) => heads[unit]! + tails[unit]!))
  return [
    units.map((_, index) => index),
    units.map((_, index) => end - tails[index]!),
    units.map((unit, index) => end - tails[index]! + unit.rank),
    units.map((_, index) => heads[index]!),
    units.map((unit, index) => unit.room * units.length + index),
  ]
}

function batchings(plan: UnitPlan, groups: readonly Group[]): Joined[] {
  const limited = groups.map((group) => plan.crews[group.crew]!.visits !== undefined)
  const free: Joined = groups.map(() => "free")
  if (!limited.includes(true)) return [free]
  return [free, limited.map((is) => (is ? "own" : "free"))]
}

function usualPeople({ units, crews, onePersonMost }: UnitPlan): number[] {
  return units.map(({ hours, crew, oneDay }) => (!oneDay && hours <= onePersonMost ? 1 : crews[crew]!.people))
}

function changed(state: State, plan: UnitPlan, groups: readonly Group[], next: Seeded): State {
  const pick = (count: number) => Math.min(count - 1, Math.floor(next() * count))
  const kind = next()
  if (kind < changeBatch && groups.length > 0) {
    const joined = [...state.joined]
    joined[pick(groups.length)] = (["free", "own", "with-last"] as const)[pick(3)]!
    return { ...state, joined }
  }
  const unit = pick(plan.units.length)
  const { people } = plan.crews[plan.units[unit]!.crew]!
  if (kind < changePeople && people > 1) {
    const changedPeople = [...state.people]
    changedPeople[unit] = 1 + pick(people)
    return { ...state, people: changedPeople }
  }
  const beside = pick(plan.units.length)
  const priority = [...state.priority]
  priority[unit] = state.priority[beside]! + (next() < 1 / 2 ? -1 : 1) / 2
  return { ...state, priority }
}

function scored(given: Placeable, state: State, { groups, known }: Saved): Found | null {
  const { priority, people, joined } = state
  const name = joined.join(" ")
  const waits = known.get(name) ?? waitsWith(given.plan, batchesOf(joined, groups, given.plan.units.length))
  known.set(name, waits)
  const choice = { priority, people, waits }
  const placing = placeAll(given, choice)
  return placing && { placing, choice, score: scoreOf(placing, given) }
}

function batchesOf(joined: Joined, groups: readonly Group[], count: number): number[] {
  const batch = new Array<number>(count).fill(-1)
  groups.forEach((group, index) => {
    if (joined[index] === "free") return
    let head = index
    while (
      joined[head] === "with-last" &&
      groups[head - 1]?.crew === group.crew &&
      joined[head - 1] !== "free"
    )
      head--
    for (const unit of group.units) batch[unit] = head
  })
  return batch
}

/** Visits are working days without a free working day between them, as they are counted on paper. */
function scoreOf({ start, finish, relaxed }: Placing, { plan, tables }: Placeable): number[] {
  const { units, crews } = plan
  const calm = tables[0]!
  let over = 0
  let visits = 0
  let changes = 0
  crews.forEach((crew, number) => {
    const own = units.flatMap((unit, index) => (unit.crew === number && unit.work ? [index] : []))
    own.sort((a, b) => start[a]! - start[b]! || a - b)
    let count = 0
    let until = Number.NEGATIVE_INFINITY
    own.forEach((unit, at) => {
      if (calm.dayNumber(start[unit]!) > until + 1) count++
      until = Math.max(until, calm.dayNumber(finish[unit]! - 1))
      if (at > 0 && units[unit]!.room !== units[own[at - 1]!]!.room) changes++
    })
    visits += count
    over += Math.max(0, count - (crew.visits ?? count))
  })
  return [relaxed.length + over, Math.max(0, ...finish), visits, changes]
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let at = 0; at < a.length; at++) if (a[at] !== b[at]) return a[at]! < b[at]!
  return false
}
