import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import type { Block, SheetModel } from "../../kernels/paper.ts"
import { distance } from "../../kernels/polygon/point.ts"
import { fixed, mmText } from "../../kernels/units.ts"
import { dryingHours } from "../../rulebook/drying.ts"
import { datumText } from "../datum.ts"
import { finishedFloor } from "../finished-floor.ts"
import { onPaper } from "../rests.ts"
import type { Task, Work } from "../trade.ts"
import { wallRows } from "../wall-points.ts"
import { jointOf, type TileField, tileFields } from "./fields.ts"
import type { TilingInputs } from "./inputs.ts"
import { type Meeting, meetings } from "./levels.ts"
import type { SetOut } from "./set-out.ts"

/** The tiler's sheet for one room: fields with their rows, levels at doorways, cure, and what to carry up. */
export function tilingSheets(task: Task<TilingInputs>, work: Work): SheetModel[] {
  const { room } = task
  const fields = tileFields(task)
  if (fields.length === 0) return []
  const met = meetings(task)
  return [
    {
      kind: "tiling",
      title: "Tiling",
      purpose: "Where rows begin, what is cut, what must cure first.",
      room: room.id,
      trade: "tiling",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: datumText(room, "finished-floor"),
      blocks: [
        {
          kind: "warning",
          caption: "Order",
          items: ["Tile, let it cure, then sanitaryware, then seal. No water on it before its full time."],
        },
        setOutTable(task, fields),
        ...drawings(task, fields),
        ...floorDrawing(task, fields),
        ...(met.length > 0 ? [levelTable(met)] : []),
        carryTable(work),
        { kind: "checks", caption: "Checks", items: checks(task) },
        { kind: "cautions", items: work.cautions },
        { kind: "sign", roles: ["Tiler", "Foreman"] },
      ],
      rests: onPaper(work.rests),
    },
  ]
}

function setOutTable(task: Task<TilingInputs>, fields: TileField[]): Block {
  return {
    kind: "table",
    caption: "Setting out",
    columns: [
      { label: "Field", width: 1 },
      { label: "Width × height", as: "figure", width: 2.2 },
      { label: "m²", as: "figure", width: 1 },
      { label: "Tile", as: "figure", width: 1.9 },
      { label: "Across", width: 3.6 },
      { label: "Up", width: 3.6 },
      { label: "Tiles", as: "figure", width: 0.9 },
      { label: "Done", as: "tick", width: 1 },
    ],
    rows: fields.map((field) => ({
      cells: [
        field.name,
        `${mmText(field.width)} × ${mmText(field.height)}`,
        fixed(field.area, 2),
        `${field.tile.width} × ${field.tile.height}`,
        acrossText(field.across),
        upText(field.up, field.on),
        String(field.pieces.length),
        "",
      ],
    })),
    note: `Joints ${jointOf(task)} mm, open joints at corners and floor ${task.job.rules.value("tile-edge-joint")} mm. Sizes of cuts are without joints; measure each place before cutting.`,
  }
}

/** A row across for the reader: `6 whole, cut 165 left and right, a joint on the centre`. */
export function acrossText({ whole, first, last, from, count }: SetOut): string {
  if (count === 1) return first === null ? "1 whole" : `1 cut to ${mmText(first)}`
  if (first === null && last === null) return `${whole} whole, ${from}`
  if (first !== null && last !== null) return `${whole} whole, cut ${mmText(first)} left and right, ${from}`
  return `${whole} whole, one cut ${mmText(first ?? last ?? 0)}`
}

function upText(up: SetOut, on: TileField["on"]): string {
  const { whole, first, last, count } = up
  if (on === "floor") return acrossText(up).replace("left and right", "at both ends")
  if (count === 1) return first === null ? "1 whole row" : `1 row cut to ${mmText(first)}`
  if (first === null && last === null) return `${whole} whole rows`
  if (first !== null && last !== null) return `${whole} whole rows, cut ${mmText(first)} at foot and top`
  return first !== null
    ? `${whole} whole rows from the top, cut ${mmText(first)} at the foot`
    : `${whole} whole rows from the foot, cut ${mmText(last ?? 0)} at the top`
}

