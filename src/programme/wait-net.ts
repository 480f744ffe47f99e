import type { UnitPlan } from "./units.ts"

/** One wait of a unit; `visit` where it waits so that its crew comes only once. */
export interface UnitWait {
  unit: number
  until: "ready" | "finish"
  visit?: true
}

/** Waits of each unit and the units that wait for it. */
export interface WaitNet {
  into: readonly (readonly UnitWait[])[]
  from: readonly (readonly number[])[]
}

/**
 * Own waits, and for units saved up for one visit the waits of all of them.
 * @param batch number of the visit each unit is saved up for, or -1
 */
export function waitsWith({ units, follows }: UnitPlan, batch: readonly number[]): WaitNet {
  const own: UnitWait[][] = units.map((unit) => unit.waits as UnitWait[])
  for (const list of membersOf(batch)) {
    const inside = new Set(list)
    const outside = new Map<number, UnitWait>()
    for (const unit of list) {
      for (const wait of units[unit]!.waits) {
        const isTheirs = list.some((member) => follows[member * units.length + wait.unit] === 1)
        if (!inside.has(wait.unit) && !isTheirs) outside.set(wait.unit, { ...wait, visit: true })
      }
    }
    for (const unit of list) {
      const known = new Set(units[unit]!.waits.map((wait) => wait.unit))
      own[unit] = [...own[unit]!, ...[...outside.values()].filter((wait) => !known.has(wait.unit))]
    }
  }
  const from: number[][] = units.map(() => [])
  own.forEach((list, unit) => {
    for (const wait of list) from[wait.unit]!.push(unit)
  })
  return { into: own, from }
}

function membersOf(batch: readonly number[]): Iterable<number[]> {
  const members = new Map<number, number[]>()
  batch.forEach((number, unit) => {
    if (number < 0) return
    const list = members.get(number)
    if (list) list.push(unit)
    else members.set(number, [unit])
  })
  return members.values()
}
