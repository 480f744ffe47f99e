import type { Block, SheetModel } from "../../kernels/paper.ts"
import { fixed, mmText, squareMetres } from "../../kernels/units.ts"
import type { Room } from "../../survey/room.ts"
import { type JobFacts, noWork, type Quantity, type Work } from "../trade.ts"
import { planOfWork } from "./floor-plans.ts"
import { leftBy } from "./hand.ts"
import { lengthOf } from "./layout/boards.ts"
import { fewestPossible } from "./layout/bound.ts"
import { packRun, packsHolding } from "./layout/packs.ts"
import { type FloorPlan, packedLengths } from "./plan-floor.ts"
import type { LaidPiece } from "./rows.ts"

/** A room with its floor. */
interface Floored {
  room: Room
  plan: FloorPlan
}

/** An offcut of one room that is laid in another. */
export interface LentOffcut {
  /** Room and mark, as written on it: `A1 3R`. */
  mark: string
  from: string
  length: number
  to: string
  /** Where it is laid: rows, and what it is there. */
  pieces: { row: string; role: LaidPiece["role"]; length: number }[]
}

/** All rooms of one board: what they take together. */
export interface BoardsOfJob {
  product: string
  name: string
  rooms: { room: string; boards: number; packs: number }[]
  boards: number
  /** No plan for these rows takes fewer boards for all rooms together; null for boards of several lengths. */
  boardsAtLeast: number | null
  /** Packs that hold all boards, and packs kept besides. */
  packs: number
  sparePacks: number
  lent: LentOffcut[]
}

/**
 * Boards across all rooms of a product. Rooms are laid in the house's order and hand their offcuts on; each board is counted in the room
 * that opens it. Packs are made whole and spare packs added once for the job, not room by room.
 */
export async function floorsAcross(
  job: JobFacts,
  rooms: { room: Room; work: Work }[],
): Promise<{ work: Work; sheets: SheetModel[] }> {
  const floored = rooms.flatMap(({ room, work }): Floored[] => {
    const plan = planOfWork(work)
    return plan ? [{ room, plan }] : []
  })
  const products = [...new Set(floored.map(({ plan }) => plan.board.id))]
  const all = products.map((product) =>
    boardsOf(
      floored.filter(({ plan }) => plan.board.id === product),
      job.rules.value("floor-spare-packs"),
    ),
  )
  return {
    work: {
      ...noWork(),
      quantities: all.flatMap((boards) => packLines(boards, floored)),
      rests: products.length > 0 ? ["floor-spare-packs", "floor-mixed-packs"] : [],
      results: { boards: all },
    },
    sheets: all.some(({ rooms: own }) => own.length > 1) ? [boardsSheet(job, all)] : [],
  }
}

/** What the rooms of one board take together. @param sparePacks packs kept besides */
export function boardsOf(floored: readonly Floored[], sparePacks: number): BoardsOfJob {
  const { board } = floored[0]!.plan
  return {
    product: board.id,
    name: board.name,
    rooms: floored.map(({ room, plan }) => ({
      room: room.id,
      boards: plan.layout.boards,
      packs: plan.packs,
    })),
    boards: floored.reduce((sum, { plan }) => sum + plan.layout.boards, 0),
    boardsAtLeast: board.mix ? null : fewestForAll(floored),
    packs: packsHolding(floored.at(-1)!.plan.taken, packedLengths(board)),
    sparePacks,
    lent: floored.flatMap(({ room, plan }) => lentTo(room, plan)),
  }
}

/** A bound for all rooms as if any offcut could go anywhere: their rows as one list, those of two rooms no neighbours. */
function fewestForAll(floored: readonly Floored[]): number {
  const { layout } = floored[0]!.plan
  const runs = floored.flatMap(({ room, plan }) =>
    plan.layout.runs.map((run) => ({ ...run, name: `${room.id} ${run.name}` })),
  )
  const { width, length } = layout.board
  return fewestPossible(runs, { ...layout.limits, boardLength: length, boardWidth: width })
}

function lentTo(room: Room, { layout }: FloorPlan): LentOffcut[] {
  const runs = layout.rows.flatMap((row) => row.runs)
  return layout.brought.map((offcut) => ({
    mark: offcut.mark,
    from: leftBy(offcut),
    length: lengthOf(offcut),
    to: room.id,
    pieces: runs.flatMap((run) =>
      run.pieces
        .filter((piece) => piece.source === offcut.mark)
        .map(({ role, left, right }) => ({ row: run.name, role, length: right - left })),
    ),
  }))
}

