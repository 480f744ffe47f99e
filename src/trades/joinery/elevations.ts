import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import { type Mm, mmText } from "../../kernels/units.ts"
import type { Room, Wall } from "../../survey/room.ts"
import type { Piece } from "../trade.ts"
import type { SetOfArchitraves } from "./architraves.ts"
import type { Run } from "./runs.ts"

/** What is drawn on the walls of a room. */
export interface Unfolded {
  room: Room
  /** How far the finished floor stands over the room's datum, mm. */
  floor: Mm
  skirting: { thickness: Mm; width: Mm } | undefined
  architrave: { width: Mm } | undefined
  margin: Mm
  /** Where skirting runs, in the order in which its pieces are numbered. */
  runs: readonly Run[]
  sets: readonly SetOfArchitraves[]
  pieces: readonly Piece[]
}

/** Scale of the elevations, and the wall that a row of them holds, mm of the room; space between walls. */
export const elevationScale = 50
const rowHolds: Mm = 8000
const gap: Mm = 420
/** Height of lettering on paper, mm, and of marks over the skirting, mm of the room. */
const lettering = 2.5
const markOver: Mm = 150
const numberAt: Mm = 900

/** The walls that bear pieces, unfolded in order from inside, in rows that fit the sheet: skirting, architraves and their marks. */
export function unfoldedPieces(about: Unfolded): Drawing[] {
  const walls = about.room.walls.filter((wall) => about.pieces.some((piece) => piece.wall === wall.number))
  return rowsOf(walls).map((row) => rowDrawing(row, about))
}

function rowsOf(walls: readonly Wall[]): Wall[][] {
  const rows: Wall[][] = []
  let used = Number.POSITIVE_INFINITY
  for (const wall of walls) {
    if (used + wall.length > rowHolds) {
      rows.push([])
      used = 0
    }
    rows[rows.length - 1]!.push(wall)
    used += wall.length + gap
  }
  return rows
}

function rowDrawing(walls: readonly Wall[], about: Unfolded): Drawing {
  let at: Mm = 0
  const shapes = walls.flatMap((wall) => {
    const drawn = wallShapes(wall, about, at)
    at += wall.length + gap
    return drawn
  })
  const numbers = walls.map((wall) => wall.number).join(", ")
  return {
    title: `Walls ${numbers} with their pieces`,
    description: `Walls ${numbers} from inside: ${about.pieces
      .filter((piece) => walls.some((wall) => wall.number === piece.wall))
      .map((piece) => `${piece.mark} ${mmText(piece.length)}`)
      .join(", ")}.`,
    shapes: [...shapes, { kind: "scale-bar" }],
  }
}

function wallShapes(wall: Wall, about: Unfolded, at: Mm): Shape[] {
  const place = (x: Mm, y: Mm): Point => ({ x: at + x, y })
  const outline = wall.elevation.map(({ x, y }) => place(x, Math.max(0, y - about.floor)))
  const top = Math.max(...outline.map((point) => point.y))
  return [
    { kind: "polygon", points: outline, stroke: { width: 0.25 } },
    ...wall.windows.map(
      (window): Shape => ({
        kind: "box",
        at: place(window.fromLeft, window.sill - about.floor),
        width: window.width,
        height: window.height,
        stroke: { width: 0.18 },
      }),
    ),
    ...setShapes(wall, about, place),
    ...skirtingShapes(wall, about, place),
    {
      kind: "text",
      at: place(wall.length / 2, Math.min(numberAt, top / 2)),
      text: `wall ${wall.number}`,
      height: lettering,
      masked: true,
    },
  ]
}

type Place = (x: Mm, y: Mm) => Point

function setShapes(wall: Wall, { sets, architrave, margin, room }: Unfolded, place: Place): Shape[] {
  if (!architrave) return []
  const { width } = architrave
  return sets
    .filter((set) => set.wall === wall.number)
    .flatMap(({ door, outerFrom, outerTo, inside }): Shape[] => {
      const head = inside.height + margin
      const box = (x: Mm, y: Mm, wide: Mm, high: Mm): Shape => ({
        kind: "box",
        at: place(x, y),
        width: wide,
        height: high,
        stroke: { width: 0.25 },
        fill: "white",
      })
      const text = (x: Mm, y: Mm, words: string): Shape => ({
        kind: "text",
        at: place(x, y),
        text: words,
        height: lettering,
        masked: true,
      })
      const mark = `${room.id}-${wall.number}-${door}`
      return [
        box(outerFrom, 0, width, head + width),
        box(outerTo - width, 0, width, head + width),
        box(outerFrom, head, outerTo - outerFrom, width),
        text((outerFrom + outerTo) / 2, head / 2, `${mark}\nL, H, R`),
      ]
    })
}

function skirtingShapes(wall: Wall, about: Unfolded, place: Place): Shape[] {
  const { skirting, pieces } = about
  if (!skirting) return []
  const own = pieces.filter((piece) => piece.wall === wall.number && piece.what.startsWith("skirting"))
  const runs = about.runs.filter((run) => run.wall === wall)
  return runs.flatMap((run, index): Shape[] => {
    const parts = own.filter((piece) => new RegExp(`-S${index + 1}[a-h]?$`).test(piece.mark))
    const total = parts.reduce((sum, piece) => sum + piece.length, 0)
    let from = run.from
    return parts.flatMap((piece): Shape[] => {
      const wide = ((run.to - run.from) * piece.length) / total
      const x = from
      from += wide
      return [
        {
          kind: "box",
          at: place(x, 0),
          width: wide,
          height: skirting.width,
          stroke: { width: 0.35 },
          fill: "light",
        },
        {
          kind: "text",
          at: place(x + wide / 2, skirting.width + markOver),
          text: `${piece.mark.split("-").at(-1)} ${mmText(piece.length)}`,
          height: lettering,
          masked: true,
          leader: true,
        },
      ]
    })
  })
}
