import type { Placeable } from "./place.ts"
import { type Chains, turnFinish, withTurns } from "./turns.ts"
import type { Unit } from "./units.ts"
import type { WorkTable } from "./work-table.ts"

const hourMs = 3_600_000

/** A finish that no programme under these waits, crews and calendars can beat, and what forces it. */
export interface LeastFinish {
  finish: number
  by:
    | { kind: "chain"; units: number[] }
    | { kind: "crew"; crew: number; hours: number }
    | { kind: "turns"; unit: number }
}

/** Forward through the real calendar and backward in plain hours, each step done by the whole of its crew; what is reported stands. */
export function chainsOf({ plan, tables, opening, began, release, pinned }: Placeable): Chains {
  const { units, crews } = plan
  const start = units.map(() => opening)
  const finish = [...start]
  const from = units.map(() => -1)
  const order = inOrder(units)
  for (const index of order) {
    const unit = units[index]!
    const reported = pinned.get(index)
    if (reported) {
      start[index] = reported.start
      finish[index] = reported.finish
      continue
    }
    let earliest = Math.max(unit.work ? opening : began, release[index]!)
    for (const wait of unit.waits) {
      const gate = wait.until === "ready" ? units[wait.unit]!.gate * hourMs : 0
      const until = finish[wait.unit]! + gate
      if (until <= earliest) continue
      earliest = until
      from[index] = wait.unit
    }
    const table = tables[unit.limits]!
    const least = unit.hours / crews[unit.crew]!.people
    start[index] = unit.work ? table.next(earliest) : earliest
    finish[index] = unit.work ? table.add(start[index]!, least) : earliest
  }
  const tail = units.map((unit) => (unit.hours / crews[unit.crew]!.people) * hourMs)
  for (const index of [...order].reverse()) {
    for (const wait of units[index]!.waits) {
      const before = units[wait.unit]!
      const gate = wait.until === "ready" ? before.gate : 0
      const through = (before.hours / crews[before.crew]!.people + gate) * hourMs + tail[index]!
      tail[wait.unit] = Math.max(tail[wait.unit]!, through)
    }
  }
  return { start, finish, from, tail }
}

/** The greatest of the longest chain in the real calendar, each crew's work from any moment on, and chains with the turns of crews and rooms. */
export function leastFinish(given: Placeable, chains: Chains): LeastFinish {
  const { units, crews } = given.plan
  const last = chains.finish.reduce((late, each, unit) => (each > chains.finish[late]! ? unit : late), 0)
  const chain: number[] = []
  for (let unit = last; unit >= 0; unit = chains.from[unit]!) chain.unshift(unit)
  let best: LeastFinish = {
    finish: chains.finish[last] ?? given.opening,
    by: { kind: "chain", units: chain },
  }
  crews.forEach((_, crew) => {
    given.tables.forEach((table, limits) => {
      const own = units.flatMap((unit, index) =>
        unit.crew === crew && unit.work && !given.pinned.has(index) && (unit.limits & limits) === limits
          ? [index]
          : [],
      )
      const found = loadFinish(given, chains, own, table)
      if (found && found.finish > best.finish)
        best = { finish: found.finish, by: { kind: "crew", crew, hours: found.hours } }
    })
  })
  const turned = withTurns(given, chains, inOrder(units))
  const ends = [
    ...turned.finish.map((finish, unit) => ({ finish, unit })),
    ...turned.turns.map((turn) => ({
      finish: turnFinish(given, turn.units, turned.start),
      unit: turn.units.reduce((late, each) => (turned.start[each]! > turned.start[late]! ? each : late)),
    })),
  ]
  for (const { finish, unit } of ends) {
    if (finish > best.finish) best = { finish, by: { kind: "turns", unit } }
  }
  return best
}

/** Least finish of work that one crew does, none of it before its own earliest start; then the least that follows. */
function loadFinish(given: Placeable, chains: Chains, own: number[], table: WorkTable) {
  const { units, crews } = given.plan
  let hours = 0
  let after = Number.POSITIVE_INFINITY
  let best: { finish: number; hours: number } | null = null
  for (const index of own.sort((a, b) => chains.start[b]! - chains.start[a]!)) {
    const unit = units[index]!
    const { people } = crews[unit.crew]!
    hours += unit.hours
    after = Math.min(after, chains.tail[index]! - (unit.hours / people) * hourMs)
    const finish = table.add(table.next(chains.start[index]!), hours / people) + after
    if (!best || finish > best.finish) best = { finish, hours }
  }
  return best
}

/** Units so ordered that each stands behind all it waits for. */
export function inOrder(units: readonly Unit[]): number[] {
  const placed = new Set<number>()
  const order: number[] = []
  const place = (index: number): void => {
    if (placed.has(index)) return
    placed.add(index)
    for (const wait of units[index]!.waits) place(wait.unit)
    order.push(index)
  }
  units.forEach((_, index) => {
    place(index)
  })
  return order
}
