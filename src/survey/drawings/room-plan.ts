import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import { halfPlane } from "../../kernels/polygon/clip.ts"
import { between, type Point } from "../../kernels/polygon/point.ts"
import { edgesOf, regionOf } from "../../kernels/polygon/region.ts"
import { fixed, type Mm, metres, mmText } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import { roofWindowPlan } from "../ceiling.ts"
import { offWall, rectangleOff, unitAlong } from "../plan-geometry.ts"
import type { Room, Wall } from "../room.ts"
import {
  freeLength,
  gapInWall,
  label,
  leafOnPlan,
  middle,
  noFixZone,
  stroke,
  windowOnPlan,
} from "./pieces.ts"

/** What the plan needs beside the room. */
export interface PlanOptions {
  /** Thickness of the floor to come over the deck, for the headroom line, mm. */
  floorBuildUp: Mm
  rules: Rules
  /** Draws the first joists too; on a small plan they are left out. */
  joists?: boolean
}

/** Distance of dimension lines outside the wall on paper, mm. */
const dimensionOffset = 7
const shortOffset = 3
/** Shorter walls carry their dimension close by, in small figures, mm. */
const shortWall: Mm = 700
/** Distance of wall numbers and door names inside the wall, mm of the room. */
const numberInside: Mm = 230
/**
 * The plan of a room as surveyed: walls with numbers and lengths, openings with their swing, holes and cupboards, slopes and
 * beams overhead, the line of 1.5 m headroom over the finished floor, no-fix zones, first joist. Millimetres of the room.
 */
export function roomPlan(room: Room, { floorBuildUp, rules, joists: showsJoists }: PlanOptions): Drawing {
  const headroom = headroomLine(room, floorBuildUp, rules.value("survey-headroom-low"))
  const zones = room.hidden.flatMap((hidden) => zoneOnPlan(hidden, room, rules))
  const joists = showsJoists ? joistLine(room) : []
  const shapes: Shape[] = [
    { kind: "polygon", points: room.outline, fill: "white", stroke: stroke(0.7) },
    ...overheadLines(room),
    ...headroom,
    ...joists,
    ...room.holes.flatMap(holeShapes),
    ...zones,
    ...room.walls.flatMap((wall) => [...openings(wall, room), ...wallText(wall)]),
    { kind: "scale-bar" },
  ]
  const walls = room.walls.map((wall) => `wall ${wall.number} ${mmText(wall.length)} mm`).join(", ")
  return {
    title: `Plan of ${room.name}`,
    description: `Plan of ${room.name}, ${room.walls.length} walls numbered clockwise from the entry; ${walls}.`,
    shapes,
  }
}

function wallText(wall: Wall): Shape[] {
  const at = offWall(wall, freeLength(wall), numberInside)
  return [
    {
      kind: "dimension",
      from: wall.start,
      to: wall.end,
      text: mmText(wall.length),
      ...(wall.length < shortWall ? { offset: shortOffset, height: 2.5 } : { offset: dimensionOffset }),
    },
    { kind: "text", at, text: String(wall.number), height: 3.5, bold: true, masked: true, leader: true },
  ]
}

/** Dotted: where slopes, dormers and bulkheads begin; roof windows as boxes. */
function overheadLines(room: Room): Shape[] {
  const parts = room.ceiling.parts.filter((part) => part.kind !== "flat" && part.plan.length > 2)
  const lines = parts.map(
    (part): Shape => ({ kind: "polygon", points: part.plan, stroke: stroke(0.18, "dotted") }),
  )
  const windows = room.windows.flatMap((window): Shape[] => {
    const wall = room.walls.find((each) => each.number === window.wall)
    const slope = room.ceiling.parts.find((part) => part.kind === "slope" && part.wall === window.wall)
    if (window.kind !== "roof-window" || !wall || !slope) return []
    const { plan } = roofWindowPlan(window, slope.pitch, [wall.start, wall.end])
    return [{ kind: "polygon", points: plan, stroke: stroke(0.25, "dashed") }, label(middle(plan), window.id)]
  })
  return [...lines, ...windows]
}

/** Dashed: where the ceiling comes down to a headroom over the finished floor; only its stretches inside the room. */
function headroomLine(room: Room, floorBuildUp: Mm, headroom: Mm): Shape[] {
  const lines = room
    .headroomPlan(headroom, floorBuildUp)
    .flatMap((region) => edgesOf(region.outline))
    .filter(({ from, to }) => !isOnWall(between(from, to, 1 / 2), room))
  return lines.flatMap(({ from, to }, index): Shape[] => [
    { kind: "line", from, to, stroke: stroke(0.35, "dashed") },
    ...(index === 0 || lines.length <= 2
      ? [label(between(from, to, 1 / 2), `${fixed(metres(headroom), 1)} m`)]
      : []),
  ])
}

