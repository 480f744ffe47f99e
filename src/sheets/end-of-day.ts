import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { wayOut } from "../programme/way-out.ts"
import { waysOf } from "../programme/ways.ts"
import { alarmPlaces } from "./evenings-of-job.ts"
import type { JobResult } from "./job-result.ts"

/** The sheet that is ticked and signed every evening before the last one leaves; null where nobody lives in the house. */
export function endOfDaySheet(result: JobResult): SheetModel | null {
  const { house, programme } = result
  if (!house.occupied || programme.steps.length === 0) return null
  return {
    kind: "end-of-day",
    title: "End of day",
    purpose: "One each evening: walk, tick, sign, hang it in the hall; put right what is not so.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "boxes",
        caption: "This evening (see J-91 for what is special today)",
        labels: ["Date", "Last out, at", "By", "Told to, in the house"],
      },
      beds(result),
      doorways(result),
      around(result),
      promises(result),
      { kind: "sign", roles: ["Foreman", "Household"] },
    ],
    rests: [],
  }
}

/** Who sleeps where, and the way each walks out. */
function beds(result: JobResult): Block {
  const { house, programmeFile, programme } = result
  const ways = waysOf(house)
  const sleeps = programmeFile.household?.sleeps ?? []
  const rows = [...ways.slept].map((id): Row => {
    const room = house.rooms.find((each) => each.id === id)!
    const who = sleeps.filter((each) => each.room === id).map((each) => each.who)
    return { cells: [`${id} ${room.name}`, who.join("; ") || "ask", routeText(id, result), ""] }
  })
  const night = programme.firstNight
  return {
    kind: "table",
    caption: "Beds, and the way out walked from each to the open air",
    columns: [
      { label: "Sleeps in", width: 24 },
      { label: "Who", width: 25 },
      { label: "Way out", width: 70 },
      { label: "Walked", as: "tick", width: 11 },
    ],
    rows,
    ...(night
      ? {
          note: `Nobody sleeps in ${night.rooms.join(", ")} before the evening of ${dateText(night.on)} and the signed sheet J-92.`,
        }
      : {}),
  }
}

/** A way out in words: `B1 → D5 → B4 First landing → S1 → C1 Hall → D14 → outside`. */
export function routeText(room: string, { house }: Pick<JobResult, "house">): string {
  const way = wayOut(room, house)
  if (!way) return "no way out is written: ask"
  const parts = way.through.map(({ id }, index) => {
    const next = way.rooms[index + 1]
    const name = house.rooms.find((each) => each.id === next)?.name
    return next ? `${id} → ${next} ${name}` : `${id} → open air`
  })
  return [room, ...parts].join(" → ")
}

/** Doorways side by side. */
const doorsAcross = 3

/** Doorways on the ways out, three a row: the leaf is on, shuts, latches. */
function doorways({ house }: JobResult): Block {
  const found = new Set([...waysOf(house).slept].flatMap((room) => wayOut(room, house)?.openings ?? []))
  const doors = house.doors.filter((door) => found.has(door))
  const rows = Math.ceil(doors.length / doorsAcross)
  const cells = (door: (typeof doors)[number] | undefined) =>
    door ? [door.id, door.name, ""] : ["", "", "–"]
  return {
    kind: "table",
    caption: "Every doorway on the way: leaf on its hinges, shut, latched, not wedged",
    columns: Array.from({ length: doorsAcross }, () => [
      { label: "Door", as: "mark" as const, width: 9 },
      { label: "Where", width: 22 },
      { label: "Latches", as: "tick" as const, width: 11 },
    ]).flat(),
    rows: Array.from({ length: rows }, (_, row) => ({
      cells: Array.from({ length: doorsAcross }, (_, column) => cells(doors[column * rows + row])).flat(),
    })),
    note: "A leaf that was off to be hung or painted is back by evening. Where none can be: stay, or board it and tell the household.",
  }
}

/** What else is looked at, two a row. */
function around(result: JobResult): Block {
  const checks = checksOf(result)
  const half = Math.ceil(checks.length / 2)
  return {
    kind: "table",
    caption: "Round the house",
    columns: twice([
      { label: "Look at", width: 50 },
      { label: "So", as: "tick", width: 12 },
    ]),
    rows: checks.slice(0, half).map((text, index) => {
      const other = checks[half + index]
      return { cells: [text, "", other ?? "Also:", ""] }
    }),
  }
}

