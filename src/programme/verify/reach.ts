import type { Site } from "../programme.ts"

/** Rooms one can get to from outside without setting foot in a shut one, by trying every way until nothing is added. */
export function reachable(site: Site, shut: ReadonlySet<string>): Set<string> {
  const ids = site.rooms.map((room) => room.id)
  const joins = [
    ...site.doors.map(({ between }) => [between[0], between[1]]),
    ...site.stairs.map(({ fromRoom, toRoom }) => [fromRoom, toRoom]),
  ] as [string, string][]
  const found = new Set(startsOf(site, joins).filter((id) => !shut.has(id)))
  for (let grown = true; grown; ) {
    grown = false
    for (const [a, b] of [...joins, ...joins.map(([a, b]) => [b, a] as [string, string])]) {
      if (!found.has(a) || found.has(b) || shut.has(b) || !ids.includes(b)) continue
      found.add(b)
      grown = true
    }
  }
  return found
}

/** Rooms at the open air; for rooms that nothing joins to it, the hall or landing of their lowest storey, or each of them. */
function startsOf(site: Site, joins: readonly [string, string][]): string[] {
  const open = ["outside", "garage"]
  const ids = site.rooms.map((room) => room.id)
  const starts = joins
    .flatMap(([a, b]) => (open.includes(a) ? [b] : open.includes(b) ? [a] : []))
    .filter((id) => ids.includes(id))
  const group = new Map(ids.map((id) => [id, id]))
  const head = (id: string): string => (group.get(id) === id ? id : head(group.get(id)!))
  for (const [a, b] of joins) if (ids.includes(a) && ids.includes(b)) group.set(head(a), head(b))
  for (const top of new Set(ids.map(head))) {
    const own = site.rooms.filter((room) => head(room.id) === top)
    if (own.some((room) => starts.includes(room.id))) continue
    const low = Math.min(...own.map((room) => room.storey.deck))
    const ways = own.filter((room) => room.storey.deck === low && ["hall", "landing"].includes(room.use))
    starts.push(...(ways.length > 0 ? ways : own).map((room) => room.id))
  }
  return starts
}

/** Rooms that people live in: all of an occupied house but storeys that only new stairs lead to. */
export function lived({ rooms, stairs, occupied }: Site): (room: string) => boolean {
  const isNew = (storey: string) => {
    const up = stairs.filter((stair) => stair.to === storey)
    return up.length > 0 && up.every((stair) => stair.new)
  }
  return (id) => occupied && rooms.some((room) => room.id === id && !isNew(room.storey.id))
}
