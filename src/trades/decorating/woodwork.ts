import type { Mm, SquareMetres } from "../../kernels/units.ts"
import { metres, squareMetres } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { DoorInWall, Room } from "../../survey/room.ts"
import type { RoomFacts } from "../trade.ts"
import type { DecoratingInputs } from "./inputs.ts"

/** Wood to be painted: so much length of a girth, or a leaf's face. */
export interface WoodItem {
  what: string
  part: "leaf" | "lining" | "trim"
  /** Painted, or given a clear finish. */
  finish: "paint" | "clear"
  /** Metres, unrounded; 0 for a leaf's face, which is counted. */
  length: number
  girth: Mm
  area: SquareMetres
  /** How the bill measures it: up to a girth by length, wider by area. */
  billed: "m" | "m2"
}

interface WoodTask {
  room: Room
  input: DecoratingInputs
  facts: RoomFacts
  rules: Rules
}

/**
 * Woodwork of a room, top down: leaves, linings, architraves, skirting, and what the author adds.
 * A leaf's face belongs to the room it looks into; its edges and the lining to the room it swings into.
 */
export function woodworkOf({ room, input, facts, rules }: WoodTask): WoodItem[] {
  const { woodwork } = input
  if (woodwork.state === "none") return []
  const doors = room.doors.filter((each) => !woodwork.except.includes(each.door.id))
  return [
    ...doors.filter(hasLeaf).flatMap((door) => leafItems(door, room, input, rules)),
    ...(woodwork.linings ? doors.flatMap((door) => liningItem(door, room, rules)) : []),
    ...(woodwork.architraves ? doors.filter(isLined).map((door) => architraveItem(door, facts, rules)) : []),
    ...(woodwork.skirting ? skirtingItem({ room, input, facts, rules }) : []),
    ...woodwork.other.map((each) => item(each.what, each.length, each.girth, rules)),
  ]
}

/** Length and girth as an item of the bill: over the girth limit by area, else by length. Length and girth in mm. */
export function item(what: string, length: Mm, girth: Mm, rules: Rules): WoodItem {
  const billed = girth > rules.value("decor-girth-by-length") ? "m2" : "m"
  return {
    what,
    part: "trim",
    finish: "paint",
    length: metres(length),
    girth,
    area: squareMetres(length * girth),
    billed,
  }
}

function hasLeaf(door: DoorInWall): boolean {
  return door.door.swingsInto !== undefined
}

function isLined(door: DoorInWall): boolean {
  return door.door.lining !== "none"
}

/** The room that paints a doorway's lining and its leaf's edges. */
function isPaintedFrom(door: DoorInWall, room: Room): boolean {
  return (door.door.swingsInto ?? door.door.between[0]) === room.id
}

function leafItems(door: DoorInWall, room: Room, input: DecoratingInputs, rules: Rules): WoodItem[] {
  if (input.woodwork.doors === "none") return []
  const finish = input.woodwork.doors
  const face: WoodItem = {
    what: `Leaf ${door.door.id}, face`,
    part: "leaf",
    finish,
    length: 0,
    girth: door.width,
    area: squareMetres(door.width * door.height),
    billed: "m2",
  }
  if (!isPaintedFrom(door, room)) return [face]
  const edges = item(
    `Leaf ${door.door.id}, edges`,
    2 * (door.height + door.width),
    rules.value("decor-leaf-thickness"),
    rules,
  )
  return [face, { ...edges, part: "leaf", finish }]
}

function liningItem(door: DoorInWall, room: Room, rules: Rules): WoodItem[] {
  if (!isLined(door) || !isPaintedFrom(door, room)) return []
  const lining = item(`Lining ${door.door.id}`, 2 * door.height + door.width, door.door.wall, rules)
  return [{ ...lining, part: "lining" }]
}

function architraveItem(door: DoorInWall, facts: RoomFacts, rules: Rules): WoodItem {
  const set = facts.architrave
  const girth = set ? set.width + 2 * set.thickness : rules.value("decor-architrave-girth")
  const round = set ? 2 * (set.margin + set.width) : 0
  return item(`Architrave ${door.door.id}`, 2 * door.height + door.width + 2 * round, girth, rules)
}

function skirtingItem({ room, input, facts, rules }: WoodTask): WoodItem[] {
  const known = facts.skirting ? facts.skirting.height + facts.skirting.thickness : input.boardDepth
  const girth = known ?? rules.value("decor-skirting-girth")
  const beside = facts.architrave ? 2 * (facts.architrave.margin + facts.architrave.width) : 0
  const length = room.walls
    .filter((wall) => wall.is !== "open-edge" && wall.is !== "wardrobe" && !input.leave.includes(wall.number))
    .reduce((sum, wall) => {
      const ways = wall.doors.reduce((off, door) => off + door.width + (isLined(door) ? beside : 0), 0)
      return sum + Math.max(0, wall.length - ways)
    }, 0)
  return length > 0 && girth > 0 ? [item("Skirting", length, girth, rules)] : []
}
