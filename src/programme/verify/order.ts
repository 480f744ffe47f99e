import { stages } from "../../trades/stages.ts"
import type { Checked, DatedStep, Site } from "../programme.ts"
import { lived, reachable } from "./reach.ts"
import { isReported } from "./time.ts"

type Pair = (before: DatedStep, after: DatedStep) => boolean

/** Own lists, stages of a room, and the rules of the house, each told as "this before that" and tried on all pairs. */
export function orderBroken({ programme, site, file }: Checked): string[] {
  const { steps } = programme
  const found: string[] = []
  const rules = rulesOf(site, lived(site))
  for (const after of steps) {
    if (isReported(after, file)) continue
    for (const before of steps) {
      if (before === after) continue
      for (const [name, asks] of rules) {
        const until = name === "oak up before doors below" ? before.finish : before.ready
        if (after.start < until && asks(before, after))
          found.push(`${after.step.key} starts before ${before.step.key} is ready: ${name}`)
      }
    }
  }
  return found
}

function rulesOf(site: Site, isLived: (room: string) => boolean): [string, Pair][] {
  const isBelow = remembered((each: DatedStep) => isDoorBelow(each, site, isLived))
  const place = remembered((each: DatedStep) => stages.indexOf(isBelow(each) ? "linings" : each.step.stage))
  const room = (each: DatedStep) => each.step.room
  const storey = remembered((each: DatedStep) => site.rooms.find(({ id }) => id === room(each))?.storey.id)
  const sameRoom: Pair = (a, b) => room(a) !== null && room(a) === room(b)
  const sides = remembered(
    (each: DatedStep): readonly string[] =>
      site.doors.find(({ id }) => each.step.key.startsWith(`doors/${id}/`))?.between ?? [],
  )
  const openWithout = remembered((near: string) => reachable(site, new Set([near])))
  const behind = (far: string | null, near: string | null) =>
    far !== null && near !== null && far !== near && !openWithout(near).has(far)
  const dries = (each: DatedStep) => each.step.hours === 0
  return [
    [
      "its own list",
      (a, b) => b.step.after.includes(a.step.key) && !(dries(b) && !dries(a) && !a.step.dusty),
    ],
    [
      "stages of the room",
      (a, b) => sameRoom(a, b) && place(a) < place(b) && (!dries(b) || (a.step.dusty && !dries(a))),
    ],
    [
      "damp and heat before wood",
      (a, b) =>
        b.step.stage === "acclimatise" &&
        storey(a) !== undefined &&
        storey(a) === storey(b) &&
        ["dry-out", "mist", "tile", "heat"].includes(a.step.stage),
    ],
    [
      "doors before the last coat",
      (a, b) =>
        b.step.stage === "last-coat" &&
        b.step.trade === "decorating" &&
        /^doors\/.*\/(lining|hang)$/.test(a.step.key) &&
        sides(a).includes(room(b) ?? ""),
    ],
    [
      "linings before architraves",
      (a, b) =>
        b.step.key.endsWith("/architraves") &&
        a.step.key.endsWith("/lining") &&
        sides(a).includes(room(b) ?? ""),
    ],
    [
      "far oil before near oil",
      (a, b) => a.step.stage === "oil" && b.step.stage === "oil" && behind(room(a), room(b)),
    ],
    [
      "stairs and nosings last",
      (a, b) => b.step.stage === "nosings" && a.step.stage === "oil" && behind(room(a), room(b)),
    ],
    [
      "covers on before, off after",
      (a, b) =>
        (a.step.key.endsWith("/cover") &&
          a.step.stage === "prepare" &&
          b.step.hours > 0 &&
          behind(room(b), room(a))) ||
        (b.step.trade === "floors" &&
          b.step.stage === "covers-off" &&
          place(a) <= stages.indexOf("covers-off") &&
          behind(room(a), room(b))),
    ],
    [
      "oak up before doors below",
      (a, b) => isBelow(b) && a.step.stage === "acclimatise" && room(a) !== null && !isLived(room(a)!),
    ],
  ]
}

/** A question whose answers are kept. */
function remembered<K, V>(ask: (key: K) => V): (key: K) => V {
  const known = new Map<K, V>()
  return (key) => {
    if (!known.has(key)) known.set(key, ask(key))
    return known.get(key)!
  }
}

/** Old leaf, lining and new leaf of a doorway between rooms that people live in. */
export function isDoorBelow({ step }: DatedStep, site: Site, isLived: (room: string) => boolean): boolean {
  const match = /^doors\/([^/]+)\/(take-off|lining|hang)$/.exec(step.key)
  const door = site.doors.find(({ id }) => id === match?.[1])
  if (!door) return false
  const own = door.between.filter((id) => site.rooms.some((room) => room.id === id))
  return own.length > 0 && own.every(isLived)
}
