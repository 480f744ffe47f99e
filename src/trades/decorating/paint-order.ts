import type { Block, SheetModel } from "../../kernels/paper.ts"
import { leastCostTins } from "../../kernels/tins.ts"
import { fixed, roundHalfUp } from "../../kernels/units.ts"
import type { Room } from "../../survey/room.ts"
import { type JobFacts, noWork, type Quantity, type Work } from "../trade.ts"
import { paintName } from "./coats.ts"

/** One paint over the whole job. */
export interface PaintNeed {
  product: string
  name: string
  /** Litres by room, net and with waste, in room order. */
  rooms: { room: string; net: number; gross: number }[]
  reserve: number
  need: number
  tins: { litres: number; count: number }[]
  over: number
}

type RoomWork = { room: Room; work: Work }

/** Whole tins over the job for every paint: rooms' litres with waste, a touch-up reserve for finishing colours, least cost. */
export function paintNeeds(job: JobFacts, rooms: RoomWork[]): PaintNeed[] {
  const litres = rooms.flatMap(({ work }) =>
    work.quantities.filter((each) => each.unit === "l" && each.product),
  )
  const products = [...new Set(litres.map((each) => each.product!))]
  return products.flatMap((id): PaintNeed[] => {
    const product = job.product(id, "liquid")
    if (!product) return []
    const same = litres.filter((each) => each.product === id)
    const reserve = finishing.has(product.use) ? job.rules.value("decor-touch-up") : 0
    const need = same.reduce((sum, each) => sum + each.gross, 0) + reserve
    const { tins, over } = leastCostTins(need, product.tins)
    const byRoom = same.map(({ room, net, gross }) => ({ room: room ?? "", net, gross }))
    return [{ product: id, name: paintName(product), rooms: byRoom, reserve, need, tins, over }]
  })
}

/** Uses whose colour is kept for touching in. */
const finishing = new Set(["emulsion", "white-emulsion", "moisture-emulsion", "trim"])

/** The job's paint: reserve to order, and the sheet that says which tins are bought and why rooms do not add up to them. */
export function paintOrder(job: JobFacts, rooms: RoomWork[]): { work: Work; sheets: SheetModel[] } {
  const needs = paintNeeds(job, rooms)
  if (needs.length === 0) return { work: noWork(), sheets: [] }
  const rests = ["decor-waste", "decor-touch-up"]
  const work = {
    ...noWork(),
    quantities: needs.flatMap(reserveOf),
    rests,
    results: { paint: needs.map(rounded) },
  }
  return { work, sheets: [orderSheet(job, needs, rests)] }
}

function reserveOf(need: PaintNeed): Quantity[] {
  if (need.reserve === 0) return []
  const what = `${need.name}, kept for touching in`
  const { reserve } = need
  return [
    {
      trade: "decorating",
      room: null,
      what,
      product: need.product,
      net: reserve,
      gross: reserve,
      unit: "l",
      from: "once for the colour",
    },
  ]
}

function rounded(need: PaintNeed) {
  return {
    ...need,
    rooms: need.rooms.map(({ room, net, gross }) => ({
      room,
      net: roundHalfUp(net, 3),
      gross: roundHalfUp(gross, 3),
    })),
    need: roundHalfUp(need.need, 3),
    over: roundHalfUp(need.over, 3),
  }
}

function orderSheet(job: JobFacts, needs: PaintNeed[], rests: string[]): SheetModel {
  const waste = job.rules.value("decor-waste")
  return {
    kind: "paint-order",
    title: "Paint for the whole job",
    purpose: "Which tins are bought, for which rooms, and what is left.",
    room: null,
    trade: "decorating",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      tinTable(needs),
      {
        kind: "text",
        as: "lead",
        paragraphs: [
          `Why the rooms do not add up to tins: each room's sheet gives its own litres. Here ${waste} % is added for roller, tray and tin, the touch-up reserve once for each colour, and the sum over all rooms is filled with whole tins at least cost. A tin opened for one room goes on to the next.`,
          "Order all tins of a colour in one batch; mix the last tins of a batch with the first of another in a bucket before a new wall, never on it.",
        ],
      },
      roomTable(needs),
      { kind: "sign", roles: ["Decorator", "Office"] },
    ],
    rests,
  }
}

function tinTable(needs: PaintNeed[]): Block {
  return {
    kind: "table",
    caption: "Tins",
    columns: [
      { label: "Paint", width: 4 },
      { label: "Need l", as: "figure", width: 1.2 },
      { label: "Tins", as: "figure", width: 2.4 },
      { label: "Left over l", as: "figure", width: 1.3 },
      { label: "Batch", as: "write", width: 2 },
      { label: "Here", as: "tick", width: 0.8 },
    ],
    rows: needs.map((need) => ({
      cells: [need.name, fixed(need.need, 2), tinText(need.tins), fixed(need.over, 2), "", ""],
    })),
  }
}

/** Tins for the reader: `1 × 5 l + 1 × 2.5 l`. */
export function tinText(tins: PaintNeed["tins"]): string {
  return tins.map(({ litres, count }) => `${count} × ${litres} l`).join(" + ")
}

function roomTable(needs: PaintNeed[]): Block {
  return {
    kind: "table",
    caption: "Litres by room",
    columns: [
      { label: "Paint", width: 4 },
      { label: "Room", width: 1.5 },
      { label: "Net l", as: "figure", width: 1.3 },
      { label: "With waste l", as: "figure", width: 1.5 },
    ],
    rows: needs.flatMap((need) => [
      ...need.rooms.map(({ room, net, gross }) => ({
        cells: [need.name, room, fixed(net, 2), fixed(gross, 2)],
      })),
      ...(need.reserve > 0
        ? [{ cells: [need.name, "touch-up", fixed(need.reserve, 2), fixed(need.reserve, 2)] }]
        : []),
      { as: "total" as const, cells: [need.name, "together", "", fixed(need.need, 2)] },
    ]),
  }
}
