import type { Block, SheetModel } from "../../kernels/paper.ts"
import { mmText } from "../../kernels/units.ts"
import { datumText } from "../datum.ts"
import { finishedFloor } from "../finished-floor.ts"
import { onPaper } from "../rests.ts"
import type { Task, Work } from "../trade.ts"
import { type WallMark, wallRows } from "../wall-points.ts"
import type { PlumbingInputs } from "./inputs.ts"
import { type HungRadiator, hungRadiators } from "./radiators.ts"
import { wareWords } from "./steps.ts"

/** The plumber's sheet for one room: radiators and pipes, sanitaryware, checks. */
export function plumbingSheets(task: Task<PlumbingInputs>, work: Work): SheetModel[] {
  const { room, input } = task
  const radiators = hungRadiators(task)
  if (radiators.length + input.sanitaryware.length === 0) return []
  return [
    {
      kind: "plumbing",
      title: "Plumbing",
      purpose: "Where pipes and fittings go, and what is checked.",
      room: room.id,
      trade: "plumbing",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: datumText(room, "finished-floor"),
      blocks: [
        ...(radiators.length > 0 ? [orderNote, radiatorTable(radiators)] : []),
        ...(input.sanitaryware.length > 0 ? [wareTable(task)] : []),
        ...drawings(task, radiators),
        { kind: "checks", caption: "Checks", items: checks(task, radiators.length > 0) },
        { kind: "cautions", items: work.cautions },
        { kind: "sign", roles: ["Plumber", "Foreman"] },
      ],
      rests: onPaper(work.rests),
    },
  ]
}

const orderNote: Block = {
  kind: "warning",
  caption: "Order",
  items: [
    "White behind radiators, dry; then radiators; then heating on and steady; only then wood comes into the room.",
  ],
}

function radiatorTable(radiators: HungRadiator[]): Block {
  return {
    kind: "table",
    caption: "Radiators and their pipes",
    columns: [
      { label: "No.", as: "figure", width: 0.7 },
      { label: "Wall", as: "figure", width: 0.8 },
      { label: "From left", as: "figure", width: 1.2 },
      { label: "Width × height", as: "figure", width: 1.8 },
      { label: "Foot over floor", as: "figure", width: 1.2 },
      { label: "Pipes from left", as: "figure", width: 2.3 },
      { label: "Off wall", as: "figure", width: 1 },
      { label: "Hole in floor", as: "figure", width: 1.2 },
      { label: "White dry", as: "tick", width: 0.9 },
      { label: "Hung", as: "tick", width: 0.8 },
    ],
    rows: radiators.map(({ number, radiator, foot, tails, tailsOff, hole }) => ({
      cells: [
        String(number),
        String(radiator.wall),
        mmText(radiator.fromLeft),
        `${mmText(radiator.width)} × ${mmText(radiator.height)}`,
        mmText(foot),
        tails.map(mmText).join(" and "),
        mmText(tailsOff),
        mmText(hole),
        "",
        "",
      ],
    })),
    note: `Hole = pipe + 2 gaps: ${[...new Set(radiators.map(({ radiator, gap, hole }) => `${radiator.pipe} + 2 × ${gap} = ${hole}`))].join("; ")} mm. Check pipe centres on the valves and brackets before drilling.`,
  }
}

function wareTable(task: Task<PlumbingInputs>): Block {
  return {
    kind: "table",
    caption: "Sanitaryware, after the tile has cured",
    columns: [
      { label: "What", width: 2 },
      { label: "Wall", as: "figure", width: 0.8 },
      { label: "From left", as: "figure", width: 1.2 },
      { label: "Width", as: "figure", width: 1.2 },
      { label: "Rim over floor", as: "figure", width: 1.3 },
      { label: "To know", width: 3 },
      { label: "Fixed", as: "tick", width: 0.8 },
      { label: "Sealed", as: "tick", width: 0.8 },
    ],
    rows: task.input.sanitaryware.map((ware) => ({
      cells: [
        wareWords[ware.kind],
        String(ware.wall),
        mmText(ware.fromLeft),
        mmText(ware.width),
        ware.rim === undefined ? "" : mmText(ware.rim),
        [ware.onTile ? "on cured tile" : "", ware.note ?? ""].filter(Boolean).join("; "),
        "",
        "",
      ],
    })),
  }
}

function drawings(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Block[] {
  const walls = task.room.walls
    .map((wall) => ({ wall, marks: [...hungOn(wall.number, radiators), ...waresOn(wall.number, task)] }))
    .filter(({ marks }) => marks.length > 0)
  return wallRows({ room: task.room, floor: finishedFloor(task), walls }).map(({ drawing, caption }) => ({
    kind: "drawing",
    drawing,
    caption,
    maxHeight: 70,
  }))
}

function hungOn(wall: number, radiators: HungRadiator[]): WallMark[] {
  return radiators.filter(({ radiator }) => radiator.wall === wall).flatMap(radiatorMarks)
}

function waresOn(wall: number, { input }: Task<PlumbingInputs>): WallMark[] {
  return input.sanitaryware
    .filter((each) => each.wall === wall && each.rim !== undefined)
    .map((each) => ({
      text: wareWords[each.kind],
      fromLeft: each.fromLeft,
      height: 0,
      size: { width: each.width, height: each.rim! },
      dashed: true,
    }))
}

function radiatorMarks({ number, radiator, foot, tails }: HungRadiator): WallMark[] {
  const { fromLeft, width, height } = radiator
  return [
    { text: `radiator ${number}`, fromLeft, height: foot, size: { width, height } },
    ...tails.map(
      (tail): WallMark => ({
        text: "",
        fromLeft: tail - radiator.pipe / 2,
        height: 0,
        size: { width: radiator.pipe, height: foot },
        dashed: true,
      }),
    ),
  ]
}

function checks(task: Task<PlumbingInputs>, hasRadiators: boolean): { text: string; write?: string }[] {
  return [
    { text: "Pressure held before anything was covered", write: "bar, from, until, by" },
    ...(hasRadiators ? [{ text: "Heating on; no leak after a day warm", write: "date" }] : []),
    ...(task.input.sanitaryware.length > 0
      ? [{ text: "Every joint dry to paper after a fill and empty", write: "date" }]
      : []),
  ]
}