/** What makes the rooms' boards whole packs of a mix, and the spare packs. */
function packLines(boards: BoardsOfJob, floored: readonly Floored[]): Quantity[] {
  const { board } = floored.find(({ plan }) => plan.board.id === boards.product)!.plan
  const packArea = squareMetres(board.width * packRun(packedLengths(board)))
  const own = floored.filter(({ plan }) => plan.board.id === board.id)
  const used = own.reduce((sum, { plan }) => sum + squareMetres(plan.layout.areas.bought), 0)
  const line = (what: string, gross: number, from: string): Quantity => ({
    trade: "floors",
    room: null,
    what,
    product: board.id,
    net: 0,
    gross,
    unit: "m2",
    from,
  })
  return [
    ...(board.mix
      ? [
          line(
            "floor boards of lengths that no row takes",
            boards.packs * packArea - used,
            `${boards.packs} whole packs of mixed lengths hold what all rooms take`,
          ),
        ]
      : []),
    ...(boards.sparePacks > 0
      ? [
          line(
            "floor boards, spare",
            boards.sparePacks * packArea,
            `${boards.sparePacks} pack${boards.sparePacks === 1 ? "" : "s"} of the same batch for the job, kept for damage and repairs`,
          ),
        ]
      : []),
  ]
}

function boardsSheet(job: JobFacts, all: readonly BoardsOfJob[]): SheetModel {
  return {
    kind: "floor",
    title: "Boards across rooms",
    purpose: "How many boards and packs all rooms take together; which offcuts go from one room to the next.",
    room: null,
    trade: "floors",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: all.flatMap((boards) => [...countBlocks(job, boards), ...lentBlocks(boards)]),
    rests: ["floor-spare-packs", "floor-mixed-packs"],
  }
}

function countBlocks(job: JobFacts, boards: BoardsOfJob): Block[] {
  const { boards: count, boardsAtLeast: least, packs, sparePacks } = boards
  const proven =
    least === null
      ? ""
      : least === count
        ? "For these rows that is proven fewest, whichever room an offcut goes to. "
        : `No plan for these rows takes fewer than ${least}. `
  return [
    {
      kind: "figures",
      items: [
        { label: "Boards to lay", value: String(count) },
        { label: "Packs that hold them", value: String(packs) },
        { label: "Spare packs", value: String(sparePacks) },
        { label: "Offcuts carried on", value: String(boards.lent.length) },
      ],
    },
    {
      kind: "table",
      caption: boards.name,
      columns: [
        { label: "Room, in laying order", as: "mark", width: 2 },
        { label: "Boards opened", as: "figure" },
        { label: "Packs to bring in", as: "figure" },
        { label: "Batch numbers", as: "write", width: 3 },
      ],
      rows: boards.rooms.map((each) => ({
        cells: [each.room, String(each.boards), String(each.packs), ""],
      })),
      note: `${proven}What is left in a room's last pack goes on to the next room. Open ${job.rules.value("floor-mixed-packs")} packs at a time and mix them. One batch for all rooms; the spare stays sealed, marked with room and date, and goes to the client.`,
    },
  ]
}

function lentBlocks({ lent }: BoardsOfJob): Block[] {
  if (lent.length === 0) return []
  return [
    {
      kind: "table",
      caption: "Offcuts carried from room to room",
      columns: [
        { label: "Written on it", as: "mark", width: 1.4 },
        { label: "Long", as: "figure" },
        { label: "Left in", as: "mark" },
        { label: "Laid in", as: "mark" },
        { label: "Row, as, cut to", width: 3 },
        { label: "Done", as: "tick" },
      ],
      rows: lent.map((each) => ({
        cells: [
          each.mark,
          mmText(each.length),
          each.from,
          each.to,
          each.pieces
            .map(
              ({ row, role, length }) =>
                `${row}, ${role === "single" ? "wall to wall" : role}, ${mmText(length)}`,
            )
            .join("; "),
          "",
        ],
      })),
      note: `Lay the rooms in the order above. Write room and mark on each offcut listed as it is cut, and carry it on. ${fixed(lent.reduce((sum, each) => sum + each.length, 0) / 1000, 1)} m are carried in all. Other offcuts that a room's sheet calls spare may go.`,
    },
  ]
}
