import type { DoorEntry } from "../intake/schema/house.ts"
import type { RoomFile } from "../intake/schema/room.ts"
import type { Finding } from "../kernels/finding.ts"
import { interiorAngles } from "../kernels/polygon/angles.ts"
import { difference } from "../kernels/polygon/clip.ts"
import { area, perimeter, regionArea } from "../kernels/polygon/measure.ts"
import type { Point } from "../kernels/polygon/point.ts"
import { regionOf } from "../kernels/polygon/region.ts"
import { type Mm, metres, squareMetres } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import {
  ceilingParts,
  type Dormer,
  higherThan,
  type Overhead,
  overhead,
  planeHeight,
  roofWindowPlan,
} from "./ceiling.ts"
import { heightOver, wallElevation } from "./elevation.ts"
import { measuredOutline } from "./outline.ts"
import { rectangleOff } from "./plan-geometry.ts"
import { revealsOf } from "./reveals.ts"
import type { CeilingPart, DoorInWall, HoleInFloor, Room, Storey, Wall, WindowInRoom } from "./room.ts"
import { measuredSection } from "./section.ts"

/** What a room stands in: its storey, the doorways of the house, the rulebook in force. */
export interface RoomSetting {
  storey: Storey
  doors: readonly DoorEntry[]
  rules: Rules
}

/**
 * A room with its true geometry, from the file as written.
 * @param file     the room as taped; `at` is its file name for findings
 * @param house    storeys and doorways
 * @returns the room; what its measurements cannot satisfy stands in its findings
 */
export function roomFrom(file: RoomFile, at: string, house: RoomSetting): Room {
  const { storey, doors, rules } = house
  const { corners, adjusted, trust, findings } = measuredOutline(file, at, rules)
  const ends = (wall: number): [Point, Point] => [corners[wall - 1]!, corners[wall % corners.length]!]
  const section = measuredSection({ file, at, rules, corners })
  const over = overhead(section.ceiling, ends)
  const inside = regionOf(corners)
  const holes = file.holes.map((hole) => holeInFloor(hole, ends))
  const doorsHere = file.doors.flatMap((place) => doorInWall(place, { file, doors, storey }))
  const walls = wallsOf({ file, corners, adjusted, over, ends, doors: doorsHere })
  const parts = ceilingParts(inside, over, roofWindowsOf(file, ends))
  const higher = (height: Mm, buildUp: Mm) =>
    higherThan(inside, over, height + floorAboveDatum(file, storey, buildUp))
  const open = holes.filter((hole) => !hole.floored).map((hole) => regionOf(hole.outline))
  const floor = open.length > 0 ? difference([inside], open) : [inside]
  const tops = walls.flatMap((wall) => wall.elevation.slice(2).map((point) => point.y))
  const level = Math.max(...section.ceiling.heights)
  return {
    id: file.id,
    name: file.name,
    use: file.use,
    storey,
    file: at,
    measured: file.measured,
    outline: corners,
    walls,
    holes,
    trust,
    section: section.trust,
    area: squareMetres(area(corners)),
    floorArea: squareMetres(floor.reduce((sum, region) => sum + regionArea(region), 0)),
    perimeter: perimeter(corners),
    ceiling: {
      parts,
      heights: file.ceiling.heights,
      lowest: Math.min(...tops),
      highest: level,
      flatArea: areaOf(parts, ["flat", "dormer", "bulkhead"]),
      slopeArea: areaOf(parts, ["slope"]),
      slopeNet: parts.filter((part) => part.kind === "slope").reduce((sum, part) => sum + part.net, 0),
      obstacles: file.ceiling.obstacles,
    },
    wallGross: walls.reduce((sum, wall) => sum + wall.gross, 0),
    wallNet: walls.reduce((sum, wall) => sum + wall.net, 0),
    headroom: (height, floorBuildUp) =>
      squareMetres(higher(height, floorBuildUp).reduce((sum, region) => sum + regionArea(region), 0)),
    headroomPlan: higher,
    volume: parts.reduce((sum, part) => sum + part.planArea * metres(part.meanHeight), 0),
    reveals: revealsOf(file.windows),
    joists: joistsOf(file, storey),
    doors: doorsHere,
    windows: file.windows,
    hidden: file.hidden,
    readings: file.readings,
    photos: file.photos,
    stays: file.stays,
    notes: file.notes,
    findings: [...findings, ...section.findings, ...openingFindings(walls, at)],
  }
}

/** How far the finished floor stands above the room's own datum, mm. */
export function floorAboveDatum(room: Pick<RoomFile, "measured">, storey: Storey, floorBuildUp: Mm): Mm {
  if (room.measured.heightsFrom === "deck") return floorBuildUp
  if (room.measured.heightsFrom === "old-floor") return floorBuildUp - storey.finishNow
  return 0
}

function areaOf(parts: readonly CeilingPart[], kinds: CeilingPart["kind"][]): number {
  return parts.filter((part) => kinds.includes(part.kind)).reduce((sum, part) => sum + part.area, 0)
}

function holeInFloor(hole: RoomFile["holes"][number], ends: (wall: number) => [Point, Point]): HoleInFloor {
  const [start, end] = ends(hole.wall)
  const outline = rectangleOff(start, end, {
    from: hole.fromLeft,
    to: hole.fromLeft + hole.width,
    off: hole.off,
    depth: hole.depth,
  })
  const { id, name, floored, width, depth, wall } = hole
  return { id, name, floored, width, depth, wall, outline }
}