/** The evening's checks of a house, in the order they are walked. */
export function checksOf(result: JobResult): string[] {
  const { house, programmeFile } = result
  const ways = waysOf(house)
  const used = house.stairs.filter((stair) => ways.lived.has(stair.toRoom))
  const added = house.stairs.filter((stair) => !ways.lived.has(stair.toRoom))
  const baths = house.rooms.filter((room) => room.use === "bathroom" && ways.lived.has(room.id))
  const exits = house.doors.filter((door) => door.finalExit)
  const alarms = alarmPlaces(result).map(({ room }) => room)
  const screens = programmeFile.household?.screens ?? []
  return [
    ...used.map(({ id }) => `Stair ${id}: dry, clear, lit, rail and guarding on`),
    ...added.map(({ id }) => `Stair ${id}: closed off, nobody goes up`),
    ...baths.map(({ id, name }) => `${id} ${name}: locks, flushes, water runs`),
    ...exits.map(({ id, name }) => `${name} ${id}: opens inside without a key`),
    alarms.length > 0
      ? `Alarms bare, all sound: ${alarms.join(", ")}`
      : "A working smoke alarm on each storey, bare",
    "Power on; no bare end, no loose plate",
    "Water and heating on; no drip",
    "Tools and chargers unplugged, locked away",
    "Oily rags out: hung singly, or wet in a shut tin",
    "Solvent shut away; no hot work in the last hour",
    ...screens.map(({ at }) => `Screen shut: ${at}`),
    "Where people walk: vacuumed, no nail, no cable",
    "Windows and roof shut; site door locked",
  ]
}

/** Noise, screens, breakthrough, keys, parking and skip, as they were promised; two a row. */
function promises(result: JobResult): Block {
  const told = promisesOf(result)
  const half = Math.ceil(told.length / 2)
  const cells = (line: readonly string[] | undefined) => [line?.[0] ?? "", line?.[1] ?? "", ""]
  return {
    kind: "table",
    caption: "As promised",
    columns: twice([
      { label: "What", width: 19 },
      { label: "Promised", width: 39 },
      { label: "Kept", as: "tick", width: 8 },
    ]),
    rows: told
      .slice(0, half)
      .map((line, index) => ({ cells: [...cells(line), ...cells(told[half + index])] })),
  }
}

/** What the household was promised, in words. */
export function promisesOf({ programmeFile, programme }: JobResult): [string, string][] {
  const { hours, quiet, household } = programmeFile
  const work = hours.map(({ from, to }) => `${from}–${to}`).join(", ")
  const calm = quiet.map(({ days: on, from, to }) => `${weekText(on)} ${from}–${to}`)
  const screens = (household?.screens ?? []).map(
    ({ at, up, down }) =>
      `${at}: up ${dayText(up)}, down ${down ? dayText(down) : `with the last covers, ${dayText(programme.finish)}`}`,
  )
  const through = household?.breakthrough
  return [
    [
      "Noise",
      `${weekText(programmeFile.days)} ${work}${calm.length > 0 ? `; quiet ${calm.join("; ")}` : ""}`,
    ],
    ...(screens.length > 0 ? [["Dust screen", screens.join("; ")] as [string, string]] : []),
    ...(through ? [["Breakthrough", `${through.at}: ${dateText(through.on)}`] as [string, string]] : []),
    ["Keys", household?.keys ?? "not agreed: ask"],
    ["Parking", household?.parking ?? "not agreed: ask"],
    ["Skip", household?.skip ?? "not agreed: ask"],
  ]
}

const week = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"]

/** Days of the week, neighbours joined: `Mon to Wed, Fri`. */
export function weekText(days: readonly string[]): string {
  const name = (at: number) => `${week[at]![0]!.toUpperCase()}${week[at]!.slice(1)}`
  const places = days.map((day) => week.indexOf(day)).sort((a, b) => a - b)
  const runs: [number, number][] = []
  for (const at of places) {
    const last = runs[runs.length - 1]
    if (last && last[1] === at - 1) last[1] = at
    else runs.push([at, at])
  }
  return runs.map(([from, to]) => (from === to ? name(from) : `${name(from)} to ${name(to)}`)).join(", ")
}

function twice<T>(columns: readonly T[]): T[] {
  return [...columns, ...columns]
}
