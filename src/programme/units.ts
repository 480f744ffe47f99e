import type { ProgrammeFile } from "../intake/schema/programme.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { Stage } from "../trades/stages.ts"
import type { Step } from "../trades/trade.ts"
import { limit } from "./calendars.ts"
import { rankOf, type Wait } from "./house-rules.ts"
import type { Crew, Hold, Site } from "./programme.ts"
import type { Ways } from "./ways.ts"

/** What is placed in time as one: a step, or the steps of a doorway done in one day. */
export interface Unit {
  steps: Step[]
  crew: number
  /** Index of the room, or -1 for the whole house. */
  room: number
  rank: number
  /** Person-hours. */
  hours: number
  gate: number
  /** What keeps it to some of the working hours: a sum of `limit` flags. */
  limits: number
  dusty: boolean
  /** A coat that dust would spoil until it is ready. */
  coat: boolean
  /** Its room is shut until it is ready. */
  shuts: boolean
  /** Must be ready before bedtime of the day it begins: people sleep behind it. */
  byBedtime: boolean
  oneDay: boolean
  /** What it needs is not there before: the latest of its steps' holds. */
  hold: Hold | null
  /** Needs somebody there; new plaster drying does not. */
  work: boolean
  waits: { unit: number; until: Wait["until"] }[]
}

/** Everything that the dating needs, by numbers. */
export interface UnitPlan {
  units: Unit[]
  crews: Crew[]
  roomIds: string[]
  ways: Ways
  bedtime: string
  onePersonMost: number
  /** For units u and v at `u * count + v`: what keeps them apart, a sum of `apart` flags. */
  apart: Uint8Array
  /** 1 at `u * count + v` where v waits for u, directly or through others. */
  follows: Uint8Array
  crewsInRoom: number
}

/** What may keep two units apart in time. */
export const apart = {
  /** Same crew: only as many people as it has. */
  crew: 1,
  /** Two crews in one room. */
  room: 2,
  /** The first makes dust that would settle on the second's wet coat. */
  dustOn: 4,
  /** The second makes dust that would settle on the first's wet coat. */
  dustFrom: 8,
} as const

/** Stages whose coats dust would spoil. */
const coats: readonly Stage[] = ["mist", "white", "woodwork", "last-coat", "oil"]
/** Stages that work on the floor itself: what must not be walked on then is the way. */
const floors: readonly Stage[] = ["tile", "deck", "floor", "oil"]

/** What the dating is asked for. */
export interface UnitsGiven {
  steps: readonly Step[]
  waits: ReadonlyMap<string, readonly Wait[]>
  blocks: ReadonlyMap<string, string>
  site: Site
  ways: Ways
  file: ProgrammeFile
  rules: Rules
  holds?: readonly Hold[]
}

/**
 * Steps gathered into units and put in numbers, in the order of stages and rooms.
 * @returns the plan, and a finding for each trade that no crew does (its steps are left out)
 */
export function unitPlan(given: UnitsGiven): { plan: UnitPlan; findings: Finding[] } {
  const { site, file, ways, rules } = given
  const crewOf = (step: Step) => file.crews.findIndex((crew) => crew.trades.includes(step.trade))
  const missing = [...new Set(given.steps.filter((step) => crewOf(step) < 0).map((step) => step.trade))]
  const roomIds = site.rooms.map((room) => room.id)
  const groups = gathered(
    given.steps.filter((step) => crewOf(step) >= 0),
    given.blocks,
  )
  const byKey = new Map(groups.flatMap((steps, index) => steps.map((step) => [step.key, index] as const)))
  const units = groups
    .map((steps, index) => unitOf(steps, index, given, byKey, roomIds))
    .map((unit, index) => ({ unit, index }))
  const order = units
    .sort(
      (a, b) =>
        a.unit.rank - b.unit.rank ||
        (a.unit.room < 0 ? roomIds.length : a.unit.room) - (b.unit.room < 0 ? roomIds.length : b.unit.room) ||
        a.index - b.index,
    )
    .map(({ index }) => index)
  const place = new Map(order.map((index, at) => [index, at]))
  const sorted = units.map(({ unit }) => ({
    ...unit,
    waits: unit.waits.map((wait) => ({ ...wait, unit: place.get(wait.unit)! })),
  }))
  return {
    plan: {
      units: sorted,
      crews: file.crews,
      roomIds,
      ways,
      bedtime: file.bedtime,
      onePersonMost: rules.value("programme-one-person-most"),
      apart: apartOf(sorted, file.crews, { roomIds, ways, reach: rules.value("programme-dust-reach") }),
      follows: followsOf(sorted),
      crewsInRoom: rules.value("programme-crews-in-room"),
    },
    findings: missing.map(noCrew),
  }
}

function gathered(steps: readonly Step[], blocks: ReadonlyMap<string, string>): Step[][] {
  const groups = new Map<string, Step[]>()
  for (const step of steps) {
    const door = blocks.get(step.key)
    const name = door === undefined ? step.key : `\n${door}`
    groups.set(name, [...(groups.get(name) ?? []), step])
  }
  return [...groups.values()]
}

