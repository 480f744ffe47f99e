import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import type { Mm } from "../../kernels/units.ts"
import type { Task } from "../trade.ts"
import type { ElectricsInputs } from "./inputs.ts"
import type { ScheduledPoint } from "./points.ts"
import { planOf } from "./wet-zones.ts"

/** A wall's number stands this far outside it, mm. */
const numberOff: Mm = 170
/** Half the side of the square that stands for a point, and its number over its middle, as on the walls; mm. */
const half: Mm = 43
const labelOver: Mm = 150
/** Height of lettering on paper, mm. */
const lettering: Mm = 2.5

/** A room's ceiling and slope points on its plan, baths and showers dashed; null where it has no such point. */
export function ceilingPlan(
  { room, facts }: Task<ElectricsInputs>,
  points: readonly ScheduledPoint[],
): Drawing | null {
  const overhead = points.flatMap(({ number, point }) => {
    const wall = room.walls.find((each) => each.number === point.wall)
    if (!wall || point.on === "wall" || point.off === undefined) return []
    return [{ number, at: planOf(wall, point.fromLeft, point.off) }]
  })
  if (overhead.length === 0) return null
  const numbers = room.walls.map(
    (wall): Shape => ({
      kind: "text",
      at: planOf(wall, wall.length / 2, -numberOff),
      text: String(wall.number),
      height: lettering,
      fixed: true,
    }),
  )
  const wet = (facts.wetPlaces ?? []).flatMap(({ wall: number, fromLeft, width, depth }): Shape[] => {
    const wall = room.walls.find((each) => each.number === number)
    if (!wall) return []
    const corners = [
      [fromLeft, 0],
      [fromLeft + width, 0],
      [fromLeft + width, depth],
      [fromLeft, depth],
    ] as const
    const outline = corners.map(([along, out]) => planOf(wall, along, out))
    return [{ kind: "polygon", points: outline, stroke: { width: 0.25, dash: "dashed" } }]
  })
  return {
    title: `Ceiling points, ${room.id}`,
    description: `${overhead.length} points on ceiling and slopes of ${room.id} from above, walls numbered, baths and showers dashed.`,
    shapes: [
      { kind: "polygon", points: room.outline, stroke: { width: 0.5 } },
      ...wet,
      ...numbers,
      ...overhead.flatMap(({ number, at }): Shape[] => [
        {
          kind: "box",
          at: { x: at.x - half, y: at.y - half },
          width: 2 * half,
          height: 2 * half,
          stroke: { width: 0.35 },
          fill: "black",
        },
        {
          kind: "text",
          at: { x: at.x, y: at.y + labelOver },
          text: String(number),
          height: lettering,
          masked: true,
        },
      ]),
      { kind: "scale-bar" },
    ],
  }
}
