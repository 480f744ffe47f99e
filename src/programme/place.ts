import { apart, type Unit, type UnitPlan } from "./units.ts"
import type { UnitWait, WaitNet } from "./wait-net.ts"
import type { WorkTable } from "./work-table.ts"

/** What the dating decides: who comes first, how many people, and which of a crew's work is saved up for one visit. */
export interface Choice {
  /** Of units that may start, the one with the least figure is placed first. */
  priority: number[]
  /** People of the crew on each unit. */
  people: number[]
  /** What each unit waits for, see `waitsWith`. */
  waits: WaitNet
}

/** Why a unit could not be placed earlier. */
export type Cause =
  | { kind: "opening" | "hold" }
  | { kind: "day" | "night"; before: Cause }
  | { kind: "wait" | "visit" | "crew" | "room" | "wet-coat" | "dust" | "wet-floor"; unit: number }

/** Units in time, all in ms. */
export interface Placing {
  start: Float64Array
  finish: Float64Array
  ready: Float64Array
  people: readonly number[]
  cause: Cause[]
  /** The moment from which nothing but the calendar held each unit back. */
  from: Float64Array
  /** Units for which a rule of one day or of bedtime could not be kept on any day. */
  relaxed: number[]
}

/** What stands before anything is placed. */
export interface Placeable {
  plan: UnitPlan
  /** Working time by what limits the work, at a sum of `limit` flags. */
  tables: readonly WorkTable[]
  /** No work starts before. */
  opening: number
  /** What dries by itself may have begun before it, but not before this. */
  began: number
  /** For each unit the moment before which what it needs is not there; the beginning where nothing is held. */
  release: Float64Array
  /** Work that was done or begun: when. */
  pinned: ReadonlyMap<number, { start: number; finish: number }>
}

const hourMs = 3_600_000
/** So many days in turn are tried for work that must end on the day it begins. */
const daysTried = 12

/**
 * Places every unit as early as its waits, its crew, its room, dust, wet floors and the calendar allow, in the order of the
 * choice (serial scheme). What was done or begun stays where it was.
 * @returns null if what is saved up for one visit waits for itself
 */
export function placeAll(given: Placeable, choice: Choice): Placing | null {
  const { units } = given.plan
  const { into, from } = choice.waits
  const left = into.map((own) => own.length)
  const placer = new Placer(given, choice)
  for (const unit of given.pinned.keys()) placer.pin(unit)
  const open: number[] = []
  left.forEach((count, unit) => {
    if (count === 0) open.push(unit)
  })
  let placed = 0
  while (open.length > 0) {
    let best = 0
    for (let at = 1; at < open.length; at++) {
      if (choice.priority[open[at]!]! < choice.priority[open[best]!]!) best = at
    }
    const unit = open.splice(best, 1)[0]!
    if (!given.pinned.has(unit)) placer.place(unit, into[unit]!)
    placed++
    for (const follower of from[unit]!) if (--left[follower]! === 0) open.push(follower)
  }
  return placed === units.length ? placer.placing : null
}

interface Slot {
  unit: number
  start: number
  finish: number
  ready: number
}

interface Clash {
  until: number
  cause: Cause
}

class Placer {
  readonly placing: Placing
  readonly #given: Placeable
  /** Work placed already, by its start; how much; and how much of it is past for the unit that is being placed. */
  readonly #order: Int32Array
  #placed = 0
  #passed = 0
  readonly #shut: number[] = []

  constructor(given: Placeable, choice: Choice) {
    this.#given = given
    const count = given.plan.units.length
    this.#order = new Int32Array(count)
    this.placing = {
      start: new Float64Array(count),
      finish: new Float64Array(count),
      ready: new Float64Array(count),
      people: choice.people,
      cause: new Array<Cause>(count).fill({ kind: "opening" }),
      from: new Float64Array(count),
      relaxed: [],
    }
  }

  pin(unit: number): void {
    const { start, finish } = this.#given.pinned.get(unit)!
    this.#put({ unit, start, finish, ready: finish + this.#given.plan.units[unit]!.gate * hourMs })
  }

