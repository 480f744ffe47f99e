import type { Site } from "./programme.ts"

/** How one gets about in the house. */
export interface Ways {
  /** Rooms reached only across this one. */
  behind(room: string): readonly string[]
  /** True if a room can be reached from outside while none of the shut rooms is crossed or stood in. */
  reached(room: string, shut: ReadonlySet<string>): boolean
  /** Rooms a doorway away. */
  nextTo(room: string): readonly string[]
  /** Rooms of an occupied house that people live in during the work: none on a storey that only new stairs lead to. */
  lived: ReadonlySet<string>
  /** Those of them that people sleep in. */
  slept: ReadonlySet<string>
}

/**
 * The ways of a house: doorways, hatches and stairs between its rooms, from outside in. Rooms that no way joins to the
 * outside are entered from their hall or landing on the lowest storey they have, or, without one, each by itself.
 */
export function waysOf(site: Site): Ways {
  const next = neighbours(site)
  const entries = entriesOf(site, next)
  const known = new Map<string, Set<string>>()
  const reachedWithout = (shut: ReadonlySet<string>): Set<string> => {
    const name = [...shut].sort().join(" ")
    const found = known.get(name) ?? flood(entries, next, shut)
    known.set(name, found)
    return found
  }
  const ids = site.rooms.map((room) => room.id)
  const behind = new Map(
    ids.map((id) => {
      const open = reachedWithout(new Set([id]))
      return [id, ids.filter((other) => other !== id && !open.has(other))] as const
    }),
  )
  const lived = livedIn(site)
  return {
    behind: (room) => behind.get(room) ?? [],
    reached: (room, shut) => !next.has(room) || reachedWithout(shut).has(room),
    nextTo: (room) => next.get(room) ?? [],
    lived,
    slept: new Set(
      site.rooms.filter((room) => lived.has(room.id) && room.use === "bedroom").map((room) => room.id),
    ),
  }
}

function neighbours({ rooms, doors, stairs }: Site): Map<string, string[]> {
  const next = new Map<string, string[]>(rooms.map((room) => [room.id, []]))
  const joins = [
    ...doors.map((door) => door.between),
    ...stairs.map((stair) => [stair.fromRoom, stair.toRoom] as const),
  ]
  for (const [a, b] of joins) {
    if (a === b || !next.has(a) || !next.has(b)) continue
    next.get(a)!.push(b)
    next.get(b)!.push(a)
  }
  return next
}

function entriesOf({ rooms, doors }: Site, next: ReadonlyMap<string, string[]>): string[] {
  const outside = doors.flatMap(({ between: [a, b] }) =>
    a === "outside" || a === "garage" ? [b] : b === "outside" || b === "garage" ? [a] : [],
  )
  const entries = [...new Set(outside)].filter((id) => next.has(id))
  const joined = flood(entries, next, new Set())
  for (const { id } of rooms) {
    if (joined.has(id)) continue
    const island = flood([id], next, new Set())
    const own = rooms.filter((room) => island.has(room.id))
    const lowest = Math.min(...own.map((room) => room.storey.deck))
    const ways = own.filter(
      (room) => room.storey.deck === lowest && (room.use === "hall" || room.use === "landing"),
    )
    for (const room of ways.length > 0 ? ways : own) entries.push(room.id)
    for (const room of own) joined.add(room.id)
  }
  return entries
}

function flood(
  from: readonly string[],
  next: ReadonlyMap<string, string[]>,
  shut: ReadonlySet<string>,
): Set<string> {
  const found = new Set(from.filter((id) => !shut.has(id)))
  for (const id of found) for (const other of next.get(id) ?? []) if (!shut.has(other)) found.add(other)
  return found
}

/** Rooms that are no part of a storey which only new stairs lead up to. */
function livedIn({ rooms, stairs, occupied }: Site): Set<string> {
  if (!occupied) return new Set()
  const old = new Set(stairs.filter((stair) => !stair.new).map((stair) => stair.to))
  const added = new Set(stairs.filter((stair) => stair.new && !old.has(stair.to)).map((stair) => stair.to))
  return new Set(rooms.filter((room) => !added.has(room.storey.id)).map((room) => room.id))
}
