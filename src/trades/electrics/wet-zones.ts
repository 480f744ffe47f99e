import type { Point as PlanPoint } from "../../kernels/polygon/point.ts"
import type { Mm } from "../../kernels/units.ts"
import type { Wall } from "../../survey/room.ts"
import { finishedFloor } from "../finished-floor.ts"
import type { RoomFacts, Task } from "../trade.ts"
import type { ElectricsInputs, Point } from "./inputs.ts"

/** Zone of a point round a bath or shower: over the tray, up to 600 beside it, or outside both. */
export type WetZone = "1" | "2" | "outside"

/**
 * The zone a point stands in, by its place on the plan and its height (BS 7671, section 701, as quoted): zone 1 over the bath or
 * tray, zone 2 up to the rulebook's distance beyond it, both up to the height they reach; outside above that. Walls that screen a
 * zone are not looked for: the electrician decides.
 * @param height over the finished floor, mm; null on a ceiling or slope (a level ceiling over the zones' height is outside)
 * @returns null where the room has neither bath nor shower
 */
export function wetZone(task: Task<ElectricsInputs>, point: Point, height: Mm | null): WetZone | null {
  const places = task.facts.wetPlaces ?? []
  const wall = task.room.walls.find((each) => each.number === point.wall)
  if (places.length === 0 || !wall) return null
  const { rules } = task.job
  const at = planOf(wall, point.fromLeft, point.on === "wall" ? 0 : (point.off ?? 0))
  const over = height ?? (point.on === "ceiling" ? task.room.ceiling.highest - finishedFloor(task) : 0)
  if (over >= rules.value("elec-wet-zone-height")) return "outside"
  const off = Math.min(...places.map((place) => distanceTo(place, at, task.room.walls)))
  if (off <= 0) return "1"
  return off <= rules.value("elec-wet-zone-two") ? "2" : "outside"
}

/** Place on the plan of what stands so far along a wall and so far out from it, mm. */
export function planOf({ start, end, length }: Wall, fromLeft: Mm, out: Mm): PlanPoint {
  const along = { x: (end.x - start.x) / length, y: (end.y - start.y) / length }
  return {
    x: start.x + along.x * fromLeft + along.y * out,
    y: start.y + along.y * fromLeft - along.x * out,
  }
}

type Place = NonNullable<RoomFacts["wetPlaces"]>[number]

/** Distance on the plan from a bath or tray, mm; 0 over it. */
function distanceTo(place: Place, at: PlanPoint, walls: readonly Wall[]): Mm {
  const wall = walls.find((each) => each.number === place.wall)
  if (!wall) return Number.POSITIVE_INFINITY
  const along = { x: (wall.end.x - wall.start.x) / wall.length, y: (wall.end.y - wall.start.y) / wall.length }
  const from = { x: at.x - wall.start.x, y: at.y - wall.start.y }
  const u = from.x * along.x + from.y * along.y
  const v = from.x * along.y - from.y * along.x
  const beside = Math.max(place.fromLeft - u, 0, u - place.fromLeft - place.width)
  const before = Math.max(-v, 0, v - place.depth)
  return Math.hypot(beside, before)
}