/** The tiled walls with their rows and columns drawn, true to scale. */
function drawings(task: Task<TilingInputs>, fields: TileField[]): Block[] {
  const walls = task.room.walls
    .map((wall) => ({
      wall,
      marks: [],
      under: fields.filter((field) => field.wall === wall.number).flatMap(tileShapes),
    }))
    .filter(({ under }) => under.length > 0)
  return wallRows({ room: task.room, floor: finishedFloor(task), walls }).map(({ drawing, caption }) => ({
    kind: "drawing",
    drawing,
    caption: `${caption}: rows and columns as set out`,
    maxHeight: 75,
  }))
}

/** Every tile as it is cut. */
function tileShapes({ pieces }: TileField): Shape[] {
  return pieces.flat().map(({ outline, holes }) => ({
    kind: "polygon",
    points: outline,
    holes,
    stroke: { width: 0.18 },
  }))
}

/** The tiled floor from above, with the numbers of its walls. */
function floorDrawing({ room }: Task<TilingInputs>, fields: TileField[]): Block[] {
  const field = fields.find((each) => each.on === "floor")
  if (!field) return []
  const numbers = room.walls.map(({ number, start, end }): Shape => {
    const out = { x: (start.y - end.y) / distance(start, end), y: (end.x - start.x) / distance(start, end) }
    const at = {
      x: (start.x + end.x) / 2 + out.x * numberOff,
      y: (start.y + end.y) / 2 + out.y * numberOff,
    }
    return { kind: "text", at, text: String(number), height: 2.5, fixed: true }
  })
  const drawing: Drawing = {
    title: `Tiled floor, ${room.id}`,
    description: `The floor of ${room.id} from above, ${field.pieces.length} tiles as they are cut, walls numbered.`,
    shapes: [
      ...tileShapes(field),
      { kind: "polygon", points: room.outline, stroke: { width: 0.5 } },
      ...numbers,
      { kind: "scale-bar" },
    ],
  }
  const caption = "Floor from above, walls numbered: rows and columns as set out"
  return [{ kind: "drawing", drawing, caption, maxHeight: 75 }]
}

/** A wall's number stands this far outside it, mm. */
const numberOff = 150

function levelTable(met: Meeting[]): Block {
  return {
    kind: "table",
    caption: "Levels at doorways",
    columns: [
      { label: "Doorway", width: 1.2 },
      { label: "Meets", width: 2 },
      { label: "Tile over deck", as: "figure", width: 1.4 },
      { label: "Other over deck", as: "figure", width: 1.4 },
      { label: "What to do", width: 6 },
    ],
    rows: met.map((each) => ({
      cells: [
        each.door,
        `${each.room}, ${each.finish}`,
        mmText(each.tile),
        mmText(each.other),
        thresholdText(each),
      ],
    })),
  }
}

/** What the threshold must do where two floors meet. */
export function thresholdText({ step, finish }: Pick<Meeting, "step" | "finish">): string {
  const by = Math.abs(Math.round(step))
  if (by === 0) return "Level: a flat strip under the leaf."
  const higher = step > 0 ? finish : "tile"
  return `${by} mm step, ${higher} higher: a strip that falls ${by} mm, under the closed leaf; the ${finish} keeps its gap.`
}

function carryTable(work: Work): Block {
  return {
    kind: "table",
    caption: "Carry up to this room",
    columns: [
      { label: "What", width: 4 },
      { label: "Net", as: "figure", width: 1.3 },
      { label: "Carry up", as: "figure", width: 1.3 },
      { label: "Here", as: "tick", width: 0.8 },
    ],
    rows: work.quantities.map(({ what, net, gross, unit }) => ({
      cells: [what, `${fixed(net, 2)} ${unitText(unit)}`, `${fixed(gross, 2)} ${unitText(unit)}`, ""],
    })),
  }
}

function unitText(unit: string): string {
  return unit === "m2" ? "m²" : unit
}

function checks(task: Task<TilingInputs>): { text: string; write?: string }[] {
  const wet = dryingHours("grout-wet", task.job.climate, task.job.rules)
  const full =
    wet === "do not"
      ? "do not grout in the planned air"
      : `${fixed(Math.ceil(wet / 24), 0)} days at the planned air`
  return [
    { text: "Adhesive spread from", write: "date, hour" },
    { text: "Grouted", write: "date, hour" },
    { text: "First foot and fixings not before", write: "date, hour" },
    { text: `First shower not before (${full})`, write: "date" },
    { text: "Falls to the waste, no hollow tile by knocking" },
  ]
}