/** Joists as taped in the room; else as the storey says, where it says so of a wall of this room. */
function joistsOf(file: RoomFile, { joists }: Storey): Room["joists"] {
  if (file.joists) return file.joists
  if (joists?.alongWallOf !== file.id || joists.wall === undefined) return undefined
  return { wall: joists.wall, centres: joists.centres, firstFrom: joists.firstFrom }
}

function roofWindowsOf(file: RoomFile, ends: (wall: number) => [Point, Point]) {
  return file.windows.flatMap((window) => {
    const slope = file.ceiling.slopes.find((each) => each.wall === window.wall)
    if (window.kind !== "roof-window" || !slope) return []
    return [roofWindowPlan(window, slope.pitch, ends(window.wall))]
  })
}

interface DoorSetting {
  file: RoomFile
  doors: readonly DoorEntry[]
  storey: Storey
}

function doorInWall(place: RoomFile["doors"][number], { file, doors, storey }: DoorSetting): DoorInWall[] {
  const door = doors.find((each) => each.id === place.door)
  if (!door) return []
  const width = Math.max(...door.widths)
  const height = Math.max(...door.heights) + datumStep(door.heightsFrom, file.measured.heightsFrom, storey)
  return [{ door, wall: place.wall, fromLeft: place.fromLeft, width, height }]
}

/** How far a height's own datum stands over the room's, where both are known now; a floor still to be laid is not. */
function datumStep(
  from: DoorEntry["heightsFrom"],
  to: RoomFile["measured"]["heightsFrom"],
  storey: Storey,
): Mm {
  const level = { deck: 0, "old-floor": storey.finishNow } as Record<string, Mm>
  const [above, below] = [level[from], level[to]]
  return above === undefined || below === undefined ? 0 : above - below
}

interface WallsTask {
  file: RoomFile
  corners: Point[]
  adjusted: Mm[]
  over: Overhead
  ends: (wall: number) => [Point, Point]
  doors: DoorInWall[]
}

function wallsOf({ file, corners, adjusted, over, ends, doors }: WallsTask): Wall[] {
  const angles = interiorAngles(corners)
  return file.outline.map((run, index): Wall => {
    const number = index + 1
    const [start, end] = ends(number)
    const elevation = wallElevation(start, end, over)
    const cheeks = over.dormers
      .filter((dormer) => dormer.wall === number)
      .reduce((sum, dormer) => sum + dormerCheeks(dormer, dwarfUnder(dormer, over, start)), 0)
    const gross = squareMetres(area(elevation) + cheeks)
    const doorsHere = doors.filter((door) => door.wall === number)
    const windowsHere = file.windows.filter(
      (window) => window.wall === number && window.kind !== "roof-window",
    )
    return {
      number,
      is: run.is,
      name: run.name,
      length: adjusted[index]!,
      taped: run.length,
      start,
      end,
      angleAtStart: angles[index]!,
      angleAtEnd: angles[(index + 1) % angles.length]!,
      elevation,
      gross,
      net: gross - openingsArea(doorsHere, windowsHere),
      doors: doorsHere,
      windows: windowsHere,
    }
  })
}

/** Both cheeks of a dormer above the slope, mm2: under its ceiling from the dwarf wall to where it ends in the room. */
function dormerCheeks({ height, reach }: Dormer, { dwarf, rise }: { dwarf: Mm; rise: number }): number {
  return 2 * reach * Math.max(0, height - dwarf) - reach ** 2 * rise
}

function dwarfUnder({ wall }: Dormer, over: Overhead, start: Point): { dwarf: Mm; rise: number } {
  const slope = over.planes.find((plane) => plane.kind === "slope" && plane.wall === wall)
  if (!slope) return { dwarf: 0, rise: 0 }
  return { dwarf: planeHeight(slope, start), rise: Math.hypot(slope.dx, slope.dy) }
}

function openingsArea(doors: readonly DoorInWall[], windows: readonly WindowInRoom[]): number {
  const openings = [...doors, ...windows]
  return squareMetres(openings.reduce((sum, opening) => sum + opening.width * opening.height, 0))
}

/** Doors and windows that reach above the wall they stand in (under a slope, say). */
function openingFindings(walls: readonly Wall[], file: string): Finding[] {
  return walls.flatMap((wall) => [
    ...wall.doors.flatMap((door): Finding[] => {
      const top = lowestOver(wall.elevation, door.fromLeft, door.fromLeft + door.width)
      if (door.height <= top) return []
      return [tooHigh(file, `Doorway ${door.door.id}`, door.height, wall.number, top)]
    }),
    ...wall.windows.flatMap((window): Finding[] => {
      const top = lowestOver(wall.elevation, window.fromLeft, window.fromLeft + window.width)
      if (window.sill + window.height <= top) return []
      return [tooHigh(file, `Window ${window.id}`, window.sill + window.height, wall.number, top)]
    }),
  ])
}

function lowestOver(elevation: readonly Point[], from: Mm, to: Mm): Mm {
  const corners = elevation.slice(2).filter((point) => point.x > from && point.x < to)
  return Math.min(heightOver(elevation, from), heightOver(elevation, to), ...corners.map((point) => point.y))
}

function tooHigh(file: string, what: string, height: Mm, wall: number, top: Mm): Finding {
  return {
    code: "opening-above-wall",
    severity: "error",
    at: { file, path: ["ceiling"] },
    message: `${what} reaches ${Math.round(height)} mm but wall ${wall} is only ${Math.round(top)} mm high over it.`,
    mend: "Look again at its place along the wall, its height, and the heights and slopes of the ceiling.",
  }
}
