import type { At, Finding } from "../../kernels/finding.ts"
import type { Room, Wall } from "../../survey/room.ts"
import type { FloorInputs } from "./inputs.ts"
import { firstRowNotAlong, noSuchWall } from "./messages.ts"

/** Which way boards run, and where the first row lies. */
export interface Direction {
  wall: Wall
  /** Why, for the reader. */
  why: string
  findings: Finding[]
}

/** Walls within this of one direction run the same way: sine of the angle between them. */
const sameWay = 0.35

/**
 * The wall that the first row lies against. As written; else at right angles to the joists where they are known in this room;
 * else along the longest wall. Of several walls that run that way the longest is taken.
 * @param at where the floor's inputs were written
 */
export function direction(room: Room, input: FloorInputs, at: At): Direction {
  const findings: Finding[] = []
  const named = (key: "along" | "firstRowFrom"): Wall | undefined => {
    const number = input[key]
    if (number === undefined) return undefined
    const wall = room.walls.find((candidate) => candidate.number === number)
    if (!wall) findings.push(noSuchWall({ ...at, path: [...at.path, key] }, number, room.walls.length))
    return wall
  }
  const along = named("along")
  const first = named("firstRowFrom")
  if (along && first && sineBetween(along, first) > sameWay) {
    findings.push(firstRowNotAlong({ ...at, path: [...at.path, "firstRowFrom"] }, first.number, along.number))
    return { wall: along, why: `along wall ${along.number}, as chosen`, findings }
  }
  const chosen = first ?? along
  if (chosen) return { wall: chosen, why: `along wall ${chosen.number}, as chosen`, findings }
  return { ...byRule(room), findings }
}

/** The longest wall that runs the way of the boards, and the longest that runs across them; undefined where none does. */
export function alongWall(room: Room, { wall }: Direction): Wall | undefined {
  return longestOf(room.walls.filter((other) => sineBetween(wall, other) < sameWay))
}

/** See `alongWall`. */
export function acrossWall(room: Room, { wall }: Direction): Wall | undefined {
  return longestOf(room.walls.filter((other) => cosineBetween(wall, other) < sameWay))
}

function longestOf(walls: readonly Wall[]): Wall | undefined {
  return walls.length > 0
    ? walls.reduce((best, wall) => (wall.length > best.length ? wall : best))
    : undefined
}

/** The wall of this room that its joists run along, if that is known. */
export function joistWall(room: Room): Wall | undefined {
  const joists = room.storey.joists
  if (joists?.alongWallOf !== room.id) return undefined
  return room.walls.find((wall) => wall.number === joists.wall)
}

function byRule(room: Room): Omit<Direction, "findings"> {
  const joists = joistWall(room)
  const across = joists ? room.walls.filter((wall) => cosineBetween(joists, wall) < sameWay) : []
  if (across.length > 0) {
    const wall = longest(across)
    return { wall, why: `along wall ${wall.number}, at right angles to the joists` }
  }
  const wall = longest(room.walls)
  return { wall, why: `along wall ${wall.number}, the longest; joists not known in this room` }
}

function longest(walls: readonly Wall[]): Wall {
  const closed = walls.filter((wall) => wall.is !== "open-edge")
  return (closed.length > 0 ? closed : walls).reduce((best, wall) =>
    wall.length > best.length ? wall : best,
  )
}

function unit(wall: Wall): { x: number; y: number } {
  const x = wall.end.x - wall.start.x
  const y = wall.end.y - wall.start.y
  const length = Math.hypot(x, y)
  return { x: x / length, y: y / length }
}

function sineBetween(a: Wall, b: Wall): number {
  const [u, v] = [unit(a), unit(b)]
  return Math.abs(u.x * v.y - u.y * v.x)
}

function cosineBetween(a: Wall, b: Wall): number {
  const [u, v] = [unit(a), unit(b)]
  return Math.abs(u.x * v.x + u.y * v.y)
}
