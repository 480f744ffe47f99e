import { z } from "zod"
import type { SheetModel } from "../../kernels/paper.ts"
import { fixed, type Mm, mmText, squareMetres } from "../../kernels/units.ts"
import type { Room } from "../../survey/room.ts"
import { type JobFacts, noWork, type Work } from "../trade.ts"

/** What one room tells of its boards: its single pieces from fresh boards, and what it leaves. */
const boardsOfRoom = z.object({
  product: z.string(),
  boards: z.number(),
  boardsAtLeast: z.number(),
  offcuts: z.array(
    z.object({ mark: z.string(), length: z.number(), end: z.enum(["left", "right", "none"]) }),
  ),
  rows: z.array(
    z.object({
      row: z.string(),
      pieces: z.array(
        z.object({
          board: z.number(),
          role: z.enum(["start", "whole", "finish", "single"]),
          length: z.number(),
          from: z.string(),
        }),
      ),
    }),
  ),
})
type BoardsOfRoom = z.infer<typeof boardsOfRoom>

/** An offcut of one room that serves another. */
export interface SharedOffcut {
  from: string
  mark: string
  length: Mm
  /** Where it goes: room, row, and place in the row. */
  to: string
  row: string
  role: "start" | "finish" | "single"
  needed: Mm
}

/** A piece that is the only one cut of its board. */
interface LonePiece {
  row: string
  role: "start" | "finish" | "single"
  length: Mm
}

/**
 * Boards across all rooms of a product, in the rooms' order: an offcut that one room leaves lays a piece of a later room that would else
 * be the only one cut of a fresh board. Each such piece saves a board; longest pieces first, each of the shortest offcut that does.
 */
export async function floorsAcross(
  job: JobFacts,
  rooms: { room: Room; work: Work }[],
): Promise<{ work: Work; sheets: SheetModel[] }> {
  const told = rooms.flatMap(({ room, work }) => {
    const read = boardsOfRoom.safeParse(work.results)
    return read.success ? [{ room, boards: read.data }] : []
  })
  const products = [...new Set(told.map(({ boards }) => boards.product))]
  const shared = products.map((product) => {
    const own = told.filter(({ boards }) => boards.product === product)
    return { product, own, offcuts: sharedOffcuts(own.map(({ room, boards }) => ({ id: room.id, boards }))) }
  })
  const total = sumOf(told.map(({ boards }) => boards.boards))
  const saved = sumOf(shared.map(({ offcuts }) => offcuts.length))
  return {
    work: {
      ...noWork(),
      quantities: shared.flatMap(({ product, offcuts }) => lessBoards(job, product, offcuts)),
      results: {
        boards: total - saved,
        boardsRoomByRoom: total,
        boardsAtLeastRoomByRoom: sumOf(told.map(({ boards }) => boards.boardsAtLeast)),
        shared: shared.flatMap(({ offcuts }) => offcuts),
      },
    },
    sheets: saved > 0 ? [boardsSheet(job, shared, { total, saved })] : [],
  }
}

/** Which offcuts go from room to later room. */
export function sharedOffcuts(rooms: readonly { id: string; boards: BoardsOfRoom }[]): SharedOffcut[] {
  const found: SharedOffcut[] = []
  const hand: { from: string; mark: string; length: Mm; end: "left" | "right" | "none" }[] = []
  for (const { id, boards } of rooms) {
    const lone = lonePieces(boards).sort((a, b) => b.length - a.length)
    const spent = new Set<string>()
    for (const piece of lone) {
      const best = hand
        .filter((offcut) => offcut.length >= piece.length && serves(offcut.end, piece.role))
        .sort((a, b) => a.length - b.length)[0]
      if (!best) continue
      hand.splice(hand.indexOf(best), 1)
      spent.add(piece.row)
      const { from, mark, length } = best
      found.push({ from, mark, length, to: id, row: piece.row, role: piece.role, needed: piece.length })
    }
    const left = boards.offcuts.filter((offcut) => !spent.has(rowOf(offcut.mark)))
    hand.push(...left.map((offcut) => ({ from: id, ...offcut })))
  }
  return found
}

/** Pieces that are the only one of a board: what is left of it is spare or thrown away. */
function lonePieces({ rows }: BoardsOfRoom): LonePiece[] {
  const pieces = rows.flatMap(({ row, pieces: own }) => own.map((piece) => ({ row, ...piece })))
  return pieces.flatMap(({ row, role, length, board, from }) => {
    const isLone = from === "new board" && pieces.filter((other) => other.board === board).length === 1
    return isLone && role !== "whole" ? [{ row, role, length }] : []
  })
}

function serves(end: "left" | "right" | "none", role: LonePiece["role"]): boolean {
  return role === "single" || (role === "start" ? end === "right" : end === "left")
}

/** The row whose cut left an offcut: its mark without the letters of what it kept. */
function rowOf(mark: string): string {
  return mark.replace(/[GT]?[LRMW]\d*$/, "")
}

function lessBoards(job: JobFacts, product: string, offcuts: readonly SharedOffcut[]): Work["quantities"] {
  const board = job.product(product, "board")
  if (!board || offcuts.length === 0) return []
  const area = squareMetres(board.width * board.length)
  return [
    {
      trade: "floors",
      room: null,
      what: "floor boards saved by offcuts of other rooms",
      product,
      net: 0,
      gross: -offcuts.length * area,
      unit: "m2",
      from: `${offcuts.length} pieces cut of another room's offcuts, a board of ${fixed(area, 3)} m2 each`,
    },
  ]
}

function boardsSheet(
  job: JobFacts,
  shared: readonly {
    product: string
    own: { room: Room; boards: BoardsOfRoom }[]
    offcuts: SharedOffcut[]
  }[],
  { total, saved }: { total: number; saved: number },
): SheetModel {
  return {
    kind: "floor",
    title: "Boards across rooms",
    purpose: "Which offcuts go from one room to the next; boards to buy for all rooms together.",
    room: null,
    trade: "floors",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "figures",
        items: [
          { label: "Boards, room by room", value: String(total) },
          { label: "Less, cut of offcuts", value: String(saved) },
          { label: "Boards to lay", value: String(total - saved) },
        ],
      },
      ...shared.map(({ product, own, offcuts }) => ({
        kind: "table" as const,
        caption: `${job.product(product, "board")?.name ?? product}: ${own.map(({ room, boards }) => `${room.id} ${boards.boards}`).join(", ")}`,
        columns: [
          { label: "Bring from", as: "mark" as const },
          { label: "Offcut", as: "mark" as const },
          { label: "Long", as: "figure" as const },
          { label: "To room", as: "mark" as const },
          { label: "Row", as: "mark" as const },
          { label: "As", width: 2 },
          { label: "Cut to", as: "figure" as const },
          { label: "Done", as: "tick" as const },
        ],
        rows: offcuts.map((each) => ({
          cells: [
            each.from,
            each.mark,
            mmText(each.length),
            each.to,
            each.row,
            each.role === "single" ? "wall to wall" : each.role,
            mmText(each.needed),
            "",
          ],
        })),
        note: "Lay the rooms in this order. Write room and mark on each offcut listed and carry it on; everything else that a room's sheet calls spare may go. Same batch only.",
      })),
    ],
    rests: [],
  }
}

function sumOf(figures: readonly number[]): number {
  return figures.reduce((sum, figure) => sum + figure, 0)
}
