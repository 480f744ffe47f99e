import { fitScale } from "../../kernels/drawing/scale.ts"
import type { Drawing, Shape, TextShape } from "../../kernels/drawing/shapes.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import { between, distance, type Point } from "../../kernels/polygon/point.ts"
import { type Degrees, type Mm, mmText } from "../../kernels/units.ts"
import type { Room, Wall } from "../../survey/room.ts"
import { wallFrame } from "./area.ts"
import type { Break } from "./breaks.ts"
import { fromFrame } from "./layout/frame.ts"
import type { FloorPlan } from "./plan-floor.ts"
import type { LaidRow, LaidRun } from "./rows.ts"

/** Distance of wall numbers outside the wall, mm of the room. */
const numberOutside: Mm = 190
/** Distance of the words for left and right end beyond the rows, mm of the room. */
const endOutside: Mm = 270
/** Heights of lettering on paper, mm. */
const rowFigure: Mm = 2.5
const workFigure: Mm = 3.5
/** Room that a row's name takes across the row on paper, mm; and the box the floor itself is drawn in, mm. */
const nameSpace: Mm = 3.7
const widest: Mm = 150
const tallest: Mm = 120
/** Distance of the dimension lines of the first line on paper, mm. */
const strikeOffset: Mm = -7
/** Lettering within this of upright is turned to be read from the right, degrees. */
const turnedWithin: Degrees = 1
/** A hidden pipe or cable is drawn as a zone this far to both sides and into the room, mm; where it runs beyond is not known. */
const zoneHalf: Mm = 50
const zoneDeep: Mm = 300
/** The rows' names stand this far from the left end of each run, mm of the room. */
const nameInside: Mm = 150

/** The floor in rows at true scale: walls with numbers, gap, open holes, every piece, and the line to strike first. */
export function rowDrawing(room: Room, plan: FloorPlan): Drawing {
  const { layout, area } = plan
  const pieces = layout.rows.flatMap((row) => row.runs.flatMap((run) => run.pieces))
  const shapes: Shape[] = [
    ...area.whole.map(
      (region): Shape => ({
        kind: "polygon",
        points: region.outline,
        holes: region.holes,
        fill: "mid",
        stroke: { width: 0.7 },
      }),
    ),
    ...pieces.flatMap((piece) =>
      piece.shape.map(
        (part): Shape => ({
          kind: "polygon",
          points: part.outline,
          holes: part.holes,
          fill: piece.source === null ? "white" : "light",
          stroke: { width: 0.25 },
        }),
      ),
    ),
    ...area.open.flatMap(openHole),
    ...area.runsInto.map(
      (hole): Shape => ({
        kind: "polygon",
        points: hole.outline,
        stroke: { width: 0.35, dash: "dashed" },
      }),
    ),
    ...room.hidden.flatMap((hidden) => noFixZone(room, hidden)),
    ...plan.breaks.flatMap(breakLine),
    ...firstLines(plan).flatMap((line) => strikeLine(plan, line)),
    ...endNames(plan),
    ...room.walls.map(wallNumber),
    ...namedRows(plan).flatMap((row) => row.runs.map((run) => rowName(plan, row, run))),
    { kind: "scale-bar" },
  ]
  return {
    title: `Rows of ${room.id}`,
    description: `Plan of ${room.name} with ${layout.rows.length} rows of boards from wall ${plan.direction.wall.number}, ${layout.boards} boards, a gap of ${mmText(plan.movement.gap)} mm all round.`,
    shapes,
  }
}

/** A line to strike: the far edge of a row, parallel to the first row's wall; mm from that wall and along it. */
export interface StruckLine {
  row: number
  from: Mm
  left: Mm
  right: Mm
}

/** Where lines are struck: for row 1, and for the first row beyond each break that runs with the rows. */
export function firstLines({ layout, direction }: FloorPlan): StruckLine[] {
  return layout.rows.flatMap((row, index) => {
    const before = layout.rows[index - 1]
    if (before && Math.abs(row.bottom - before.top) < oneLine) return []
    return [
      {
        row: row.number,
        from: row.top,
        left: Math.max(0, Math.min(...row.runs.map((run) => run.left))),
        right: Math.min(direction.wall.length, Math.max(...row.runs.map((run) => run.right))),
      },
    ]
  })
}

/** Lines nearer than this are one, mm. */
const oneLine: Mm = 0.5

/** A movement break with its number. */
function breakLine({ number, from, to }: Break): Shape[] {
  return [
    { kind: "line", from, to, stroke: { width: 0.7, dash: "dashed" } },
    {
      kind: "text",
      at: between(from, to, 1 / 3),
      text: `break ${number}`,
      height: rowFigure,
      masked: true,
      bold: true,
    },
  ]
}

