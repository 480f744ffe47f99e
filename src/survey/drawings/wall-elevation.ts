import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import { regionOf } from "../../kernels/polygon/region.ts"
import { sectionAt } from "../../kernels/polygon/strips.ts"
import { fixed, type Mm, metres, mmText } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import { heightOver } from "../elevation.ts"
import type { Room, Wall } from "../room.ts"
import { freeLength, label, noFixZone, stroke } from "./pieces.ts"
import { zoneAlong } from "./room-plan.ts"

/** What an elevation needs beside its wall. */
export interface ElevationOptions {
  /** How far the finished floor stands over the room's datum, mm. */
  floor: Mm
  /** The datum in words: `deck`; empty: its mark alone. */
  datum: string
  rules: Rules
}

/** Distances of dimension lines on paper, mm. */
const lengthOffset = -7
const heightOffset = 7
/** Openings smaller than this carry their id alone, mm. */
const small: Mm = 1000
/** Size of the datum mark, mm of the room. */
const mark: Mm = 90
/** One wall seen from inside at true scale: outline, openings, heights from the datum, headroom lines, no-fix zones. */
export function wallElevationDrawing(room: Room, wall: Wall, options: ElevationOptions): Drawing {
  return {
    title: `Wall ${wall.number} of ${room.id}`,
    description: describe(wall),
    shapes: [...wallShapes(room, wall, options), { kind: "scale-bar" }],
  }
}

/** What a wall's elevation shows, in words. */
export function describe(wall: Wall): string {
  const inIt = [...wall.doors.map(({ door }) => door.id), ...wall.windows.map(({ id }) => id)]
  const heights = wall.elevation.slice(2).map(({ y }) => y)
  const [low, high] = [Math.min(...heights), Math.max(...heights)].map(mmText)
  const size = low === high ? `${high} mm high` : `${low} to ${high} mm high`
  return `Wall ${wall.number} from inside, ${mmText(wall.length)} mm long, ${size}${inIt.length > 0 ? `, with ${inIt.join(", ")}` : ""}.`
}

/** The shapes of a wall's elevation, its bottom left corner at the origin. */
export function wallShapes(room: Room, wall: Wall, { floor, datum, rules }: ElevationOptions): Shape[] {
  const { right } = boundsOf(wall.elevation)
  const number = numberPlace(wall)
  return [
    { kind: "polygon", points: wall.elevation, fill: "white", stroke: stroke(0.5) },
    ...floorLine(right, floor),
    ...headroomLines(room, wall, { floor, rules }),
    ...room.hidden
      .filter((hidden) => hidden.in === "wall" && hidden.wall === wall.number)
      .flatMap((hidden) => zoneOnWall(wall, zoneAlong(hidden, rules), hidden.what)),
    ...openingShapes(wall),
    ...datumMark(datum),
    {
      kind: "dimension",
      from: { x: 0, y: 0 },
      to: { x: right, y: 0 },
      offset: lengthOffset,
      text: mmText(right),
    },
    ...heightShapes(wall),
    {
      kind: "text",
      at: number,
      text: String(wall.number),
      height: 3.5,
      bold: true,
      masked: true,
      leader: true,
    },
  ]
}

/** A stretch of wall shorter than this has no room for the wall's number, mm. */
const roomForNumber: Mm = 300

/** The middle of the longest stretch beside the openings; over the openings where there is none. */
function numberPlace(wall: Wall): Point {
  const x = freeLength(wall, "all")
  const beside = [...wall.doors, ...wall.windows].every(
    ({ fromLeft, width }) =>
      Math.abs(x - fromLeft) > roomForNumber / 2 && Math.abs(x - fromLeft - width) > roomForNumber / 2,
  )
  const top = heightOver(wall.elevation, beside ? x : wall.length / 2)
  return beside ? { x, y: top / 2 } : { x: wall.length / 2, y: top - roomForNumber / 2 }
}

/** The finished floor, where it stands over the datum. */
function floorLine(right: Mm, floor: Mm): Shape[] {
  if (floor <= 0) return []
  return [
    { kind: "line", from: { x: 0, y: floor }, to: { x: right, y: floor }, stroke: stroke(0.25, "chain") },
  ]
}

/** The low and the full headroom over the finished floor, as far as the wall reaches so high; only in rooms with slopes. */
function headroomLines(
  room: Room,
  wall: Wall,
  { floor, rules }: Pick<ElevationOptions, "floor" | "rules">,
): Shape[] {
  if (room.ceiling.slopeArea <= 0) return []
  const headrooms = [rules.value("survey-headroom-low"), rules.value("survey-headroom-full")]
  return headrooms.flatMap((height): Shape[] => {
    const y = height + floor
    const stretches = sectionAt(regionOf(wall.elevation), y)
    const last = stretches[stretches.length - 1]
    if (!last) return []
    return [
      ...stretches.map(
        ({ from, to }): Shape => ({
          kind: "line",
          from: { x: from, y },
          to: { x: to, y },
          stroke: stroke(0.18, "dashed"),
        }),
      ),
      label({ x: last.to, y }, `${fixed(metres(height), 1)} m`),
    ]
  })
}

