import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import type { Block, Column, SheetModel } from "../kernels/paper.ts"
import type { Mm } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import { usualShapes } from "../survey/check-lengths.ts"

/**
 * The blank survey sheet of one room: every box carries the name of its key in the room's file, rows are numbered as the lists
 * there are, and the check lengths that fix usual shapes stand beside.
 */
export function surveyForm(rules: Rules): SheetModel {
  return {
    kind: "survey-form",
    title: "Survey of a room, to fill in",
    purpose:
      "One a room. Every box has the name of its key in the room's file; leave empty what was not taped.",
    room: null,
    trade: null,
    audience: ["office"],
    hosted: true,
    orientation: "portrait",
    datum: "Heights: tick their datum. Lengths: tick their face. Millimetres.",
    blocks: [
      {
        kind: "boxes",
        caption: "The room",
        labels: ["id", "name", "storey", "use", "entry", "measured: on", "by", "tape ± mm"],
      },
      {
        kind: "boxes",
        caption: "Tick one of each: measured",
        labels: [
          "lengthsTo: plaster",
          "lengthsTo: stud",
          "lengthsTo: brick",
          "lengthsTo: lining",
          "heightsFrom: deck",
          "heightsFrom: finished-floor",
          "heightsFrom: old-floor",
          "heightsFrom: ground",
        ],
      },
      {
        kind: "text",
        as: "note",
        paragraphs: [
          "Stand in the entry door; its wall is wall 1. Walk clockwise; each wall from left to right as you face it. Corner n is the left end of wall n.",
        ],
      },
      {
        kind: "drawing",
        drawing: grid,
        caption: "Sketch: number the walls. One square is 250 mm at 1:50.",
        scale: 1,
        maxHeight: 92,
      },
      rows("outline", 12, [
        ["length", 16],
        ["turn: right, left or degrees", 26],
        ["is: wall, breast, wardrobe, open-edge, knee-wall", 34],
        ["name", 20],
      ]),
      rows("diagonals", 5, [
        ["from corner", 20],
        ["to corner", 20],
        ["length", 24],
        ["which way it was taped", 30],
      ]),
      checks(rules),
      rows("holes", 3, [
        ["id", 10],
        ["name", 18],
        ["wall", 10],
        ["fromLeft", 14],
        ["off", 12],
        ["width", 14],
        ["depth", 14],
        ["floored", 12],
      ]),
      {
        kind: "boxes",
        caption: "ceiling: heights (where each was taped: mark the sketch)",
        labels: ["heights 1", "heights 2", "heights 3", "heights 4"],
      },
      rows("ceiling: slopes", 3, [
        ["wall", 12],
        ["dwarf", 18],
        ["pitch °", 18],
        ["along", 20],
      ]),
      { kind: "boxes", caption: "ceiling: section, taped square across", labels: ["flat", "floor"] },
      rows("ceiling: dormers", 2, [
        ["wall", 12],
        ["fromLeft", 18],
        ["width", 18],
        ["height", 18],
      ]),
      rows("ceiling: obstacles", 3, [
        ["name", 20],
        ["height", 14],
        ["wall", 10],
        ["fromLeft", 14],
        ["off", 12],
        ["width", 14],
        ["depth", 14],
      ]),
      rows("doors, where they stand here", 4, [
        ["door", 14],
        ["wall", 12],
        ["fromLeft", 20],
      ]),
      rows("house.yaml, doors: the opening", 4, [
        ["id", 8],
        ["widths: top", 12],
        ["middle", 10],
        ["bottom", 10],
        ["heights: left", 12],
        ["middle", 10],
        ["right", 10],
        ["wall", 10],
        ["plumb", 10],
        ["lengthsTo", 13],
        ["heightsFrom", 15],
      ]),
      rows("windows", 4, [
        ["id", 9],
        ["kind", 14],
        ["wall", 9],
        ["fromLeft", 12],
        ["width", 12],
        ["height", 12],
        ["sill", 11],
        ["reveal", 11],
      ]),
      { kind: "boxes", caption: "joists", labels: ["wall", "centres", "firstFrom"] },
      rows("hidden", 4, [
        ["what: pipe, cable, flue, unknown", 22],
        ["in: floor, wall", 15],
        ["wall", 10],
        ["fromLeft", 13],
        ["to", 13],
        ["note", 20],
      ]),
      rows("readings", 5, [
        ["on", 16],
        ["what", 20],
        ["value", 14],
        ["instrument", 20],
        ["place", 20],
      ]),
      rows("photos", 6, [
        ["number", 14],
        ["of", 70],
      ]),
      rows("stays", 2, [["what stays and is protected", 80]]),
      { kind: "sign", roles: ["Taped by", "Entered by"] },
    ],
    rests: ["survey-assumed-turn", "survey-measured-turn", "survey-shape-looseness"],
  }
}

/** A list of the room's file as a table of empty boxes, its rows numbered from 1. */
function rows(list: string, count: number, keys: readonly [string, number][]): Block {
  const columns: Column[] = [
    { label: "No.", as: "figure", width: 6 },
    ...keys.map(([label, width]): Column => ({ label, width, as: "write" })),
  ]
  return {
    kind: "table",
    caption: list,
    columns,
    rows: Array.from({ length: count }, (_, index) => ({
      cells: [String(index + 1), ...keys.map(() => "")],
    })),
  }
}

function checks(rules: Rules): Block {
  return {
    kind: "table",
    caption: "Check lengths that fix the shape",
    columns: [
      { label: "Shape", width: 50 },
      { label: "Corners", as: "figure", width: 12 },
      { label: "Tape from corner to corner", as: "figure", width: 40 },
    ],
    rows: usualShapes(rules).map(({ name, corners, checks: lengths }) => ({
      cells: [name, String(corners), lengths.map(({ from, to }) => `${from}–${to}`).join(", ")],
    })),
    note: "These fix the shape so that no distance between corners stays open by more than 40 mm. One more than these shows which measurement was misread. Where a length cannot be held straight, measure the turns with a bevel and write degrees.",
  }
}

const side: Mm = 5
const grid: Drawing = sketchGrid({ across: 34, up: 12 })

/** Squares to sketch on, mm on paper. */
function sketchGrid({ across, up }: { across: number; up: number }): Drawing {
  const [width, height] = [across * side, up * side]
  const thin = { width: 0.18, dash: "dotted" } as const
  const upright = Array.from({ length: across + 1 }, (_, index): Shape => {
    const x = index * side
    return { kind: "line", from: { x, y: 0 }, to: { x, y: height }, stroke: thin }
  })
  const level = Array.from({ length: up + 1 }, (_, index): Shape => {
    const y = index * side
    return { kind: "line", from: { x: 0, y }, to: { x: width, y }, stroke: thin }
  })
  return {
    title: "Squares to sketch on",
    description: "An empty grid of 5 mm squares.",
    shapes: [...upright, ...level],
  }
}
