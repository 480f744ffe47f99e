import { dayText, momentText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { OrderLine } from "../orders/orders.ts"
import type { DatedStep } from "../programme/programme.ts"
import type { Room } from "../survey/room.ts"
import type { JobResult } from "./job-result.ts"

/** White, radiators, heat, limits, oak, rest, lay: one line a room with the days of the programme; and air readings to write in. */
export function heatBeforeWoodSheet(result: JobResult): SheetModel | null {
  const { house, rules, programme } = result
  const rooms = house.rooms.filter((room) => stepIn(result, `floors/${room.id}/acclimatise`))
  if (rooms.length === 0) return null
  return {
    kind: "heat-before-wood",
    title: "Heat before wood",
    purpose: "No board comes into the house before its line is ticked from left to right.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "landscape",
    datum: null,
    blocks: [
      {
        kind: "table",
        caption: "In this order, each behind the one before",
        columns: [
          { label: "Room", as: "mark", width: 10 },
          { label: "White dry behind radiators", as: "figure", width: 22 },
          { label: "", as: "tick", width: 7 },
          { label: "Radiators hung", as: "figure", width: 20 },
          { label: "", as: "tick", width: 7 },
          { label: "Heating on", as: "figure", width: 20 },
          { label: "", as: "tick", width: 7 },
          {
            label: `Limits held ${rules.value("floor-heating-before")} working days, until`,
            as: "figure",
            width: 24,
          },
          { label: "", as: "tick", width: 7 },
          { label: "Boards into the room", as: "figure", width: 20 },
          { label: "", as: "tick", width: 7 },
          { label: "At rest until", as: "figure", width: 22 },
          { label: "", as: "tick", width: 7 },
          { label: "Laid from", as: "figure", width: 20 },
        ],
        rows: rooms.map((room) => roomRow(room, result)),
        note: "A room without a radiator goes by the last of its storey. Days are the programme’s; readings outside the limits move them.",
      },
      ...orders(result),
      readings(result),
      { kind: "sign", roles: ["Plumber: heat handed over", "Joiner: taken over"] },
    ],
    rests:
      programme.steps.length > 0
        ? ["floor-heating-before", "floor-acclimatise", "floor-air-humidity-least", "floor-air-humidity-most"]
        : [],
  }
}

function roomRow(room: Room, result: JobResult): Row {
  const { programme } = result
  const { zone } = programme
  const own = (key: string) => stepIn(result, key)
  const white = programme.steps.filter(
    ({ step }) => step.room === room.id && step.trade === "decorating" && step.stage === "white",
  )
  const dry = Math.max(0, ...white.map((each) => each.ready)) as DatedStep["ready"]
  const hung = own(`plumbing/${room.id}/radiators`)
  const heat = own(`plumbing/${room.id}/heating-on`)
  const warm = programme.steps
    .filter(({ step }) => step.stage === "heat" && step.gate && sameStorey(step.room, room, result))
    .sort((a, b) => b.ready - a.ready)[0]
  const rest = own(`floors/${room.id}/acclimatise`)
  const lay = own(`floors/${room.id}/boards`)
  const day = (moment: DatedStep["start"]) => dayText(clockAt(moment, zone).date)
  return {
    cells: [
      room.id,
      white.length > 0 ? day(dry) : "–",
      "",
      hung ? day(hung.finish) : "none here",
      "",
      heat ? day(heat.start) : "none here",
      "",
      warm ? day(warm.ready) : "read the air",
      "",
      rest ? day(rest.start) : "–",
      "",
      rest ? momentText(rest.ready, zone) : "–",
      "",
      lay ? day(lay.start) : "–",
    ],
  }
}

function orders({ orders: { lines } }: JobResult): Block[] {
  const boards = lines.filter(({ product }) => product.kind === "board")
  if (boards.length === 0) return []
  return [
    {
      kind: "table",
      caption: "Boards: the days between which they may come",
      columns: [
        { label: "Product", width: 60 },
        { label: "Order by", as: "figure", width: 22 },
        { label: "Not before", as: "figure", width: 22 },
        { label: "Not after", as: "figure", width: 22 },
        { label: "Planned", as: "figure", width: 22 },
        { label: "Why not before", width: 40 },
        { label: "Came on", as: "write", width: 30 },
      ],
      rows: boards.map((line: OrderLine) => ({
        cells: [
          line.product.name,
          dayText(line.orderBy),
          dayText(line.earliest),
          dayText(line.latest),
          dayText(line.comesOn),
          line.notBefore ?? "as near to laying as it goes",
          "",
        ],
      })),
    },
  ]
}

/** Air readings to write in, morning and evening. */
function readings({ rules }: JobResult): Block {
  const low = rules.value("floor-air-humidity-least")
  const high = rules.value("floor-air-humidity-most")
  const columns: Extract<Block, { kind: "table" }>["columns"] = [
    { label: "Day, room", as: "write", width: 24 },
    { label: "Morning °C, %", as: "write", width: 24 },
    { label: "Evening °C, %", as: "write", width: 24 },
    { label: "In limits", as: "tick", width: 10 },
  ]
  return {
    kind: "table",
    caption: `Air, morning and evening: ${low} to ${high} % for laying`,
    columns: [...columns, ...columns],
    rows: Array.from({ length: 7 }, () => ({ cells: Array.from({ length: 8 }, () => "") })),
  }
}

function stepIn({ programme }: JobResult, key: string): DatedStep | undefined {
  return programme.steps.find(({ step }) => step.key === key)
}

function sameStorey(id: string | null, room: Room, { house }: JobResult): boolean {
  return house.rooms.some((each) => each.id === id && each.storey.id === room.storey.id)
}
