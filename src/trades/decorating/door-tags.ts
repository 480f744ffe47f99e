import { textSize } from "../../kernels/drawing/lettering.ts"
import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import type { SheetModel } from "../../kernels/paper.ts"
import type { Mm } from "../../kernels/units.ts"
import type { Room } from "../../survey/room.ts"

/** One tag on paper, full size, mm: half an upright sheet within its margins. */
const wide: Mm = 170
const high: Mm = 94
/** Between the two tags, where they are cut apart, mm. */
const gutter: Mm = 8
/** Lettering of a tag, mm: read from the foot of the stair, and from the door. */
const shout: Mm = 15
const roomLetters: Mm = 8
const words: Mm = 4
/** Left free at each side of a tag, mm. */
const border: Mm = 4

/** Door tags of a room, two to a page at full size: wet, keep out until a day and hour to be written in. */
export function doorTags(room: Room): SheetModel {
  return {
    kind: "door-tag",
    title: "Door tags",
    purpose: "Cut across the middle; hang on the door and at the foot of the stair.",
    room: room.id,
    trade: "decorating",
    audience: ["trade"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      { kind: "drawing", drawing: tags(room), caption: "Full size", scale: 1, maxHeight: 2 * high + gutter },
    ],
    rests: [],
  }
}

function tags(room: Room): Drawing {
  const cut: Shape = {
    kind: "line",
    from: { x: 0, y: high + gutter / 2 },
    to: { x: wide, y: high + gutter / 2 },
    stroke: { width: 0.25, dash: "dashed" },
  }
  return {
    title: `Two door tags, ${room.id}`,
    description: `Two equal tags for ${room.name}: wet, keep out until; lines for day, hour, what is wet and by whom it was hung.`,
    shapes: [...tag(room, 0), cut, ...tag(room, high + gutter)],
  }
}

function tag(room: Room, foot: Mm): Shape[] {
  const middle = wide / 2
  const at = (share: number) => foot + high * share
  return [
    { kind: "box", at: { x: 0, y: foot }, width: wide, height: high, stroke: { width: 0.7 }, fill: "none" },
    centred("WET: KEEP OUT", { x: middle, y: at(0.82) }, shout),
    centred(`${room.id} ${room.name}`, { x: middle, y: at(0.63) }, roomLetters),
    centred("Do not walk in, touch, close the door or open a window until", { x: middle, y: at(0.5) }, words),
    ...asked("Day", { x: 8, y: at(0.3) }, middle - 6),
    ...asked("Hour", { x: middle + 4, y: at(0.3) }, wide - 8),
    ...asked("What is wet", { x: 8, y: at(0.1) }, middle - 6),
    ...asked("Hung by", { x: middle + 4, y: at(0.1) }, wide - 8),
  ]
}

/** Text in the middle of a tag, as large as asked or as the tag is wide. */
function centred(text: string, at: { x: Mm; y: Mm }, height: Mm): Shape {
  const bold = height > words
  const share = (wide - 2 * border) / textSize(text, height, bold).width
  return { kind: "text", at, text, height: height * Math.min(share, 1), bold, fixed: true }
}

/** A word and a line to write on, up to a place on the right. */
function asked(text: string, at: { x: Mm; y: Mm }, to: Mm): Shape[] {
  const writeFrom = at.x + text.length * words * wordShare + 2
  return [
    { kind: "text", at: { x: at.x, y: at.y + words / 2 }, text, height: words, anchor: "start", fixed: true },
    { kind: "line", from: { x: writeFrom, y: at.y }, to: { x: to, y: at.y }, stroke: { width: 0.35 } },
  ]
}

/** Width of a letter over its height, about. */
const wordShare = 0.75
