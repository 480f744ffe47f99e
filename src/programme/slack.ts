import type { Placeable, Placing } from "./place.ts"
import { apart } from "./units.ts"

const hourMs = 3_600_000

/** One unit after another as placed: by how much the second must start after the first's finish. */
interface After {
  unit: number
  gap: number
}

/**
 * The latest finish of each unit that moves no other finish of the job, with crews and rooms in the order placed: backward
 * through the real calendar. Where the order could be changed there may be more; there is never less.
 * @returns latest finish in ms, by unit
 */
export function latestFinishes(given: Placeable, placing: Placing): number[] {
  const { units } = given.plan
  const end = Math.max(0, ...placing.finish)
  const latestStart = new Array<number>(units.length).fill(end)
  const latest = new Array<number>(units.length).fill(end)
  const after = followers(given, placing)
  const order = units.map((_, unit) => unit)
  order.sort((a, b) => placing.start[b]! - placing.start[a]! || placing.finish[b]! - placing.finish[a]!)
  for (const index of latestFirst(order, after)) {
    const unit = units[index]!
    for (const next of after[index]!)
      latest[index] = Math.min(latest[index]!, latestStart[next.unit]! - next.gap)
    latest[index] = Math.max(latest[index]!, placing.finish[index]!)
    const table = given.tables[unit.limits]!
    const mayShift = unit.work && !unit.oneDay && !unit.byBedtime
    if (unit.work && !mayShift) latest[index] = placing.finish[index]!
    const hours = unit.hours / placing.people[index]!
    const start = unit.work ? table.subtract(latest[index]!, hours) : latest[index]!
    latestStart[index] = Math.max(
      placing.start[index]!,
      mayShift || !unit.work ? start : placing.start[index]!,
    )
  }
  return latest
}

function followers({ plan }: Placeable, placing: Placing): After[][] {
  const { units, crews, ways, roomIds } = plan
  const { start, finish, ready } = placing
  const after: After[][] = units.map(() => [])
  units.forEach((unit, index) => {
    for (const wait of unit.waits) {
      const gap = wait.until === "ready" ? units[wait.unit]!.gate * hourMs : 0
      after[wait.unit]!.push({ unit: index, gap })
    }
  })
  const shutBy = units.map((unit) =>
    unit.shuts && unit.room >= 0
      ? new Set([roomIds[unit.room]!, ...ways.behind(roomIds[unit.room]!)])
      : new Set<string>(),
  )
  units.forEach((a, u) => {
    units.forEach((b, v) => {
      if (u === v || !a.work || !b.work || start[v]! < finish[u]!) return
      const flags = plan.apart[u * units.length + v]!
      const fills = placing.people[u]! + placing.people[v]! > crews[a.crew]!.people
      if ((flags & apart.crew && fills) || flags & apart.room || flags & apart.dustOn)
        after[u]!.push({ unit: v, gap: 0 })
      if (flags & apart.dustFrom && start[v]! >= ready[u]!) after[u]!.push({ unit: v, gap: a.gate * hourMs })
      const roomOf = (unit: { room: number }) => (unit.room < 0 ? "" : roomIds[unit.room]!)
      if (shutBy[u]!.has(roomOf(b)) && start[v]! >= ready[u]!)
        after[u]!.push({ unit: v, gap: a.gate * hourMs })
      if (shutBy[v]!.has(roomOf(a))) after[u]!.push({ unit: v, gap: 0 })
    })
  })
  return after
}

/** Units behind all that follow them. */
function latestFirst(order: readonly number[], after: readonly After[][]): number[] {
  const done = new Set<number>()
  const list: number[] = []
  const place = (unit: number): void => {
    if (done.has(unit)) return
    done.add(unit)
    for (const next of after[unit]!) place(next.unit)
    list.push(unit)
  }
  for (const unit of order) place(unit)
  return list
}
