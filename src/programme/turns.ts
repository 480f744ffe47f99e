import type { Placeable } from "./place.ts"
import type { Unit } from "./units.ts"

/** Earliest times with as many crews as one likes, and what follows each unit at least, all in ms. */
export interface Chains {
  /** Earliest start and finish of each unit in the real calendar. */
  start: number[]
  finish: number[]
  /** The unit that holds each one back, or -1. */
  from: number[]
  /** Least time from each unit's start to the end of the job, nights and free days not counted. */
  tail: number[]
}

const hourMs = 3_600_000

/** Units that cannot go on at the same time but for the people of their crew: a crew's, or a room's. */
interface Turn {
  units: number[]
}

/**
 * Earliest starts and finishes raised by turns: all that must come before a unit and is one crew's, or in one room where crews follow one
 * another, takes its hours one after the other from the moment the first of it may begin. Still what no programme can beat.
 * @param order units so ordered that each stands behind all it waits for
 * @returns start and finish of each unit, in ms
 */
export function withTurns(given: Placeable, chains: Chains, order: readonly number[]) {
  const { plan, tables } = given
  const { units, follows, crews } = plan
  const start = [...chains.start]
  const finish = [...chains.finish]
  const turns = turnsOf(given)
  for (const index of order) {
    if (given.pinned.has(index)) continue
    const unit = units[index]!
    let from = start[index]!
    for (const wait of unit.waits) {
      const gate = wait.until === "ready" ? units[wait.unit]!.gate * hourMs : 0
      from = Math.max(from, finish[wait.unit]! + gate)
    }
    for (const turn of turns) {
      const before = turn.units.filter((other) => follows[other * units.length + index] === 1)
      if (before.length > 1) from = Math.max(from, turnFinish(given, before, start))
    }
    const table = tables[unit.limits]!
    start[index] = unit.work ? table.next(from) : from
    finish[index] = unit.work ? table.add(start[index]!, unit.hours / crews[unit.crew]!.people) : from
  }
  return { start, finish, turns }
}

/** The least moment at which some units of one turn are all done, none begun before its own earliest start. */
export function turnFinish(given: Placeable, members: readonly number[], start: readonly number[]): number {
  const { plan, tables } = given
  let hours = 0
  let limits = -1
  let best = 0
  for (const index of [...members].sort((a, b) => start[b]! - start[a]!)) {
    const unit = plan.units[index]!
    hours += unit.hours / plan.crews[unit.crew]!.people
    limits = limits < 0 ? unit.limits : limits & unit.limits
    const table = tables[limits]!
    best = Math.max(best, table.add(table.next(start[index]!), hours))
  }
  return best
}

function turnsOf({ plan, pinned }: Placeable): Turn[] {
  const { units, crews, roomIds, crewsInRoom } = plan
  const chosen = (holds: (unit: Unit) => boolean): Turn => ({
    units: units.flatMap((unit, index) => (unit.work && !pinned.has(index) && holds(unit) ? [index] : [])),
  })
  const byCrew = crews.map((_, crew) => chosen((unit) => unit.crew === crew))
  if (crewsInRoom !== 1) return byCrew.filter((turn) => turn.units.length > 1)
  const isClean = (unit: Unit) => !unit.dusty && unit.gate === 0
  const isQuick = (unit: Unit) => isClean(unit) && crews[unit.crew]!.licensed
  const byRoom = roomIds.flatMap((_, room) => {
    const here = (unit: Unit) => unit.room === room
    return [
      chosen((unit) => here(unit) && !isQuick(unit)),
      ...crews.flatMap(({ licensed }, crew) =>
        licensed ? [chosen((unit) => here(unit) && (!isClean(unit) || unit.crew === crew))] : [],
      ),
    ]
  })
  return [...byCrew, ...byRoom].filter((turn) => turn.units.length > 1)
}
