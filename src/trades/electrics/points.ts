import type { Finding } from "../../kernels/finding.ts"
import type { Mm } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { Wall } from "../../survey/room.ts"
import { finishedFloor } from "../finished-floor.ts"
import type { Task } from "../trade.ts"
import type { ElectricsInputs, Point, PointKind } from "./inputs.ts"
import { type WetZone, wetZone } from "./wet-zones.ts"

/** A point as scheduled: numbered in the room, its height from the finished floor and from the room's datum. */
export interface ScheduledPoint {
  number: number
  point: Point
  /** Finished floor to the centre, mm; null on a ceiling or slope. */
  height: Mm | null
  /** True where the height is the rule's, not the author's. */
  byRule: boolean
  /** From the room's own datum, mm; null on a ceiling. */
  fromDatum: Mm | null
  /** Zone round a bath or shower; null where the room has none. */
  zone: WetZone | null
}

/** Words for a kind of point. */
export const pointWords: Record<PointKind, string> = {
  socket: "socket",
  switch: "switch",
  spur: "fused spur",
  "pull-cord": "pull cord",
  light: "light",
  fan: "fan",
  "smoke-alarm": "smoke alarm",
  "heat-alarm": "heat alarm",
  data: "data point",
}

/** Points of a room in order of wall, then from the left, numbered from 1. */
export function scheduledPoints(task: Task<ElectricsInputs>): ScheduledPoint[] {
  const floor = finishedFloor(task)
  return [...task.input.points]
    .sort((a, b) => a.wall - b.wall || a.fromLeft - b.fromLeft)
    .map((point, index) => {
      const wall = task.room.walls.find((each) => each.number === point.wall)
      const height =
        point.on === "wall" ? (point.height ?? usualHeight(point, wall, floor, task.job.rules)) : null
      const fromDatum = height === null ? null : height + floor
      const zone = wetZone(task, point, height)
      return { number: index + 1, point, height, byRule: point.height === undefined, fromDatum, zone }
    })
}

/** The entry that gives a kind's height. */
export function heightRule(kind: PointKind): string {
  if (kind === "socket" || kind === "data") return "elec-socket-height"
  if (kind === "pull-cord") return "elec-cord-height"
  if (kind === "fan" || kind === "light" || kind.endsWith("alarm")) return "elec-fan-below-ceiling"
  return "elec-switch-height"
}

function usualHeight(point: Point, wall: Wall | undefined, floor: Mm, rules: Rules): Mm {
  const rule = heightRule(point.kind)
  if (rule !== "elec-fan-below-ceiling") return rules.value(rule)
  const top = Math.max(0, ...(wall?.elevation ?? []).map((corner) => corner.y))
  return Math.round(top - floor - rules.value(rule))
}

/** What cannot be, or wants the electrician's word, about the points of a room. */
export function pointFindings(task: Task<ElectricsInputs>, points: ScheduledPoint[]): Finding[] {
  return points.flatMap((each): Finding[] => {
    const index = task.input.points.indexOf(each.point)
    const at = { file: task.at.file, path: [...task.at.path, "points", index] }
    const wall = task.room.walls.find((other) => other.number === each.point.wall)
    if (!wall) {
      return [
        {
          code: "no-such-wall",
          severity: "error",
          at: { ...at, path: [...at.path, "wall"] },
          message: `${task.room.id} has no wall ${each.point.wall}.`,
        },
      ]
    }
    return placeFindings(task, each, wall).map((finding) => ({
      ...finding,
      at: { ...at, path: [...at.path, ...finding.at.path] },
    }))
  })
}

function placeFindings(task: Task<ElectricsInputs>, each: ScheduledPoint, wall: Wall): Finding[] {
  const { point, height } = each
  const { rules } = task.job
  const what = `The ${pointWords[point.kind]} on wall ${wall.number}`
  const found: Finding[] = []
  const add = (code: string, severity: Finding["severity"], path: string, message: string, mend: string) =>
    found.push({ code, severity, at: { file: "", path: [path] }, message, mend })
  if (point.fromLeft > wall.length) {
    add(
      "point-off-wall",
      "error",
      "fromLeft",
      `${what} stands ${Math.round(point.fromLeft)} mm from the left; the wall is ${Math.round(wall.length)} mm long.`,
      "Measure again from the wall's left end, seen from inside.",
    )
    return found
  }
  if (point.on !== "wall" || height === null) return found
  const near = rules.value("elec-from-opening")
  const door = wall.doors.find(
    (opening) =>
      point.fromLeft > opening.fromLeft - near && point.fromLeft < opening.fromLeft + opening.width + near,
  )
  if (door && each.fromDatum! < door.height) {
    add(
      "point-at-doorway",
      "error",
      "fromLeft",
      `${what} is in or within ${near} mm of doorway ${door.door.id}.`,
      "Move it clear of the architrave.",
    )
  }
  if (
    needsReach(point.kind) &&
    (height < rules.value("elec-lowest") || height > rules.value("elec-highest"))
  ) {
    add(
      "point-out-of-reach",
      "warning",
      "height",
      `${what} is ${Math.round(height)} mm over the finished floor; ${rules.value("elec-lowest")} to ${rules.value("elec-highest")} is asked for in new dwellings.`,
      "Ask building control where it must differ.",
    )
  }
  if ((each.zone === "1" || each.zone === "2") && needsReach(point.kind)) {
    add(
      "point-in-wet-zone",
      "error",
      "fromLeft",
      `${what} stands in zone ${each.zone} of a bath or shower, where ordinary accessories must not be.`,
      "Move it out of the zones, or use a pull cord; the electrician decides.",
    )
  }
  if (task.room.use === "bathroom" && point.kind === "socket") {
    add(
      "socket-in-wet-room",
      "warning",
      "kind",
      `${what} is in a room with bath or shower: a socket must stand at least ${rules.value("elec-wet-socket")} mm from the inner zone.`,
      "The electrician decides; a shaver point may be possible.",
    )
  }
  return found
}

function needsReach(kind: PointKind): boolean {
  return kind === "socket" || kind === "switch" || kind === "data"
}
