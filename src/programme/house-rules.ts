import { type Stage, stageRank } from "../trades/stages.ts"
import type { Step } from "../trades/trade.ts"
import { doorOrder } from "./day-blocks.ts"
import type { Site } from "./programme.ts"
import type { Ways } from "./ways.ts"

/** One thing a step waits for: another step's gate, or only the end of its work. */
export interface Wait {
  key: string
  until: "ready" | "finish"
}

/** Steps, the house they are in, and the doorways that are done in one day. */
export interface RuledSteps {
  steps: readonly Step[]
  site: Site
  ways: Ways
  /** Door id by step key, see `dayBlocks`. */
  blocks: ReadonlyMap<string, string>
}

/** Stages in which a new storey takes up water, or gives it off. */
const damp: readonly Stage[] = ["dry-out", "mist", "tile"]

/**
 * What each step waits for: its own list; in its room every step of the nearest earlier stage; and across rooms the
 * house's rules, all common practice: damp before timber, heat before wood, linings before architraves, floors on both
 * sides before thresholds, doors hung before the last coat on either side and measured again after it, oil from the far
 * rooms to the landing, nosings and stairs last, covers on before anything is carried through a room and off when nothing
 * more is, doors of lived-in rooms after the oak has gone up.
 * @returns waits by key; keys that no step has are left out (the trade has then no such step in this job)
 */
export function waitsFor(given: RuledSteps): Map<string, Wait[]> {
  const byKey = new Map(given.steps.map((step) => [step.key, step]))
  const waits = new Map(given.steps.map((step) => [step.key, new Map<string, Wait>()]))
  const join = (step: Step, before: readonly Step[], until: Wait["until"] = "ready"): void => {
    const own = waits.get(step.key)!
    for (const { key } of before) {
      if (key !== step.key && (until === "ready" || !own.has(key))) own.set(key, { key, until })
    }
  }
  for (const step of given.steps) {
    for (const key of step.after)
      if (byKey.has(key) && key !== step.key && !driesBeside(step, byKey.get(key)!))
        waits.get(step.key)!.set(key, { key, until: "ready" })
    join(step, stageBefore(step, given))
  }
  for (const step of given.steps) {
    join(step, timberWaits(step, given))
    join(step, doorwayWaits(step, given))
    join(step, oilWaits(step, given))
    join(step, coverWaits(step, given))
    join(step, oakWaits(step, given), "finish")
  }
  return new Map([...waits].map(([key, own]) => [key, [...own.values()]]))
}

/** Place of a step in the house's order; a doorway done in one day stands where its lining does. */
export function rankOf(step: Step, blocks: RuledSteps["blocks"]): number {
  return stageRank(blocks.has(step.key) ? "linings" : step.stage)
}

/** New plaster is on the walls before the job starts: it dries on beside all work but what raises dust. */
function driesBeside(step: Step, before: Step): boolean {
  return step.hours === 0 && before.hours > 0 && !before.dusty
}

/** New plaster dries on while clean work goes on beside it; what is worked waits for both. */
function stageBefore(step: Step, { steps, blocks }: RuledSteps): Step[] {
  const rank = rankOf(step, blocks)
  const sameDoor = blocks.get(step.key)
  const earlier = steps.filter(
    (other) =>
      (step.room === null || other.room === step.room || other.room === null) &&
      rankOf(other, blocks) < rank &&
      (sameDoor === undefined || blocks.get(other.key) !== sameDoor),
  )
  const worked = earlier.filter((other) => other.hours > 0)
  if (step.hours === 0) return latestStage(worked.filter((other) => other.dusty))
  const found = [...latestStage(worked), ...latestStage(earlier.filter((other) => other.hours === 0))]
  return [...found, ...atDoorBefore(step, steps)]

  function latestStage(list: readonly Step[]): Step[] {
    if (step.room === null) return [...list]
    const last = Math.max(...list.map((other) => rankOf(other, blocks)))
    return list.filter((other) => rankOf(other, blocks) === last || other.room === null)
  }
}

/** At one doorway: old leaf off, lining, new leaf. */
function atDoorBefore(step: Step, steps: readonly Step[]): Step[] {
  const [trade, door, name] = step.key.split("/")
  if (trade !== "doors" || !name) return []
  const keys = doorOrder.slice(0, Math.max(0, doorOrder.indexOf(name))).map((each) => `doors/${door}/${each}`)
  return steps.filter((other) => keys.includes(other.key))
}