function unitOf(
  steps: Step[],
  index: number,
  { waits, blocks, site, ways, file, holds = [] }: UnitsGiven,
  byKey: ReadonlyMap<string, number>,
  roomIds: readonly string[],
): Unit {
  const first = steps[0]!
  const last = steps[steps.length - 1]!
  const found = new Map<number, Wait["until"]>()
  for (const wait of steps.flatMap((step) => waits.get(step.key) ?? [])) {
    const unit = byKey.get(wait.key)
    if (unit === undefined || unit === index) continue
    if (wait.until === "ready" || !found.has(unit)) found.set(unit, wait.until)
  }
  const shuts = steps.some((step) => floors.includes(step.stage) && step.gate?.forbids.includes("walk"))
  return {
    steps,
    crew: file.crews.findIndex((crew) => crew.trades.includes(first.trade)),
    room: first.room === null ? -1 : roomIds.indexOf(first.room),
    rank: rankOf(first, blocks),
    hours: steps.reduce((sum, step) => sum + step.hours, 0),
    gate: last.gate?.hours ?? 0,
    limits: steps.reduce((flags, step) => flags | limitsOf(step, site, ways), 0),
    dusty: steps.some((step) => step.dusty),
    coat: last.gate !== undefined && coats.includes(last.stage),
    shuts,
    byBedtime: shuts && first.room !== null && ways.behind(first.room).some((room) => ways.slept.has(room)),
    oneDay: blocks.has(first.key) || isStairInUse(first, ways),
    hold: latestHold(steps, holds),
    work: steps.some((step) => step.hours > 0),
    waits: [...found].map(([unit, until]) => ({ unit, until })),
  }
}

function latestHold(steps: readonly Step[], holds: readonly Hold[]): Hold | null {
  const own = holds.filter((hold) => steps.some((step) => step.key === hold.key))
  return own.reduce<Hold | null>((last, each) => (last && last.from >= each.from ? last : each), null)
}

/** What keeps a step to some of the working hours, a sum of `limit` flags: noise; fumes on a storey where people sleep meanwhile. */
export function limitsOf({ room, noisy, fumes }: Step, { rooms }: Site, ways: Ways): number {
  const storey = rooms.find((each) => each.id === room)?.storey.id
  const isSlept = () =>
    rooms.some((each) => ways.slept.has(each.id) && (room === null || each.storey.id === storey))
  return (noisy ? limit.loud : 0) + (fumes && isSlept() ? limit.fumes : 0)
}

/** Work on treads, handrail or guarding of a stair that people go to bed by: it is whole again by evening. */
function isStairInUse({ stage, room }: Step, ways: Ways): boolean {
  return (
    stage === "nosings" &&
    room !== null &&
    ways.lived.has(room) &&
    ways.behind(room).some((other) => ways.slept.has(other))
  )
}

function apartOf(
  units: readonly Unit[],
  crews: readonly Crew[],
  { roomIds, ways, reach }: { roomIds: readonly string[]; ways: Ways; reach: number },
): Uint8Array {
  const count = units.length
  const found = new Uint8Array(count * count)
  const near = roomIds.map((id) =>
    roomIds.map((other) => id === other || (reach > 0 && ways.nextTo(id).includes(other))),
  )
  const quick = (unit: Unit) => !unit.dusty && unit.gate === 0 && crews[unit.crew]!.licensed
  const clean = (unit: Unit) => !unit.dusty && unit.gate === 0
  units.forEach((a, u) => {
    units.forEach((b, v) => {
      if (u === v || !a.work || !b.work) return
      let flags = a.crew === b.crew ? apart.crew : 0
      if (a.room >= 0 && b.room >= 0) {
        const beside = (quick(a) && clean(b)) || (clean(a) && quick(b))
        if (a.room === b.room && a.crew !== b.crew && !beside) flags |= apart.room
        if (near[a.room]![b.room]) {
          if (a.dusty && b.coat) flags |= apart.dustOn
          if (b.dusty && a.coat) flags |= apart.dustFrom
        }
      }
      found[u * count + v] = flags
    })
  })
  return found
}

/** What follows what, through chains of waits. */
function followsOf(units: readonly Unit[]): Uint8Array {
  const count = units.length
  const followers: number[][] = units.map(() => [])
  units.forEach((unit, index) => {
    for (const wait of unit.waits) followers[wait.unit]!.push(index)
  })
  const found = new Uint8Array(count * count)
  for (let from = 0; from < count; from++) {
    const list = [...followers[from]!]
    for (let unit = list.pop(); unit !== undefined; unit = list.pop()) {
      if (found[from * count + unit] === 1) continue
      found[from * count + unit] = 1
      list.push(...followers[unit]!)
    }
  }
  return found
}

function noCrew(trade: string): Finding {
  return {
    code: "trade-without-crew",
    severity: "error",
    at: { file: "programme.yaml", path: ["crews"] },
    message: `No crew does the trade "${trade}", but rooms have work for it.`,
    mend: `Add "${trade}" to the trades of a crew.`,
  }
}
