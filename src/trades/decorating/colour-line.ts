import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import type { Room, Wall } from "../../survey/room.ts"
import type { DecoratingInputs } from "./inputs.ts"

/** A surface's colour stands this far over its edge, mm. */
const nameOver = 250
/** Height of lettering on paper, mm. */
const lettering = 2.5

/** The wall on which the meeting of wall, slope and level ceiling shows best: the longest whose top is not level. */
export function wallUnderSlopes(room: Room): Wall | undefined {
  return room.walls
    .filter((wall) => wall.is === "wall" && topEdges(wall).some(isSloping))
    .sort((a, b) => b.length - a.length)[0]
}

/**
 * A wall under slopes seen from inside, with a heavy line where the colours meet: along the whole top where slopes take
 * the ceiling's colour; along the level part only where they take the wall's.
 */
export function colourLine(wall: Wall, input: DecoratingInputs): Drawing {
  const meets = topEdges(wall).filter((edge) => input.slopeIs === "ceiling" || !isSloping(edge))
  const heavy = meets.map(([from, to]): Shape => ({ kind: "line", from, to, stroke: { width: 0.7 } }))
  const above = (edge: [Point, Point]): Point => ({
    x: (edge[0].x + edge[1].x) / 2,
    y: (edge[0].y + edge[1].y) / 2 + nameOver,
  })
  const names = topEdges(wall).map((edge): Shape => {
    const text = isSloping(edge) && input.slopeIs === "wall" ? input.wallColour : input.ceilingColour
    return { kind: "text", at: above(edge), text, height: lettering }
  })
  const highest = Math.max(...wall.elevation.map((corner) => corner.y))
  return {
    title: `Where the colours meet, wall ${wall.number}`,
    description: `Wall ${wall.number} from inside; the heavy line is where the wall colour ends.`,
    shapes: [
      { kind: "polygon", points: wall.elevation, stroke: { width: 0.25 } },
      ...heavy,
      ...names,
      {
        kind: "text",
        at: { x: wall.length / 2, y: highest / 2 },
        text: input.wallColour,
        height: lettering,
        masked: true,
      },
      { kind: "scale-bar" },
    ],
  }
}

/** The pieces of a wall's upper edge, left to right as they come after its two lower corners; uprights are left out. */
function topEdges(wall: Wall): [Point, Point][] {
  const top = wall.elevation.slice(2)
  return top
    .slice(1)
    .map((to, index): [Point, Point] => [top[index]!, to])
    .filter(([from, to]) => Math.abs(from.x - to.x) > 1)
}

function isSloping([from, to]: [Point, Point]): boolean {
  return Math.abs(from.y - to.y) > 1
}
