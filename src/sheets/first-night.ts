import { dateText } from "../kernels/calendar/date-text.ts"
import { textSize } from "../kernels/drawing/lettering.ts"
import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { FirstNight, FirstNightCondition } from "../programme/programme.ts"
import type { Room } from "../survey/room.ts"
import type { JobResult } from "./job-result.ts"

/** The first night in the new storey: what must be so before, each with its day, a place to sign and a box. */
export function firstNightSheet(result: JobResult): SheetModel | null {
  const night = result.programme.firstNight
  if (!night) return null
  return {
    kind: "first-night",
    title: "First night in the new storey",
    purpose: "Nobody sleeps upstairs until every box is ticked and signed, by whom it says.",
    room: null,
    trade: null,
    audience: ["trade", "client", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "warning",
        caption: "No sleeping here",
        items: [
          `${roomsText(night, result)}: nobody sleeps there before the evening of ${dateText(night.on)}, and not then either while a box below is empty.`,
        ],
      },
      conditionTable(night, result),
      {
        kind: "text",
        as: "note",
        paragraphs: [
          "The days are those of the programme; they move with it. Building control decides whether the way out, the doors and the alarms are as they must be; this sheet only collects what was done.",
        ],
      },
      {
        kind: "boxes",
        caption: "Released",
        labels: ["On", "By the foreman", "Building control: reference", "First night"],
      },
      { kind: "sign", roles: ["Foreman", "Client"] },
    ],
    rests: [],
  }
}

/** One notice for each room that could be slept in too soon, to hang on its door. */
export function noSleepingSheets(result: JobResult, room: Room): SheetModel[] {
  const night = result.programme.firstNight
  if (!night?.rooms.includes(room.id) || !couldSleep(room)) return []
  return [
    {
      kind: "no-sleeping",
      title: "No sleeping here",
      purpose: "Hang on the door until the first night is released (J-92); then take it down.",
      room: room.id,
      trade: null,
      audience: ["trade"],
      hosted: true,
      orientation: "portrait",
      datum: null,
      blocks: [
        { kind: "drawing", drawing: notice(room, night), caption: "Full size", scale: 1, maxHeight: 90 },
        conditionTable(night, result),
        { kind: "sign", roles: ["Foreman", "Taken down"] },
      ],
      rests: [],
    },
  ]
}

/** The warning that a room of the new storey carries before its first night; none elsewhere. */
export function noSleeping({ programme }: JobResult, room: Room): Block[] {
  const night = programme.firstNight
  if (!night?.rooms.includes(room.id)) return []
  return [
    {
      kind: "warning",
      caption: "No sleeping here",
      items: [
        `${room.id} ${room.name}: no sleeping before the evening of ${dateText(night.on)}, and only with sheet J-92 signed.`,
      ],
    },
  ]
}

/** The notice, to be read from the stair. */
function notice(room: Room, night: FirstNight): Drawing {
  const width = 170
  const height = 78
  const line = (text: string, y: number, letters: number): Shape => {
    const share = (width - 12) / textSize(text, letters, true).width
    const at = { x: width / 2, y }
    return { kind: "text", at, text, height: letters * Math.min(share, 1), bold: true, fixed: true }
  }
  return {
    title: `No sleeping in ${room.id}`,
    description: `Notice for the door of ${room.name}: no sleeping here before the evening of ${dateText(night.on)}, and only when the sheet of the first night is signed.`,
    shapes: [
      { kind: "box", at: { x: 0, y: 0 }, width, height, stroke: { width: 0.7 }, fill: "none" },
      line("NO SLEEPING HERE", 58, 15),
      line(`${room.id} ${room.name}`, 38, 9),
      line(`before the evening of ${dateText(night.on)},`, 22, 7),
      line("and only when sheet J-92 is signed", 10, 6),
    ],
  }
}

function couldSleep({ use }: Room): boolean {
  return use === "bedroom" || use === "study" || use === "living"
}

function roomsText({ rooms }: FirstNight, { house }: JobResult): string {
  return house.rooms
    .filter((room) => rooms.includes(room.id) && couldSleep(room))
    .map(({ id, name }) => `${id} ${name}`)
    .join(", ")
}

function conditionTable(night: FirstNight, result: JobResult): Block {
  return {
    kind: "table",
    caption: "All of this first",
    columns: [
      { label: "What must be so", width: 60 },
      { label: "Planned ready", as: "figure", width: 28 },
      { label: "Seen by, on", as: "write", width: 30 },
      { label: "So", as: "tick", width: 9 },
    ],
    rows: night.conditions.flatMap((condition) => conditionRows(condition, result)),
  }
}

function conditionRows({ id, on, after }: FirstNightCondition, result: JobResult): Row[] {
  const row = (text: string): Row => ({ cells: [text, on ? dateText(on) : "to be agreed", "", ""] })
  switch (id) {
    case "doors": {
      const doors = [...new Set(after.map((key) => key.split("/")[1]!))].filter((door) => door !== "house")
      const sorted = result.house.doors.map((door) => door.id).filter((door) => doors.includes(door))
      return [
        row(
          `Doors ${sorted.join(", ")}: leaf hung, gaps measured and written in, latches by itself or by hand as its sheet says`,
        ),
      ]
    }
    case "enclosure": {
      const lights = after.filter((key) => key.endsWith("/light")).map((key) => key.split("/")[1]!)
      const over = lights.length > 0 ? `; light over ${lights.join(", ")} closed` : ""
      return [row(`Stair enclosure whole: gaps round linings, pipes and cables stopped${over}`)]
    }
    case "alarms":
      return [
        row("Alarms on every storey bare, linked, sounded together, heard at every bed with its door shut"),
      ]
    case "guarding":
      return [
        row("Stair: guarding, handrail and nosings fixed and tried by hand; lit, switched from both ends"),
      ]
    case "rooms":
      return [row("Work in the new rooms ended; floors dry, covers and tools out")]
    case "control":
      return [row("Building control has looked and said in writing that the storey may be slept in")]
  }
}