  place(index: number, waits: readonly UnitWait[]): void {
    const { plan, tables } = this.#given
    const unit = plan.units[index]!
    const table = tables[unit.limits]!
    let from = unit.work ? this.#given.opening : this.#given.began
    let cause: Cause = { kind: "opening" }
    for (const wait of waits) {
      const until = this.placing[wait.until][wait.unit]!
      if (cause.kind === "opening" && this.#isLastReported(wait.unit, until))
        cause = { kind: "wait", unit: wait.unit }
      if (until <= from && !(until === from && cause.kind === "opening")) continue
      from = until
      cause = { kind: wait.visit ? "visit" : "wait", unit: wait.unit }
    }
    if (cause.kind === "opening") cause = this.#crewReported(unit)
    const release = this.#given.release[index]!
    if (release > from) {
      from = release
      cause = { kind: "hold" }
    }
    this.#passed = 0
    for (let missed = 0; ; ) {
      const slot = this.#slot(index, from, table)
      const late = missed < daysTried ? this.#tooLate(slot, table) : null
      const clash = late ? null : this.#clash(slot)
      if (late) {
        missed++
        from = table.nextDay(slot.start)
        cause = { kind: late, before: "before" in cause ? cause.before : cause }
        if (missed === daysTried) this.placing.relaxed.push(index)
      } else if (clash) {
        from = clash.until
        cause = clash.cause
      } else {
        this.placing.cause[index] = cause
        this.placing.from[index] = from
        this.#put(slot)
        return
      }
    }
  }

  /** True for a reported unit that was done only when the last reported day was over. */
  #isLastReported(unit: number, until: number): boolean {
    const { pinned, tables, opening } = this.#given
    return pinned.has(unit) && tables[0]!.next(until) >= tables[0]!.next(opening)
  }