/** Damp before timber, heat before wood: on the whole storey. */
function timberWaits(step: Step, given: RuledSteps): Step[] {
  if (step.stage !== "acclimatise" || !step.room) return []
  const here = storeyOf(step.room, given.site)
  return given.steps.filter(
    (other) =>
      other.room &&
      storeyOf(other.room, given.site) === here &&
      (other.stage === "heat" || damp.includes(other.stage)),
  )
}

/** What a doorway asks of the rooms on its two sides. */
function doorwayWaits(step: Step, { steps, site }: RuledSteps): Step[] {
  const { room } = step
  if (!room) return []
  const doors = site.doors.filter((door) => door.between.includes(room))
  const at = (names: readonly string[]) =>
    steps.filter((other) =>
      doors.some((door) => names.some((name) => other.key === `doors/${door.id}/${name}`)),
    )
  const beyond = doors.flatMap((door) => door.between).filter((other) => other !== room)
  if (step.trade === "joinery" && step.stage === "second-fix") {
    const floors = step.key.endsWith("/thresholds")
      ? steps.filter((other) => other.stage === "floor" && other.room && beyond.includes(other.room))
      : []
    return [...at(["lining"]), ...floors]
  }
  if (step.stage === "last-coat" && step.trade === "decorating") return at(["lining", "hang"])
  if (step.trade === "doors" && step.stage === "snag") {
    const own = site.doors.find((door) => step.key.startsWith(`doors/${door.id}/`))
    return steps.filter((other) => other.stage === "last-coat" && own?.between.includes(other.room ?? ""))
  }
  return []
}

/** Oil from the far rooms to the way out; nosings when nobody has to carry anything across them any more. */
function oilWaits(step: Step, { steps, site, ways }: RuledSteps): Step[] {
  const { room } = step
  if (!room || (step.stage !== "oil" && step.stage !== "nosings")) return []
  const landings = new Set(site.rooms.filter((each) => each.use === "landing").map((each) => each.id))
  const here = storeyOf(room, site)
  const stages: readonly Stage[] = step.stage === "oil" ? ["oil"] : ["covers-off", "oil"]
  const before = (other: string) =>
    ways.behind(room).includes(other) ||
    (landings.has(room) &&
      !landings.has(other) &&
      storeyOf(other, site) === here &&
      !ways.behind(other).includes(room))
  return steps.filter(
    (other) => other.room && other.room !== room && stages.includes(other.stage) && before(other.room),
  )
}

/** A room that others are reached across is covered before work behind it begins; covers come off when that is over, and dust next door too. */
function coverWaits(step: Step, { steps, blocks, ways }: RuledSteps): Step[] {
  const { room } = step
  if (!room || step.hours === 0) return []
  const rank = rankOf(step, blocks)
  const off = stageRank("covers-off")
  if (step.trade === "floors" && rank === off)
    return steps.filter(
      (other) =>
        other.room &&
        ((ways.behind(room).includes(other.room) && rankOf(other, blocks) <= off) ||
          (ways.nextTo(room).includes(other.room) && other.dusty && rankOf(other, blocks) < off)),
    )
  const first = Math.min(
    ...steps.filter((other) => other.room === room && other.hours > 0).map((other) => rankOf(other, blocks)),
  )
  if (rank > first) return []
  return steps.filter(
    (other) =>
      other.room &&
      other.trade === "floors" &&
      other.stage === "prepare" &&
      other.key.endsWith("/cover") &&
      ways.behind(other.room).includes(room),
  )
}

/** Doors of lived-in rooms: not while plaster and oak still go up. */
function oakWaits(step: Step, { steps, site, ways, blocks }: RuledSteps): Step[] {
  if (!blocks.has(step.key)) return []
  return steps.filter(
    (other) =>
      other.room &&
      site.rooms.some((room) => room.id === other.room) &&
      !ways.lived.has(other.room) &&
      (other.stage === "acclimatise" || (other.stage === "dry-out" && other.hours > 0)),
  )
}

function storeyOf(room: string, site: Site): string | undefined {
  return site.rooms.find((each) => each.id === room)?.storey.id
}
