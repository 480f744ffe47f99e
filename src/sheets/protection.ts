import { dayText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed, squareMetres } from "../kernels/units.ts"
import type { DatedStep } from "../programme/programme.ts"
import { waysOf } from "../programme/ways.ts"
import type { Room, Stair } from "../survey/room.ts"
import type { JobResult } from "./job-result.ts"

/** One thing that is covered: what with, how much, from when until when. */
export interface Covered {
  where: string
  what: string
  amount: string
  with: string
  on: string
  off: string
}

/** What is protected, with what, when it goes on and comes off by the programme; and how rooms are left clean. */
export function protectionSheet(result: JobResult): SheetModel | null {
  const covered = coveredIn(result)
  if (covered.length === 0) return null
  return {
    kind: "protection",
    title: "Protection",
    purpose: "Put on before, take off after: on the days here, not when somebody thinks of it.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "warning",
        caption: "New oak, oiled or not",
        items: [
          "Tape the covering to itself, never to wood: tape lifts oil, and leaves its edge in the colour.",
          "Board or paper that breathes; no plastic sheet left lying: damp under it stains, and oil does not harden.",
          "No covering on fresh oil before its days on the drying sheet have passed.",
        ],
      },
      scheduleTable(covered),
      cleanDown(result),
      { kind: "sign", roles: ["Foreman"] },
    ],
    rests: [],
  }
}

/** Everything covered, floors first, then stairs, doors and sanitaryware. */
export function coveredIn(result: JobResult): Covered[] {
  return [...floors(result), ...stairs(result), ...leaves(result), ...wares(result)]
}

function scheduleTable(covered: readonly Covered[]): Block {
  return {
    kind: "table",
    caption: "What, how much, from when until when",
    columns: [
      { label: "At", as: "mark", width: 9 },
      { label: "What", width: 28 },
      { label: "Amount", as: "figure", width: 15 },
      { label: "With", width: 50 },
      { label: "On", as: "figure", width: 23 },
      { label: "", as: "tick", width: 7 },
      { label: "Off", as: "figure", width: 23 },
      { label: "", as: "tick", width: 7 },
    ],
    rows: covered.map(
      (each): Row => ({
        cells: [each.where, each.what, each.amount, each.with, each.on, "", each.off, ""],
      }),
    ),
    note: "Look at every covering each evening: no loose edge or fold on a stair or a way out.",
  }
}

function floors(result: JobResult): Covered[] {
  return result.house.rooms.flatMap((room) => {
    const on = stepOf(result, `floors/${room.id}/cover`)
    if (!on) return []
    const off = stepOf(result, `floors/${room.id}/uncover`)
    const isNew = on.step.stage === "floor"
    const finish = result.passed.get(room.id)?.floorFinish
    return [
      {
        where: room.id,
        what: isNew ? "new floor" : `floor that stays${finish && finish !== "old" ? `: ${finish}` : ""}`,
        amount: `${fixed(room.floorArea, 1)} m²`,
        with: isNew
          ? "breathing board or paper, taped to itself"
          : "board or heavy fleece, strip at the doorway",
        on: day(on, "finish", result),
        off: off ? day(off, "start", result) : dayText(result.programme.finish),
      },
    ]
  })
}

/** Treads of stairs that are carried over: area of risers and goings, from the first day to the last nosing or uncovering. */
function stairs(result: JobResult): Covered[] {
  const { house, programme } = result
  return house.stairs.flatMap((stair) => {
    const ends = [stair.fromRoom, stair.toRoom]
    const carried = programme.steps.filter(
      ({ step }) => step.room !== null && isAbove(step.room, stair, result),
    )
    if (carried.length === 0) return []
    const last = programme.steps.filter(
      ({ step }) =>
        step.room !== null &&
        (ends.includes(step.room) || isAbove(step.room, stair, result)) &&
        step.stage !== "nosings" &&
        step.stage !== "snag",
    )
    const off = last.reduce((latest, each) => (each.finish > latest.finish ? each : latest), last[0]!)
    return [
      {
        where: stair.id,
        what: `${stair.name}, treads`,
        amount: `${fixed(stairArea(stair), 1)} m²`,
        with: "non-slip, tread by tread, no loose nose; rail wrapped",
        on: dayText(programme.start),
        off: day(off, "finish", result),
      },
    ]
  })
}