/** Nearer to a wall than this a line lies on it, mm. */
const onWall: Mm = 2

function isOnWall(point: Point, { walls }: Room): boolean {
  return walls.some(({ start, end }) => {
    const along = unitAlong(start, end)
    const off = (point.x - start.x) * along.y - (point.y - start.y) * along.x
    const at = (point.x - start.x) * along.x + (point.y - start.y) * along.y
    return (
      Math.abs(off) < onWall && at > -onWall && at < Math.hypot(end.x - start.x, end.y - start.y) + onWall
    )
  })
}

/** The first joist as a chain line, with its distance and the centres; nothing where they are not known. */
function joistLine(room: Room): Shape[] {
  const { joists } = room
  const wall = joists && room.walls.find((each) => each.number === joists.wall)
  if (!joists || !wall) return []
  const centres = joists.centres === undefined ? "" : `, then at ${mmText(joists.centres)}`
  const first = joists.firstFrom
  const off = (first ?? 0) + (joists.centres ?? numberInside)
  const text =
    first === undefined
      ? `joists along wall ${wall.number}`
      : `joist ${mmText(first)} from wall ${wall.number}${centres}`
  const lines = first === undefined ? [off] : [first, off]
  const reach = Math.hypot(wall.end.x - wall.start.x, wall.end.y - wall.start.y)
  return [
    ...lines.flatMap((each) => lineInside(room, wall, each)),
    label(offWall(wall, reach / 2, off), text),
  ]
}

/** A line along a wall at a distance into the room, clipped to the room. */
function lineInside(room: Room, wall: Wall, away: Mm): Shape[] {
  const hair = onWall
  const near = halfPlane(regionOf(room.outline), offWall(wall, 0, away), offWall(wall, 1, away), "right")
  const strip = near.flatMap((region) =>
    halfPlane(region, offWall(wall, 0, away + hair), offWall(wall, 1, away + hair), "left"),
  )
  return strip.map((piece): Shape => {
    const along = unitAlong(wall.start, wall.end)
    const reach = piece.outline.map(
      (point) => (point.x - wall.start.x) * along.x + (point.y - wall.start.y) * along.y,
    )
    return {
      kind: "line",
      from: offWall(wall, Math.min(...reach), away),
      to: offWall(wall, Math.max(...reach), away),
      stroke: stroke(0.18, "chain"),
    }
  })
}

function holeShapes(hole: Room["holes"][number]): Shape[] {
  const outline: Shape = {
    kind: "polygon",
    points: hole.outline,
    stroke: hole.floored ? stroke(0.25, "dashed") : stroke(0.5),
  }
  const cross = hole.floored
    ? []
    : [0, 1].map(
        (index): Shape => ({
          kind: "line",
          from: hole.outline[index]!,
          to: hole.outline[index + 2]!,
          stroke: stroke(0.25),
        }),
      )
  return [outline, ...cross, label(middle(hole.outline), hole.name)]
}

/** A floor's zone reaches into the room from the wall it was found at; a wall's lies across the wall's line. */
function zoneOnPlan(hidden: Room["hidden"][number], room: Room, rules: Rules): Shape[] {
  const wall = room.walls.find((each) => each.number === hidden.wall)
  if (!wall) return []
  const { from, to } = zoneAlong(hidden, rules)
  const half = rules.value("survey-no-fix-half-width")
  const box =
    hidden.in === "floor"
      ? { from, to, off: 0, depth: rules.value("survey-no-fix-depth") }
      : { from, to, off: -half, depth: 2 * half }
  return noFixZone(rectangleOff(wall.start, wall.end, box), hidden.what)
}

/** From where to where along its wall nothing may be fixed, mm from the wall's left end. */
export function zoneAlong(hidden: Room["hidden"][number], rules: Rules): { from: Mm; to: Mm } {
  const half = rules.value("survey-no-fix-half-width")
  const other = hidden.to ?? hidden.fromLeft
  return { from: Math.min(hidden.fromLeft, other) - half, to: Math.max(hidden.fromLeft, other) + half }
}

function openings(wall: Wall, room: Room): Shape[] {
  return [
    ...wall.doors.flatMap((door) => [
      ...gapInWall(wall, door),
      ...leafOnPlan(door, wall, room),
      label(offWall(wall, door.fromLeft + door.width / 2, numberInside), door.door.id),
    ]),
    ...wall.windows.flatMap((window) => [
      windowOnPlan(wall, window),
      label(offWall(wall, window.fromLeft + window.width / 2, numberInside), window.id),
    ]),
  ]
}