/** Left and right end of the rows, as one faces the first row's wall. */
function endNames({ layout }: FloorPlan): Shape[] {
  const runs = layout.rows.flatMap((row) => row.runs)
  const away = (layout.rows[0]!.bottom + 3 * layout.rows.at(-1)!.top) / 4
  const ends = [
    { text: "left", x: Math.min(...runs.map((run) => run.left)) - endOutside },
    { text: "right", x: Math.max(...runs.map((run) => run.right)) + endOutside },
  ]
  return ends.map(({ text, x }) => ({
    kind: "text",
    at: fromFrame(layout.frame, [{ x, y: away }])[0]!,
    text,
    height: rowFigure,
    bold: true,
  }))
}

function strikeLine(plan: FloorPlan, { from, left, right }: StruckLine): Shape[] {
  const { frame } = plan.layout
  const at = (x: Mm, y: Mm): Point => fromFrame(frame, [{ x, y }])[0]!
  const inset = Math.min((right - left) / 4, 2 * nameInside)
  return [
    { kind: "line", from: at(left, from), to: at(right, from), stroke: { width: 0.7, dash: "chain" } },
    {
      kind: "dimension",
      from: at(right - inset, 0),
      to: at(right - inset, from),
      offset: strikeOffset,
      text: mmText(from),
      height: workFigure,
    },
  ]
}

function wallNumber(wall: Wall): TextShape {
  const length = distance(wall.start, wall.end)
  const out = { x: -(wall.end.y - wall.start.y) / length, y: (wall.end.x - wall.start.x) / length }
  const middle = between(wall.start, wall.end, 1 / 2)
  return {
    kind: "text",
    at: { x: middle.x + out.x * numberOutside, y: middle.y + out.y * numberOutside },
    text: String(wall.number),
    height: workFigure,
    bold: true,
  }
}

/** Rows whose names are set: all where there is room for them at the drawing's scale, else every second, third ... and the last. */
function namedRows({ layout, area }: FloorPlan): LaidRow[] {
  const bounds = boundsOf(area.whole.flatMap((region) => region.outline))
  const scale = fitScale(bounds, { widthMm: widest, heightMm: tallest })
  const every = Math.max(1, Math.ceil((nameSpace * scale) / layout.board.width))
  return layout.rows.filter(
    (row, index) => index % every === 0 || (row === layout.rows.at(-1) && index % every > every / 2),
  )
}

function rowName({ layout }: FloorPlan, row: LaidRow, run: LaidRun): TextShape {
  const first = run.pieces[0]!
  const reach = Math.min(nameInside, (first.right - first.left) / 2)
  const box = boundsOf(first.shape.flatMap((part) => part.outline))
  const centre = fromFrame(layout.frame, [{ x: run.left + reach, y: (row.bottom + row.top) / 2 }])[0]!
  const at = {
    x: Math.min(box.right, Math.max(box.left, centre.x)),
    y: Math.min(box.top, Math.max(box.bottom, centre.y)),
  }
  return {
    kind: "text",
    at,
    text: run.name,
    height: rowFigure,
    angle: readable(layout.frame.along),
    bold: true,
  }
}

/** The angle of lettering along the rows, read from below or from the right. */
function readable(along: Point): Degrees {
  const angle = (Math.atan2(along.y, along.x) * 180) / Math.PI
  if (angle > 90 - turnedWithin) return angle - 180
  return angle <= -90 - turnedWithin ? angle + 180 : angle
}

function noFixZone(room: Room, hidden: Room["hidden"][number]): Shape[] {
  const wall = room.walls.find((candidate) => candidate.number === hidden.wall)
  if (!wall || hidden.in !== "floor") return []
  const to = hidden.to ?? hidden.fromLeft
  const points = [
    { x: Math.min(hidden.fromLeft, to) - zoneHalf, y: 0 },
    { x: Math.max(hidden.fromLeft, to) + zoneHalf, y: 0 },
    { x: Math.max(hidden.fromLeft, to) + zoneHalf, y: zoneDeep },
    { x: Math.min(hidden.fromLeft, to) - zoneHalf, y: zoneDeep },
  ]
  const corners = fromFrame(wallFrame(wall), points)
  const middle = between(corners[0]!, corners[2]!, 1 / 2)
  return [
    { kind: "polygon", points: corners, stroke: { width: 0.35, dash: "chain" } },
    { kind: "text", at: middle, text: hidden.what, height: rowFigure, masked: true },
  ]
}

function openHole(hole: Room["holes"][number]): Shape[] {
  return [
    { kind: "polygon", points: hole.outline, fill: "white", stroke: { width: 0.5 } },
    ...[0, 1].map(
      (index): Shape => ({
        kind: "line",
        from: hole.outline[index]!,
        to: hole.outline[index + 2]!,
        stroke: { width: 0.25 },
      }),
    ),
  ]
}
