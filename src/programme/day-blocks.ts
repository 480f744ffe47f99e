import type { Step } from "../trades/trade.ts"
import type { Site } from "./programme.ts"
import type { Ways } from "./ways.ts"

/** Steps at a doorway in order, which belong to one day where people live: a leaf that comes off is replaced by evening. */
export const doorOrder: readonly string[] = ["take-off", "lining", "hang"]

/**
 * Doorways of lived-in rooms whose steps must begin and end on one day, so that none stands open in the evening
 * (common practice). A doorway where something must dry in between is left out.
 * @returns door id by step key
 */
export function dayBlocks(steps: readonly Step[], site: Site, ways: Ways): Map<string, string> {
  const below = new Set(
    site.doors
      .filter(({ between }) => between.every((room) => ways.lived.has(room) || !isRoom(room, site)))
      .filter(({ between }) => between.some((room) => ways.lived.has(room)))
      .map((door) => door.id),
  )
  const found = new Map<string, string>()
  for (const step of steps) {
    const [trade, door, name] = step.key.split("/")
    if (trade === "doors" && door && name && below.has(door) && doorOrder.includes(name))
      found.set(step.key, door)
  }
  const waiting = new Set(
    steps.filter((step) => step.gate && !step.key.endsWith("/hang")).map((step) => found.get(step.key)),
  )
  const hung = new Set(
    [...found].filter(([key, door]) => key.endsWith("/hang") && !waiting.has(door)).map(([, door]) => door),
  )
  return new Map([...found].filter(([, door]) => hung.has(door)))
}

function isRoom(id: string, site: Site): boolean {
  return site.rooms.some((room) => room.id === id)
}
