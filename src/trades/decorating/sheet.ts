import type { Block, Row, SheetModel } from "../../kernels/paper.ts"
import { fixed } from "../../kernels/units.ts"
import { datumText } from "../datum.ts"
import type { Task, Work } from "../trade.ts"
import { coatTable } from "./coat-table.ts"
import { dilutionOf } from "./coats.ts"
import { colourLine, wallUnderSlopes } from "./colour-line.ts"
import { coldestToCoat } from "./dew-point.ts"
import { doorTags } from "./door-tags.ts"
import { dryingBoard } from "./drying-board.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { sheetRests } from "./rests.ts"
import { type RoomPaint, roomPaint } from "./room-paint.ts"

/** Sheets of decorating for one room: surfaces and coats in order, the drying board, door tags. */
export function decoratingSheets(task: Task<DecoratingInputs>, work: Work): SheetModel[] {
  if (work.steps.length === 0) return []
  return [surfaceSheet(task, work), dryingBoard(task), doorTags(task.room)]
}

function surfaceSheet(task: Task<DecoratingInputs>, work: Work): SheetModel {
  const { room } = task
  const paint = roomPaint(task)
  return {
    kind: "decorating",
    title: "Decorating",
    purpose: "Each surface, its coats in order, litres, and when it was done.",
    room: room.id,
    trade: "decorating",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: datumText(room),
    blocks: [
      ...airBlock(task),
      surfaceTable(paint, task.job.rules.value("decor-void-deducted")),
      ...(paint.wood.length > 0 ? [woodTable(paint)] : []),
      ...colourDrawing(task),
      coatTable(task, paint.lines),
      carryTable(work),
      { kind: "checks", caption: "Before each coat", items: checks(task) },
      { kind: "cautions", items: work.cautions },
      { kind: "sign", roles: ["Decorator", "Foreman"] },
    ],
    rests: sheetRests(task, paint),
  }
}

/** What the air allows today's planning, and boxes for the day's own readings. */
function airBlock(task: Task<DecoratingInputs>): Block[] {
  const { climate, rules } = task.job
  const least = Math.ceil(coldestToCoat(climate, rules) * 10) / 10
  const { paint, water } = dilutionOf(task.input, rules)
  return [
    {
      kind: "figures",
      items: [
        { label: "Planned air", value: `${climate.temperature}`, unit: `°C, ${climate.humidity} %` },
        { label: "Coat no surface colder than", value: fixed(least, 1), unit: "°C in that air" },
        { label: "Mist coat", value: `${paint} : ${water}`, unit: "paint : water" },
        { label: "Slopes count as", value: task.input.slopeIs },
      ],
    },
  ]
}

function surfaceTable({ surfaces }: RoomPaint, least: number): Block {
  const rows = surfaces.map(
    (each): Row => ({
      cells: [
        each.name,
        stateWords[each.state],
        each.colour,
        fixed(each.gross, 2),
        each.off > 0 ? fixed(each.off, 2) : "",
        fixed(each.area, 2),
      ],
    }),
  )
  const sum = (pick: (each: (typeof surfaces)[number]) => number) =>
    fixed(
      surfaces.reduce((total, each) => total + pick(each), 0),
      2,
    )
  return {
    kind: "table",
    caption: "Surfaces",
    columns: [
      { label: "Surface", width: 3 },
      { label: "Now", width: 2 },
      { label: "Colour", width: 3 },
      { label: "Gross m²", as: "figure", width: 1.4 },
      { label: "Openings m²", as: "figure", width: 1.4 },
      { label: "Paint m²", as: "figure", width: 1.4 },
    ],
    rows: [
      ...rows,
      {
        as: "total",
        cells: [
          "Together",
          "",
          "",
          sum((each) => each.gross),
          sum((each) => each.off),
          sum((each) => each.area),
        ],
      },
    ],
    note: `Openings of ${fixed(least, 2)} m² and more are taken off; smaller ones are not.`,
  }
}

/** For a room under slopes: where the wall colour ends, the client's choice drawn. */
function colourDrawing(task: Task<DecoratingInputs>): Block[] {
  const wall = wallUnderSlopes(task.room)
  if (!wall) return []
  const caption = `Slopes take the ${task.input.slopeIs}'s colour: the heavy line is where colours meet`
  return [{ kind: "drawing", drawing: colourLine(wall, task.input), caption, maxHeight: 60 }]
}

const stateWords = {
  "new-plaster": "new plaster",
  "old-paint": "old paint",
  "old-gloss": "old gloss",
  stained: "stained",
}

function woodTable({ wood }: RoomPaint): Block {
  return {
    kind: "table",
    caption: "Woodwork, top down",
    columns: [
      { label: "Item", width: 4 },
      { label: "Length m", as: "figure", width: 1.3 },
      { label: "Girth mm", as: "figure", width: 1.3 },
      { label: "Area m²", as: "figure", width: 1.3 },
      { label: "Finish", width: 1.5 },
    ],
    rows: wood.map((each) => ({
      cells: [
        each.what,
        each.length > 0 ? fixed(each.length, 2) : "1 nr",
        fixed(each.girth, 0),
        fixed(each.area, 2),
        each.finish === "clear" ? "clear" : "paint",
      ],
    })),
  }
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
    rows: work.quantities.map((each) => ({
      cells: [
        each.what,
        each.unit === "l" ? `${fixed(each.net, 2)} l` : `${fixed(each.net, 1)} m`,
        each.unit === "l"
          ? `${fixed(Math.ceil(each.gross * 10 - 1e-9) / 10, 1)} l`
          : `${fixed(each.gross, 1)} m`,
        "",
      ],
    })),
    note: "Decant from the job's tins: tins are bought once for the whole job, so the rooms' litres do not add up to tins.",
  }
}

function checks(task: Task<DecoratingInputs>): { text: string; write?: string }[] {
  const above = task.job.rules.value("decor-above-dew-point")
  return [
    { text: "Air read", write: "°C / %" },
    { text: `Coldest surface read, at least ${above} °C above the dew point`, write: "°C" },
    { text: "Coat before is dry by touch and by its hours" },
    { text: "Same batch number on every tin of a wall", write: "batch" },
    { text: "Leaves stand open on wedges; door tag hung" },
  ]
}