  /** The unit that the crew was reported at until the last reported day; the opening where it was at none. */
  #crewReported({ crew, work }: Unit): Cause {
    const { pinned, plan } = this.#given
    const [last] = [...pinned.keys()].filter(
      (unit) => plan.units[unit]!.crew === crew && this.#isLastReported(unit, this.placing.finish[unit]!),
    )
    return work && last !== undefined ? { kind: "crew", unit: last } : { kind: "opening" }
  }

  #put(slot: Slot): void {
    const { placing } = this
    placing.start[slot.unit] = slot.start
    placing.finish[slot.unit] = slot.finish
    placing.ready[slot.unit] = slot.ready
    if (!this.#given.plan.units[slot.unit]!.work) return
    let at = this.#placed++
    while (at > 0 && placing.start[this.#order[at - 1]!]! > slot.start) at--
    this.#order.copyWithin(at + 1, at, this.#placed - 1)
    this.#order[at] = slot.unit
    if (this.#given.plan.units[slot.unit]!.shuts) this.#shut.push(slot.unit)
  }

  #slot(index: number, from: number, table: WorkTable): Slot {
    const unit = this.#given.plan.units[index]!
    const start = unit.work ? table.next(from) : from
    const finish = unit.work ? table.add(start, unit.hours / this.placing.people[index]!) : start
    return { unit: index, start, finish, ready: finish + unit.gate * hourMs }
  }

  /** Work that must end on the day it begins, or dry before bedtime, and does not. */
  #tooLate(slot: Slot, table: WorkTable): "day" | "night" | null {
    const unit = this.#given.plan.units[slot.unit]!
    if (unit.oneDay && table.dateAt(slot.start) !== table.dateAt(slot.finish - 1)) return "day"
    if (unit.byBedtime && slot.ready > table.clock(slot.start, this.#given.plan.bedtime)) return "night"
    return null
  }

  /** What a slot clashes with; of several that end alike, the unit that comes first in the plan. Slots are asked in order of start. */
  #clash(slot: Slot): Clash | null {
    const { plan } = this.#given
    const { start, finish, ready } = this.placing
    if (!plan.units[slot.unit]!.work) return null
    const row = slot.unit * plan.units.length
    const over = Math.max(slot.finish, slot.ready)
    const sameCrew: number[] = []
    const sameRoom: number[] = []
    let until = 0
    let kind: "room" | "wet-coat" | "dust" = "room"
    let unit = -1
    while (this.#passed < this.#placed && this.#isPast(row, this.#order[this.#passed]!, slot.start))
      this.#passed++
    for (let at = this.#passed; at < this.#placed; at++) {
      const other = this.#order[at]!
      const begins = start[other]!
      if (begins >= over) break
      const flags = plan.apart[row + other]!
      if (flags === 0) continue
      const ends = finish[other]!
      if (begins < slot.finish && ends > slot.start) {
        if (flags & apart.crew) sameCrew.push(other)
        if (flags & apart.room) sameRoom.push(other)
      }
      if (
        flags & apart.dustOn &&
        begins < slot.finish &&
        ready[other]! > slot.start &&
        isLater(ready[other]!, other, until, unit)
      ) {
        until = ready[other]!
        kind = "wet-coat"
        unit = other
      }
      if (
        flags & apart.dustFrom &&
        begins < slot.ready &&
        ends > slot.start &&
        isLater(ends, other, until, unit)
      ) {
        until = ends
        kind = "dust"
        unit = other
      }
    }
    if (sameRoom.length >= plan.crewsInRoom) {
      const first = firstToEnd(sameRoom, finish)
      if (finish[first]! > until) {
        until = finish[first]!
        kind = "room"
        unit = first
      }
    }
    if (unit >= 0) return { until, cause: { kind, unit } }
    return this.#crewClash(slot, sameCrew) ?? this.#shutClash(slot)
  }

  /** True if a unit has nothing to do with that of a row, or is finished and dry by a moment. */
  #isPast(row: number, unit: number, moment: number): boolean {
    const { finish, ready } = this.placing
    return this.#given.plan.apart[row + unit] === 0 || (finish[unit]! <= moment && ready[unit]! <= moment)
  }

  #crewClash(slot: Slot, others: readonly number[]): Clash | null {
    const { start, finish, people } = this.placing
    const { plan } = this.#given
    if (others.length === 0) return null
    const free = plan.crews[plan.units[slot.unit]!.crew]!.people - people[slot.unit]!
    const moments = [slot.start, ...others.map((other) => Math.max(start[other]!, slot.start))]
    const isFull = moments.some((moment) => {
      let busy = 0
      for (const other of others)
        if (start[other]! <= moment && finish[other]! > moment) busy += people[other]!
      return busy > free
    })
    if (!isFull) return null
    const first = firstToEnd(others, finish)
    return { until: finish[first]!, cause: { kind: "crew", unit: first } }
  }

  /** A floor that is wet on the way, or work behind this floor while it is wet. */
  #shutClash(slot: Slot): Clash | null {
    const { plan } = this.#given
    const { start, finish, ready } = this.placing
    const unit = plan.units[slot.unit]!
    if (unit.room < 0) return null
    if (this.#shut.length === 0 && !unit.shuts) return null
    const wet = this.#wetDuring(slot.start, slot.finish, slot.unit)
    if (wet.length > 0 && !this.#reaches(unit.room, wet)) {
      const first = wet.reduce((sooner, each) => (ready[each]! < ready[sooner]! ? each : sooner))
      return { until: ready[first]!, cause: { kind: "wet-floor", unit: first } }
    }
    if (!unit.shuts) return null
    for (const other of this.#order.subarray(0, this.#placed)) {
      const room = plan.units[other]!.room
      if (room < 0 || start[other]! >= slot.ready || finish[other]! <= slot.start) continue
      const shut = [...this.#wetDuring(start[other]!, finish[other]!, other), slot.unit]
      if (!this.#reaches(room, shut))
        return { until: finish[other]!, cause: { kind: "wet-floor", unit: other } }
    }
    return null
  }

  /** Floors that are wet at some time between two moments, but for one's own. */
  #wetDuring(from: number, to: number, self: number): number[] {
    const { start, ready } = this.placing
    return this.#shut.filter((other) => other !== self && start[other]! < to && ready[other]! > from)
  }

  #reaches(room: number, wet: readonly number[]): boolean {
    const { ways, roomIds, units } = this.#given.plan
    return ways.reached(roomIds[room]!, new Set(wet.map((unit) => roomIds[units[unit]!.room]!)))
  }
}

/** True if a clash lasts longer than the one known, or as long with a unit that comes before it in the plan. */
function isLater(end: number, other: number, until: number, unit: number): boolean {
  return end > until || (end === until && unit >= 0 && other < unit)
}

/** Of those that end first, the one that comes first in the plan. */
function firstToEnd(list: readonly number[], ends: Float64Array): number {
  return list.reduce((first, each) =>
    ends[each]! < ends[first]! || (ends[each]! === ends[first]! && each < first) ? each : first,
  )
}
