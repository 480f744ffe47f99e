import { dateText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { dayBlocks } from "../programme/day-blocks.ts"
import { waysOf } from "../programme/ways.ts"
import type { JobResult } from "./job-result.ts"

/** Doors of the rooms that people live in: which are done on which day, none of them open in the evening. */
export function doorsBelowSheet(result: JobResult): SheetModel | null {
  const rows = dayRows(result)
  if (rows.length === 0) return null
  return {
    kind: "doors-below",
    title: "Doors below, day by day",
    purpose: "Only these doors on that day; each hung, shut and latched before the evening.",
    room: null,
    trade: "doors",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      rules(result),
      {
        kind: "table",
        caption: "One day for each door",
        columns: [
          { label: "Day", as: "figure", width: 27 },
          { label: "Door", as: "mark", width: 9 },
          { label: "Where", width: 34 },
          { label: "Opened from", as: "figure", width: 15 },
          { label: "New leaf hung by", as: "figure", width: 16 },
          { label: "In the evening, by", as: "write", width: 26 },
          { label: "Shuts, latches", as: "tick", width: 14 },
        ],
        rows,
        note: "Times are the programme’s. If a leaf cannot hang by evening, the old one goes back on: keep it and its screws by the doorway until then.",
      },
      takenOff,
      { kind: "sign", roles: ["Joiner", "Foreman"] },
    ],
    rests: [],
  }
}

/** Doorways that are opened and closed again on one day, in order of that day. */
function dayRows({ house, programme, results }: JobResult): Row[] {
  const steps = results.flatMap((each) => each.work.steps)
  const blocks = dayBlocks(steps, house, waysOf(house))
  const doors = [...new Set(blocks.values())]
  const dated = doors.flatMap((id) => {
    const own = programme.steps.filter(({ step }) => blocks.get(step.key) === id)
    const door = house.doors.find((each) => each.id === id)
    if (own.length === 0 || !door) return []
    const from = own.reduce((first, each) => (each.start < first.start ? each : first))
    const to = own.reduce((last, each) => (each.finish > last.finish ? each : last))
    return [{ door, from: from.start, to: to.finish }]
  })
  let day = ""
  return dated
    .sort((a, b) => a.from - b.from)
    .map(({ door, from, to }) => {
      const start = clockAt(from, programme.zone)
      const shown = start.date === day ? "" : dateText(start.date)
      day = start.date
      const bath = door.between.some((id) =>
        house.rooms.some((room) => room.id === id && room.use === "bathroom"),
      )
      const where = `${door.name}${bath ? " (locks the same day)" : ""}`
      return { cells: [shown, door.id, where, start.time, clockAt(to, programme.zone).time, "", ""] }
    })
}

function rules({ programme }: JobResult): Block {
  const night = programme.firstNight
  return {
    kind: "warning",
    caption: "Before a leaf comes off",
    items: [
      "All oak and plaster has gone up the stair; nothing large is carried through this doorway any more.",
      ...(night
        ? [
            `Nobody sleeps upstairs yet: all of these hang before the first night (${dateText(night.on)} at the earliest).`,
          ]
        : []),
      "Only as many as are hung today: the new leaf stands trimmed beside the doorway before the old one is unscrewed.",
      "A bathroom’s door hangs and locks the same day.",
    ],
  }
}

/** Leaves that come off for paint or planing: written in, back by evening. */
const takenOff: Block = {
  kind: "table",
  caption: "Leaf taken off to be painted, planed or eased: back by evening",
  columns: [
    { label: "Day", as: "write", width: 20 },
    { label: "Door", as: "write", width: 14 },
    { label: "Off at", as: "write", width: 16 },
    { label: "For", as: "write", width: 40 },
    { label: "Back at, by", as: "write", width: 30 },
    { label: "Latches", as: "tick", width: 13 },
  ],
  rows: Array.from({ length: 6 }, () => ({ cells: ["", "", "", "", "", ""] })),
}
