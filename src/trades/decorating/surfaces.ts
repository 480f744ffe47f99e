import type { SquareMetres } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import { voidsOut } from "../../survey/openings-out.ts"
import type { CeilingPart, Room } from "../../survey/room.ts"
import type { RoomFacts } from "../trade.ts"
import type { DecoratingInputs, SurfaceState } from "./inputs.ts"

/** What of a room is painted: plaster of four kinds, and wood as leaves, linings and trim by length. */
export type PaintedPart = "ceiling" | "slope" | "wall" | "reveal" | "leaf" | "lining" | "trim"

/** A plastered surface to be painted. */
export interface Surface {
  /** Name for the reader: `Wall 3`, `Slope over wall 2`. */
  name: string
  part: PaintedPart
  /** Painted as wall or as ceiling. */
  as: "wall" | "ceiling"
  state: SurfaceState
  colour: string
  /** Product of an accent colour, if one is written. */
  product?: string
  /** m2 before openings; taken off for openings; painted. Unrounded. */
  gross: SquareMetres
  off: SquareMetres
  area: SquareMetres
}

interface SurfacesTask {
  room: Room
  input: DecoratingInputs
  facts: RoomFacts
  rules: Rules
}

/**
 * Plastered surfaces of a room in the order they are painted: level ceiling, slopes, walls by number, reveals.
 * Openings are taken off when they are as large as the rule says; reveals are added; tiled wall is taken off as its own row.
 */
export function surfacesOf({ room, input, facts, rules }: SurfacesTask): Surface[] {
  const least = rules.value("decor-void-deducted")
  const walls = wallSurfaces(room, input, least)
  return [
    ...levelCeiling(room, input, rules.value("decor-sliver")),
    ...slopeSurfaces(room, input, least),
    ...walls,
    ...reveals(room, input),
    ...tiled(walls, input, facts),
  ]
}

function levelCeiling(room: Room, input: DecoratingInputs, sliver: SquareMetres): Surface[] {
  const { flatArea } = room.ceiling
  if (flatArea <= sliver) return []
  return [
    {
      name: "Level ceiling",
      part: "ceiling",
      as: "ceiling",
      state: input.ceiling,
      colour: input.ceilingColour,
      gross: flatArea,
      off: 0,
      area: flatArea,
    },
  ]
}

function slopeSurfaces(room: Room, input: DecoratingInputs, least: SquareMetres): Surface[] {
  const byWall = new Map<number, CeilingPart[]>()
  for (const part of room.ceiling.parts.filter((each) => each.kind === "slope")) {
    const wall = part.wall ?? 0
    byWall.set(wall, [...(byWall.get(wall) ?? []), part])
  }
  return [...byWall.entries()]
    .sort(([a], [b]) => a - b)
    .map(([wall, parts]): Surface => {
      const gross = parts.reduce((sum, part) => sum + part.area, 0)
      const windows = room.windows.filter((window) => window.kind === "roof-window" && window.wall === wall)
      const off = voidsOut(windows, least)
      const common = {
        part: "slope" as const,
        state: input.slopes ?? input.ceiling,
        gross,
        off,
        area: Math.max(0, gross - off),
      }
      const name = `Slope over wall ${wall}`
      if (input.slopeIs === "ceiling") return { name, as: "ceiling", colour: input.ceilingColour, ...common }
      return { name, as: "wall", colour: input.wallColour, ...common }
    })
}

function wallSurfaces(room: Room, input: DecoratingInputs, least: SquareMetres): Surface[] {
  return room.walls
    .filter((wall) => wall.is !== "open-edge" && wall.is !== "wardrobe" && !input.leave.includes(wall.number))
    .map((wall): Surface => {
      const off = voidsOut([...wall.doors, ...wall.windows], least)
      const accent = input.accents.find((each) => each.wall === wall.number)
      return {
        name: `Wall ${wall.number}`,
        part: "wall",
        as: "wall",
        state: input.walls,
        colour: accent?.colour ?? input.wallColour,
        ...(accent?.product ? { product: accent.product } : {}),
        gross: wall.gross,
        off,
        area: Math.max(0, wall.gross - off),
      }
    })
}

/** Reveals as surveyed, with the wall's colour. */
function reveals(room: Room, input: DecoratingInputs): Surface[] {
  const area = room.reveals
    .filter((reveal) => !input.leave.includes(reveal.wall))
    .reduce((sum, reveal) => sum + reveal.area, 0)
  if (area === 0) return []
  return [
    {
      name: "Window reveals",
      part: "reveal",
      as: "wall",
      state: input.walls,
      colour: input.wallColour,
      gross: area,
      off: 0,
      area,
    },
  ]
}

function tiled(walls: Surface[], input: DecoratingInputs, facts: RoomFacts): Surface[] {
  const plain = walls.filter((wall) => wall.colour === input.wallColour && !wall.product)
  const most = plain.reduce((sum, wall) => sum + wall.area, 0)
  const off = Math.min(facts.tiledWall ?? 0, most)
  if (off <= 0) return []
  return [
    {
      name: "Less: tiled wall",
      part: "wall",
      as: "wall",
      state: input.walls,
      colour: input.wallColour,
      gross: 0,
      off,
      area: -off,
    },
  ]
}
