import { addDays } from "../kernels/calendar/dates.ts"
import { type Instant, instantAt } from "../kernels/calendar/instant.ts"
import { spansOn, type WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import { Fault } from "../kernels/fault.ts"
import type { IsoDate } from "../kernels/units.ts"

/** Days of calendar laid out at a time. */
const chunkDays = 30
/** A calendar without working time for so many days on end has none. */
const emptyDays = 1100
const hourMs = 3_600_000

/** The spans of a working calendar laid out in order, for a search that asks for thousands of dates: all times in ms. */
export class WorkTable {
  readonly #calendar: WorkCalendar
  readonly #starts: number[] = []
  readonly #ends: number[] = []
  /** Working time before each span. */
  readonly #before: number[] = []
  readonly #dates: IsoDate[] = []
  readonly #days: number[] = []
  readonly #clocks = new Map<string, number>()
  #next: IsoDate

  constructor(calendar: WorkCalendar, from: IsoDate) {
    this.#calendar = calendar
    this.#next = from
    this.#layOut()
  }

  /** First moment of work not before the one given. */
  next(from: number): number {
    return Math.max(from, this.#starts[this.#spanAt(from)]!)
  }

  /** End of so much work begun at a working moment; work that fills a span ends at its end. */
  add(start: number, hours: number): number {
    const left = Math.round(hours * hourMs)
    if (left <= 0) return start
    const target = this.#worked(start) + left
    while (this.#total() < target) this.#layOut()
    const span = last(this.#before, (before) => before < target)
    return this.#starts[span]! + target - this.#before[span]!
  }

  /** Latest start of so much work that ends by a moment; the first moment of the table if there is not so much. */
  subtract(end: number, hours: number): number {
    const target = this.#worked(end) - Math.round(hours * hourMs)
    if (target <= 0) return this.#starts[0]!
    const span = last(this.#before, (before) => before <= target)
    return this.#starts[span]! + target - this.#before[span]!
  }

  /** Hours of work between two moments; 0 if the second is not later. */
  between(from: number, to: number): number {
    return to <= from ? 0 : (this.#worked(to) - this.#worked(from)) / hourMs
  }

  /** The date on which a working moment lies (its span begins). */
  dateAt(moment: number): IsoDate {
    return this.#dates[this.#spanAt(moment)]!
  }

  /** Which working day from the first of the table, at 0, a working moment lies on. */
  dayNumber(moment: number): number {
    return this.#days[this.#spanAt(moment)]!
  }

  /** First working moment of the next working day after the one a moment lies on. */
  nextDay(moment: number): number {
    const date = this.dateAt(moment)
    let span = this.#spanAt(moment)
    while (this.#dates[span] === date) {
      span++
      while (span >= this.#starts.length) this.#layOut()
    }
    return this.#starts[span]!
  }

  /** The moment a clock shows on the date of a working moment. */
  clock(moment: number, time: string): number {
    const date = this.dateAt(moment)
    const name = `${date} ${time}`
    const found = this.#clocks.get(name) ?? instantAt(date, time, this.#calendar.zone)
    this.#clocks.set(name, found)
    return found
  }

  #total(): number {
    const end = this.#starts.length - 1
    return this.#before[end]! + this.#ends[end]! - this.#starts[end]!
  }

  /** Working time from the first moment of the table up to one. */
  #worked(moment: number): number {
    while (this.#ends[this.#ends.length - 1]! < moment) this.#layOut()
    const span = last(this.#starts, (start) => start <= moment)
    if (span < 0) return 0
    return this.#before[span]! + Math.min(moment, this.#ends[span]!) - this.#starts[span]!
  }

  /** The span that a moment lies in, or the next one. */
  #spanAt(moment: number): number {
    while (this.#ends[this.#ends.length - 1]! <= moment) this.#layOut()
    return last(this.#ends, (end) => end <= moment) + 1
  }

  #layOut(): void {
    const had = this.#starts.length
    for (let day = 0; day < emptyDays; day++) {
      if (day >= chunkDays && this.#starts.length > had) return
      for (const { start, end } of spansOn(this.#next, this.#calendar)) this.#push(start, end)
      this.#next = addDays(this.#next, 1)
    }
    if (this.#starts.length === had) throw new Fault("the calendar has no working time")
  }

  #push(start: Instant, end: Instant): void {
    const had = this.#dates.length - 1
    const day = this.#days[had] ?? 0
    this.#days.push(had >= 0 && this.#dates[had] !== this.#next ? day + 1 : day)
    this.#before.push(this.#starts.length === 0 ? 0 : this.#total())
    this.#starts.push(start)
    this.#ends.push(end)
    this.#dates.push(this.#next)
  }
}

/** Index of the last value that holds in a list where all that hold come first; -1 if none does. */
function last(values: readonly number[], holds: (value: number) => boolean): number {
  let low = -1
  let high = values.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (holds(values[middle]!)) low = middle
    else high = middle - 1
  }
  return low
}
