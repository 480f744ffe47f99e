import { dayText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { fixed, mmText } from "../kernels/units.ts"
import type { DatedStep } from "../programme/programme.ts"
import { roomPlan } from "../survey/drawings/room-plan.ts"
import type { Room } from "../survey/room.ts"
import { datumText } from "../trades/datum.ts"
import { noSleeping } from "./first-night.ts"
import { type JobResult, resultsIn } from "./job-result.ts"
import { headroomLabel } from "./words.ts"

/** The room at a glance: plan, wall numbers, sizes, who is in when, lock-outs, hazards. */
export function glanceSheet(result: JobResult, room: Room): SheetModel {
  const steps = result.programme.steps.filter((each) => each.step.room === room.id)
  const floorBuildUp = result.passed.get(room.id)?.floorBuildUp ?? room.storey.finishNow
  return {
    kind: "glance",
    title: "Room at a glance",
    purpose: "Find the walls by number, the sizes, and who is in the room when.",
    room: room.id,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: datumText(room),
    blocks: [
      ...noSleeping(result, room),
      sizes(result, room, floorBuildUp),
      {
        kind: "drawing",
        drawing: roomPlan(room, { floorBuildUp, rules: result.rules }),
        caption:
          "Walls are numbered clockwise from the entry; each is measured left to right as you face it.",
        maxHeight: 116,
      },
      trust(room),
      ...whoIsIn(result, steps),
      ...hidden(room),
      ...stays(room),
    ],
    rests: [],
  }
}

function sizes(result: JobResult, room: Room, buildUp: number): Block {
  const items = [
    { label: "Floor", value: fixed(room.floorArea, 2), unit: "m²" },
    { label: "Round the walls", value: fixed(room.perimeter / 1000, 2), unit: "m" },
    { label: "Ceiling", value: fixed(room.ceiling.flatArea + room.ceiling.slopeArea, 2), unit: "m²" },
    { label: "Walls, openings out", value: fixed(room.wallNet, 2), unit: "m²" },
    {
      label: room.ceiling.lowest < room.ceiling.highest ? "Height, low to high" : "Height",
      value:
        room.ceiling.lowest < room.ceiling.highest
          ? `${mmText(room.ceiling.lowest)}–${mmText(room.ceiling.highest)}`
          : mmText(room.ceiling.highest),
      unit: "mm",
    },
  ]
  if (room.ceiling.slopeArea > 0) {
    const low = result.rules.value("survey-headroom-low")
    items.push({ label: headroomLabel(low), value: fixed(room.headroom(low, buildUp), 2), unit: "m²" })
  }
  return { kind: "figures", items }
}

function trust(room: Room): Block {
  const { trust } = room
  if (!trust.fixed) {
    const needs = trust.needs.map(({ from, to }) => `from corner ${from} to corner ${to}`)
    const need = `Still to be taped: ${needs.join("; ") || "diagonals"} (corner n is the left end of wall n).`
    return {
      kind: "warning",
      caption: "Shape not fixed",
      items: [`The measurements do not fix this room's shape: it is drawn with square corners. ${need}`],
    }
  }
  return {
    kind: "text",
    as: "note",
    paragraphs: [
      `Closed to ${fixed(trust.closure, 0)} mm with the turns as written; after adjustment no measurement moves more than ${fixed(trust.worstResidual, 1)} mm (tape ±${room.measured.tape}).`,
    ],
  }
}

function whoIsIn(result: JobResult, steps: readonly DatedStep[]): Block[] {
  if (steps.length === 0) return [{ kind: "text", paragraphs: ["No work in this room."] }]
  const { zone, crews } = result.programme
  const rows = crews.flatMap((crew) => {
    const own = steps.filter((each) => each.crew === crew.id)
    if (own.length === 0) return []
    const days = [
      ...new Set(own.flatMap((each) => [clockAt(each.start, zone).date, clockAt(each.finish, zone).date])),
    ].sort()
    const trades = [
      ...new Set(own.map((each) => result.trades.find((trade) => trade.id === each.step.trade)?.title ?? "")),
    ]
    return [{ cells: [crew.name, trades.join(", "), spansOf(days)] }]
  })
  const locked = steps.filter((each) => each.step.gate?.forbids.includes("walk"))
  const blocks: Block[] = [
    {
      kind: "table",
      caption: "Who is in the room",
      columns: [
        { label: "Crew", width: 3 },
        { label: "For", width: 4 },
        { label: "Days", width: 6, as: "figure" },
      ],
      rows,
    },
  ]
  if (locked.length > 0) {
    blocks.push({
      kind: "warning",
      caption: "Keep out",
      items: locked.map((each) => {
        const from = clockAt(each.finish, zone)
        const until = clockAt(each.ready, zone)
        return `${each.step.gate!.process}: from ${dayText(from.date)} ${from.time} until ${dayText(until.date)} ${until.time}.`
      }),
    })
  }
  return blocks
}

/** Days as text, runs of neighbours joined by a dash. */
function spansOf(days: readonly string[]): string {
  const spans: { from: string; to: string }[] = []
  for (const day of days) {
    const last = spans[spans.length - 1]
    if (last && Date.parse(day) - Date.parse(last.to) <= 86_400_000) last.to = day
    else spans.push({ from: day, to: day })
  }
  return spans
    .map(({ from, to }) => (from === to ? dayText(from) : `${dayText(from)} – ${dayText(to)}`))
    .join("; ")
}

function hidden(room: Room): Block[] {
  if (room.hidden.length === 0) {
    return [
      {
        kind: "warning",
        caption: "Scan first",
        items: [
          "Nothing is known of pipes and cables in this room: scan floor and walls before fixing anything.",
        ],
      },
    ]
  }
  return [
    {
      kind: "warning",
      caption: "Do not fix here",
      items: room.hidden.map((each) => {
        const to = each.to === undefined ? "" : ` to ${mmText(each.to)}`
        return `${each.what[0]!.toUpperCase()}${each.what.slice(1)} in the ${each.in}: wall ${each.wall}, ${mmText(each.fromLeft)}${to} from its left end${each.note ? ` (${each.note})` : ""}.`
      }),
    },
  ]
}

function stays(room: Room): Block[] {
  return room.stays.length > 0 ? [{ kind: "list", caption: "Stays; protect it", items: room.stays }] : []
}

/** True if a room has any work. */
export function hasWork(result: JobResult, room: Room): boolean {
  return resultsIn(result, room).length > 0
}
