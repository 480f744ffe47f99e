import type { Drawing, Shape } from "../../../kernels/drawing/shapes.ts"
import type { Block } from "../../../kernels/paper.ts"
import type { Point } from "../../../kernels/polygon/point.ts"
import { label, leafOnPlan, middle, roomiest } from "../../../survey/drawings/pieces.ts"
import { offWall } from "../../../survey/plan-geometry.ts"
import type { DoorInWall, House, Wall } from "../../../survey/room.ts"
import { type PlacedRoom, placedPoint, type StoreyPlan, storeyPlans } from "../../../survey/storey-plan.ts"
import type { Escape } from "../escape/escape.ts"

/** Height of one storey's plan on paper, mm. */
const planHeight = 140

/**
 * The escape route on plans of the storeys, from the top down: rooms of the protected stairway grey, each doorway with what
 * guidance asks of it, the final exit marked. Rooms that no opening ties to the others are listed under their plan; a storey with
 * no room placed beside another is left to the section and the tables.
 */
export function escapePlans(house: House, wayOut: Escape): Block[] {
  return [...storeyPlans(house)].reverse().flatMap((plan): Block[] => {
    const drawing: Block[] =
      plan.rooms.length > 0
        ? [
            {
              kind: "drawing",
              drawing: escapePlan(plan, wayOut),
              caption: `${plan.storey.name}: stair enclosure grey; at each doorway what is asked at least (– nothing, ? ask building control)`,
              maxHeight: planHeight,
            },
          ]
        : []
    const apart: Block[] =
      plan.unplaced.length > 0
        ? [
            {
              kind: "list",
              caption: `${plan.storey.name}: rooms not placed on the plan`,
              items: plan.unplaced.map((room) => {
                const doors = room.doors
                  .map(({ door }) => `${door.id} ${askedOf(door.id, wayOut)}`)
                  .join(", ")
                const inside = wayOut.route.stairway.has(room.id) ? ", in the stair enclosure" : ""
                return `${room.id} ${room.name}${inside}: ${doors || "no doorway"}`
              }),
            },
          ]
        : []
    return [...drawing, ...apart]
  })
}

/** One storey's plan with the route on it, mm of the house. */
export function escapePlan({ storey, rooms }: StoreyPlan, wayOut: Escape): Drawing {
  const { stairway, route } = wayOut.route
  const walked = new Set((route ?? []).map((way) => way.id))
  const grey = rooms.filter(({ room }) => stairway.has(room.id)).map(({ room }) => room.id)
  const marked = rooms.flatMap(({ room }) => room.doors.map(({ door }) => door.id))
  return {
    title: `Escape route, ${storey.name.toLowerCase()}`,
    description: `Plan of the ${storey.name.toLowerCase()}: stair enclosure ${grey.join(", ") || "none"} shaded; ${[...new Set(marked)].map((id) => `${id} ${askedOf(id, wayOut)}`).join(", ")}.`,
    shapes: [
      ...rooms.map(
        ({ room, outline }): Shape => ({
          kind: "polygon",
          points: outline,
          fill: stairway.has(room.id) ? "light" : "white",
          stroke: { width: stairway.has(room.id) ? 0.7 : 0.35 },
        }),
      ),
      ...doorways(rooms, wayOut, walked),
      ...rooms.map(
        ({ room, outline }): Shape => ({
          kind: "text",
          at: roomiest(outline),
          text: room.id,
          height: 2.5,
          bold: true,
          masked: true,
          leader: true,
        }),
      ),
      { kind: "scale-bar" },
    ],
  }
}

/** What is asked of a doorway, as short as a plan can bear. */
export function askedOf(id: string, { asks }: Escape): string {
  const ask = asks.get(id)
  if (!ask || ask.minimum === "none") return "–"
  return ask.minimum === "FD20-ask" ? `FD${ask.minutes}?` : `FD${ask.minutes}${ask.smoke ? "S" : ""}`
}

/** Each doorway once, with its leaf in the room it swings into; a doorway to outside on the route is the exit. */
function doorways(rooms: readonly PlacedRoom[], wayOut: Escape, walked: ReadonlySet<string>): Shape[] {
  const seen = new Set<string>()
  return rooms.flatMap((placed) =>
    placed.room.walls.flatMap((wall) =>
      wall.doors.flatMap((here): Shape[] => {
        const leaf = moved(leafOnPlan(here, wall, placed.room), placed)
        if (seen.has(here.door.id)) return leaf
        seen.add(here.door.id)
        const exit = walked.has(here.door.id) && here.door.between.includes("outside")
        return [...passage(placed, wall, here, exit ? "EXIT" : askedOf(here.door.id, wayOut)), ...leaf]
      }),
    ),
  )
}

function passage(
  placed: PlacedRoom,
  wall: Wall,
  { door, fromLeft, width }: DoorInWall,
  says: string,
): Shape[] {
  const at = (length: number, away: number) => placedPoint(placed.placing, offWall(wall, length, away))
  const to = fromLeft + width
  const way = [at(fromLeft, 0), at(to, 0), at(to, -door.wall), at(fromLeft, -door.wall)]
  const text = `${door.id} ${says}`
  const arrow: Shape[] =
    says === "EXIT"
      ? arrowOut(at(fromLeft + width / 2, width / 2), at(fromLeft + width / 2, -door.wall - width))
      : []
  return [
    { kind: "polygon", points: way, fill: "white", stroke: { width: 0.25 } },
    ...arrow,
    label(middle(way), text),
  ]
}

/** Share of an arrow's length that its head takes, and half its breadth. */
const headShare = 0.25
const headHalf = 0.1

function arrowOut(from: Point, to: Point): Shape[] {
  const run = { x: to.x - from.x, y: to.y - from.y }
  const side = (sign: 1 | -1): Point => ({
    x: to.x - run.x * headShare - run.y * headHalf * sign,
    y: to.y - run.y * headShare + run.x * headHalf * sign,
  })
  return [
    { kind: "line", from, to, stroke: { width: 0.7 } },
    { kind: "polygon", points: [to, side(1), side(-1)], fill: "black" },
  ]
}

/** Lines and arcs of a room's own plan moved to the room's place on the storey. */
function moved(shapes: readonly Shape[], { placing }: PlacedRoom): Shape[] {
  const turn = (Math.atan2(placing.sin, placing.cos) * 180) / Math.PI
  return shapes.flatMap((shape): Shape[] => {
    if (shape.kind === "line")
      return [{ ...shape, from: placedPoint(placing, shape.from), to: placedPoint(placing, shape.to) }]
    if (shape.kind === "arc")
      return [
        {
          ...shape,
          centre: placedPoint(placing, shape.centre),
          from: shape.from + turn,
          to: shape.to + turn,
        },
      ]
    return []
  })
}
