import type { At, Finding } from "../../kernels/finding.ts"
import { fixed } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { Room } from "../../survey/room.ts"
import { notRead, readingOut } from "./messages.ts"
import type { Movement } from "./movement.ts"

/** What must be read before boards are laid, and between which limits. */
export interface ReadingLimit {
  what: Room["readings"][number]["what"]
  label: string
  unit: string
  least?: number
  most?: number
}

/** A reading beside its limit. */
export interface CheckedReading {
  limit: ReadingLimit
  on: string
  value: number
  instrument: string
  place: string
  isWithin: boolean
}

/** The limits for one room: by rule, and for boards by the moisture that the house will hold. */
export function readingLimits(room: Room, moves: Movement, rules: Rules): ReadingLimit[] {
  const margin = rules.value("floor-board-moisture-margin")
  const deck: ReadingLimit =
    room.storey.base === "concrete"
      ? {
          what: "deck",
          label: "base, hygrometer",
          unit: "% RH",
          most: rules.value("floor-deck-humidity-most"),
        }
      : { what: "deck", label: "deck, moisture", unit: "%", most: rules.value("floor-deck-moisture-most") }
  return [
    deck,
    {
      what: "board",
      label: "boards, moisture",
      unit: "%",
      least: tenth(moves.driest - margin),
      most: tenth(moves.dampest + margin),
    },
    {
      what: "air-temperature",
      label: "air, temperature",
      unit: "°C",
      least: rules.value("floor-air-temperature-least"),
      most: rules.value("floor-air-temperature-most"),
    },
    {
      what: "air-humidity",
      label: "air, humidity",
      unit: "%",
      least: rules.value("floor-air-humidity-least"),
      most: rules.value("floor-air-humidity-most"),
    },
  ]
}

/** A limit in words: `at most 12 %`, `18 to 24 °C`. */
export function limitText({ least, most, unit }: ReadingLimit): string {
  const figure = (value: number) => fixed(value, Number.isInteger(value) ? 0 : 1)
  if (least !== undefined && most !== undefined) return `${figure(least)} to ${figure(most)} ${unit}`
  return most !== undefined ? `at most ${figure(most)} ${unit}` : `at least ${figure(least ?? 0)} ${unit}`
}

/** The room's readings beside their limits, in the order they were taken. */
export function checkedReadings(room: Room, limits: readonly ReadingLimit[]): CheckedReading[] {
  return room.readings.flatMap((reading) => {
    const limit = limits.find((candidate) => candidate.what === reading.what)
    if (!limit) return []
    const { on, value, instrument } = reading
    return [{ limit, on, value, instrument, place: reading.place ?? "", isWithin: isWithin(value, limit) }]
  })
}

/** Findings on the latest reading of each kind: out of limits, not read, deck and boards too far apart. */
export function readingFindings(room: Room, limits: readonly ReadingLimit[], rules: Rules): Finding[] {
  const at: At = { file: room.file, path: ["readings"] }
  const checked = checkedReadings(room, limits)
  const findings = limits.flatMap((limit) => {
    const last = latest(checked.filter((reading) => reading.limit === limit))
    if (!last) return [notRead(at, limit.label)]
    if (last.isWithin) return []
    return [
      readingOut(placeOf(room, last), {
        what: limit.label,
        value: `${last.value} ${limit.unit}`,
        limit: limitText(limit),
      }),
    ]
  })
  return [...findings, ...apart(room, checked, rules)]
}

function apart(room: Room, checked: readonly CheckedReading[], rules: Rules): Finding[] {
  if (room.storey.base === "concrete") return []
  const deck = latest(checked.filter((reading) => reading.limit.what === "deck"))
  const board = latest(checked.filter((reading) => reading.limit.what === "board"))
  if (!deck || !board) return []
  const most = rules.value("floor-moisture-difference-most")
  const difference = Math.abs(deck.value - board.value)
  if (difference <= most) return []
  return [
    readingOut(placeOf(room, deck), {
      what: "difference between deck and boards",
      value: `${fixed(difference, 1)} points`,
      limit: `at most ${most} points`,
    }),
  ]
}

function placeOf(room: Room, reading: CheckedReading): At {
  const index = room.readings.findIndex(
    ({ on, what, value }) => on === reading.on && what === reading.limit.what && value === reading.value,
  )
  return { file: room.file, path: ["readings", index, "value"] }
}

function latest(readings: readonly CheckedReading[]): CheckedReading | undefined {
  return readings.reduce<CheckedReading | undefined>(
    (last, reading) => (last === undefined || reading.on >= last.on ? reading : last),
    undefined,
  )
}

function isWithin(value: number, { least, most }: ReadingLimit): boolean {
  return (least === undefined || value >= least) && (most === undefined || value <= most)
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10
}
