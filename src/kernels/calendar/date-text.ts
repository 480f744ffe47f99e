import type { IsoDate } from "../units.ts"
import { weekday } from "./dates.ts"
import { clockAt, type Instant } from "./instant.ts"

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]

/** A date for the reader, `Mon 1 Mar 2027`. */
export function dateText(date: IsoDate): string {
  return `${dayText(date)} ${date.slice(0, 4)}`
}

/** A date for the reader without its year, `Mon 1 Mar`. */
export function dayText(date: IsoDate): string {
  const day = weekday(date)
  const name = `${day[0]!.toUpperCase()}${day.slice(1, 3)}`
  return `${name} ${Number(date.slice(8))} ${months[Number(date.slice(5, 7)) - 1]}`
}

/** A moment for the reader by the clock of a zone, `Mon 1 Mar 08:00`. */
export function momentText(instant: Instant, zone: string): string {
  const { date, time } = clockAt(instant, zone)
  return `${dayText(date)} ${time}`
}
