import type { Drawing, Shape } from "../../../kernels/drawing/shapes.ts"
import type { Point } from "../../../kernels/polygon/point.ts"
import { fixed } from "../../../kernels/units.ts"
import type { StairSeen } from "./stair.ts"

/** Height of figures to work from, and of other lettering, on paper, mm. */
const figure = 3.5
const lettering = 2.5
/** Space between a riser and its figure, mm of the stair. */
const beside = 30

/** Every rise of a flight at true scale, the finished steps in a heavy line, decks and bare treads in a thin broken one. Winders are drawn unwound. */
export function stairDrawing({ stair, rises, below, above, work }: StairSeen): Drawing {
  const onTreads = work?.onTreads ?? 0
  const { going } = stair
  const bare = levels(rises.map((rise) => rise.before))
  const finished = bare.map(
    (level, index) => level + (index === 0 ? below : index === rises.length ? above : onTreads),
  )
  const texts = rises.flatMap((rise, index): Shape[] => {
    const foot = finished[index]!
    const middle = (foot + finished[index + 1]!) / 2
    const x = index * going
    return [
      {
        kind: "text",
        at: { x: x + beside, y: middle },
        text: fixed(rise.after, rise.after % 1 === 0 ? 0 : 1),
        height: figure,
        anchor: "start",
        bold: index === 0 || index === rises.length - 1,
        fixed: true,
      },
      {
        kind: "text",
        at: { x: x - going / 2, y: middle },
        text: String(rise.number),
        height: lettering,
        fixed: true,
      },
    ]
  })
  const shapes: Shape[] = [
    { kind: "polyline", points: stepLine(bare, going), stroke: { width: 0.25, dash: "dashed" } },
    { kind: "polyline", points: stepLine(finished, going), stroke: { width: 0.5 } },
    ...texts,
    { kind: "scale-bar" },
  ]
  return {
    title: `Rises of ${stair.name}`,
    description: `${rises.length} finished rises from the bottom: ${rises.map((rise) => fixed(rise.after, 1)).join(", ")} mm.`,
    shapes,
  }
}

/** Levels of the floor below, of each tread and of the floor above, mm. */
function levels(rises: readonly number[]): number[] {
  const at = [0]
  for (const rise of rises) at.push(at[at.length - 1]! + rise)
  return at
}

/** The outline of steps: up each rise, along each going, with a going of floor at foot and head. */
function stepLine(at: readonly number[], going: number): Point[] {
  return at.flatMap((y, index) => [
    { x: (index - 1) * going, y },
    { x: index * going, y },
  ])
}