/** Area of a stair's treads and risers, m2. */
export function stairArea({ risers, rise, going, width }: Stair): number {
  return squareMetres((risers * rise + (risers - 1) * going) * width)
}

/** True for a room that is reached over a stair. */
function isAbove(room: string, stair: Stair, { house }: JobResult): boolean {
  const ways = waysOf(house)
  return stair.toRoom === room || ways.behind(stair.toRoom).includes(room)
}

function leaves(result: JobResult): Covered[] {
  const { house } = result
  return house.doors.flatMap((door) => {
    const hung = stepOf(result, `doors/${door.id}/hang`)
    if (!hung) return []
    const last = result.programme.steps
      .filter(({ step }) => step.room === hung.step.room && step.stage === "covers-off")
      .sort((a, b) => b.finish - a.finish)[0]
    const gaps = stepOf(result, `doors/${door.id}/gaps`)
    return [
      {
        where: door.id,
        what: "leaf and lining",
        amount: "1 leaf",
        with: "guards on lining corners, handle bagged; no tape on oil",
        on: day(hung, "finish", result),
        off: (last ?? gaps) ? day((last ?? gaps)!, "finish", result) : dayText(result.programme.finish),
      },
    ]
  })
}

function wares(result: JobResult): Covered[] {
  return result.house.rooms.flatMap((room) => {
    const fixedOn = stepOf(result, `plumbing/${room.id}/sanitaryware`)
    if (!fixedOn) return []
    const off = stepOf(result, `plumbing/${room.id}/leak-check`)
    return [
      {
        where: room.id,
        what: wareText(room, result),
        amount: "each",
        with: "film left on; tray boarded over fleece; WC lid shut",
        on: day(fixedOn, "finish", result),
        off: off ? day(off, "start", result) : dayText(result.programme.finish),
      },
    ]
  })
}

function wareText(room: Room, { results }: JobResult): string {
  const found = results
    .filter((each) => each.room?.id === room.id)
    .flatMap((each) => (each.work.results.sanitaryware ?? []) as { kind: string }[])
  return `sanitaryware: ${[...new Set(found.map(({ kind }) => (kind === "wc" ? "WC" : kind.replace("-", " "))))].join(", ")}`
}

function cleanDown(result: JobResult): Block {
  const rooms = result.house.rooms.filter((room) =>
    result.programme.steps.some(({ step }) => step.room === room.id && step.hours > 0),
  )
  const half = Math.ceil(rooms.length / 2)
  const cells = (room: Room | undefined) =>
    room ? [`${room.id} ${room.name}`, "", "", ""] : ["", "", "", ""]
  const columns: Extract<Block, { kind: "table" }>["columns"] = [
    { label: "Room", width: 34 },
    { label: "Vacuum, top down", as: "tick", width: 15 },
    { label: "Damp wipe", as: "tick", width: 12 },
    { label: "Films and tape off", as: "tick", width: 14 },
  ]
  return {
    kind: "table",
    caption: "Clean-down before handover: filters and alarms too",
    columns: [...columns, ...columns],
    rows: rooms
      .slice(0, half)
      .map((room, index) => ({ cells: [...cells(room), ...cells(rooms[half + index])] })),
    note: "No water on new oil, fresh grout or varnish before their days on the drying sheets; vacuum with a brush, never sweep dry.",
  }
}

function stepOf({ programme }: JobResult, key: string): DatedStep | undefined {
  return programme.steps.find(({ step }) => step.key === key)
}

function day(each: DatedStep, at: "start" | "finish", { programme }: JobResult): string {
  return dayText(clockAt(each[at], programme.zone).date).replaceAll(" ", "\u00a0")
}
