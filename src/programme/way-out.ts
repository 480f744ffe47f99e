import type { Site } from "./programme.ts"

type Door = Site["doors"][number]

/** The way from a room to the open air. */
export interface WayOut {
  from: string
  /** Rooms in walking order, the one it begins in first. */
  rooms: string[]
  /** Doorways and stairs passed, in walking order. */
  through: { by: "door" | "stair"; id: string }[]
  /** Doorways along it by which smoke could come onto it: its own, and every other into its rooms. */
  openings: Door[]
}

/**
 * The way out of a room: the fewest doorways and stairs to one that leads to the open air, a final exit before any other.
 * @returns null where no way leads out (a house without a doorway to outside)
 */
export function wayOut(from: string, site: Site): WayOut | null {
  const exits = site.doors.filter((door) => door.between.includes("outside"))
  const finals = exits.filter((door) => door.finalExit)
  const walked = walk(from, site, finals) ?? walk(from, site, exits)
  if (!walked) return null
  const rooms = [from, ...walked.slice(0, -1).map((step) => step.to)]
  const passed = walked.map(({ by, id }) => ({ by, id }))
  const onWay = new Set(rooms.slice(1))
  const openings = site.doors.filter(
    (door) =>
      door.between.some((room) => onWay.has(room)) ||
      passed.some((each) => each.by === "door" && each.id === door.id),
  )
  return { from, rooms, through: passed, openings }
}

interface Walked {
  to: string
  by: "door" | "stair"
  id: string
}

function walk(from: string, site: Site, exits: readonly Door[]): Walked[] | null {
  const joins = [
    ...site.doors.map((door) => ({ ends: door.between, by: "door" as const, id: door.id })),
    ...site.stairs.map((stair) => ({
      ends: [stair.fromRoom, stair.toRoom] as const,
      by: "stair" as const,
      id: stair.id,
    })),
  ]
  const isRoom = (id: string) => site.rooms.some((room) => room.id === id)
  const seen = new Set([from])
  for (let fronts: Walked[][] = [[]]; fronts.length > 0; ) {
    const next: Walked[][] = []
    for (const walked of fronts) {
      const here = walked.at(-1)?.to ?? from
      const out = exits.find((door) => door.between.includes(here))
      if (out) return [...walked, { to: "outside", by: "door", id: out.id }]
      for (const { ends, by, id } of joins) {
        const to = ends[0] === here ? ends[1] : ends[1] === here ? ends[0] : undefined
        if (to === undefined || seen.has(to) || !isRoom(to)) continue
        seen.add(to)
        next.push([...walked, { to, by, id }])
      }
    }
    fronts = next
  }
  return null
}