function zoneOnWall(wall: Wall, { from, to }: { from: Mm; to: Mm }, what: string): Shape[] {
  const { right } = boundsOf(wall.elevation)
  const [left, end] = [Math.max(0, from), Math.min(right, to)]
  if (end <= left) return []
  return noFixZone(
    [
      { x: left, y: 0 },
      { x: end, y: 0 },
      { x: end, y: heightOver(wall.elevation, end) },
      { x: left, y: heightOver(wall.elevation, left) },
    ],
    what,
  )
}

function openingShapes(wall: Wall): Shape[] {
  const doors = wall.doors.map(({ door, fromLeft, width, height }) => ({
    id: door.id,
    fromLeft,
    width,
    height,
    sill: 0,
  }))
  return [...doors, ...wall.windows].flatMap(({ id, fromLeft, width, height, sill }): Shape[] => {
    const middle: Point = { x: fromLeft + width / 2, y: sill + height / 2 }
    const size = `${mmText(width)} × ${mmText(height)}`
    const upright = height > width
    const text = Math.max(width, height) < small ? id : `${id}\n${size}`
    const under = sill > 0 ? [label({ x: fromLeft + width / 2, y: sill / 2 }, `sill ${mmText(sill)}`)] : []
    return [
      { kind: "box", at: { x: fromLeft, y: sill }, width, height, stroke: stroke(0.35), fill: "white" },
      { kind: "text", at: middle, text, height: 2.5, angle: upright ? 90 : 0, leader: true },
      ...under,
    ]
  })
}

/** A triangle on its point at the left end, with the datum that heights are counted from. */
function datumMark(datum: string): Shape[] {
  const name: Shape[] =
    datum === ""
      ? []
      : [{ kind: "text", at: { x: mark, y: 2 * mark }, text: `${datum} 0`, height: 2.5, anchor: "start" }]
  return [
    {
      kind: "polygon",
      points: [
        { x: 0, y: 0 },
        { x: -mark / 2, y: mark },
        { x: mark / 2, y: mark },
      ],
      fill: "black",
    },
    ...name,
  ]
}

/** Heights of both ends, and of the highest place between where it is higher than both. */
function heightShapes(wall: Wall): Shape[] {
  const { right, top } = boundsOf(wall.elevation)
  const ends = wall.elevation.slice(2)
  const atRight = ends[0]?.y ?? 0
  const atLeft = ends[ends.length - 1]?.y ?? 0
  const peak = ends.filter(({ y }) => y > top - 1).map(({ x }) => x)
  const at = clearOf(wall, Math.min(...peak), Math.max(...peak))
  const between = peak.length > 0 && top > Math.max(atLeft, atRight) + 1 ? { x: at, y: top } : null
  const level = Math.abs(atLeft - atRight) < 1
  return [
    heightDimension({ x: 0, y: 0 }, atLeft, heightOffset),
    ...(level ? [] : [heightDimension({ x: right, y: 0 }, atRight, -heightOffset)]),
    ...(between ? [heightDimension({ x: between.x, y: 0 }, between.y, 0)] : []),
  ].filter((shape) => shape.kind === "dimension" && shape.to.y > shape.from.y)
}

/** The place between two lengths along a wall that is furthest from its openings; the middle of them all if none is clear. */
function clearOf(wall: Wall, from: Mm, to: Mm): Mm {
  const openings = [...wall.doors, ...wall.windows].map(
    ({ fromLeft, width }) => [fromLeft, fromLeft + width] as const,
  )
  const edges = openings.flat().sort((a, b) => a - b)
  const middles = edges.slice(1).map((edge, index) => (edge + edges[index]!) / 2)
  const clear = (x: Mm) =>
    openings.some(([left, right]) => x > left && x < right)
      ? 0
      : Math.min(...edges.map((edge) => Math.abs(edge - x)), Number.MAX_VALUE)
  const tried = [(from + to) / 2, from, to, ...middles.filter((x) => x > from && x < to)]
  return tried.reduce((best, x) => (clear(x) > clear(best) ? x : best))
}

function heightDimension(foot: Point, height: Mm, offset: number): Shape {
  return { kind: "dimension", from: foot, to: { x: foot.x, y: height }, offset, text: mmText(height) }
}
