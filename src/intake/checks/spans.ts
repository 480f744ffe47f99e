import { type Draft, listAt, textAt } from "../draft.ts"
import { spanReversed, spansOverlap } from "../messages.ts"
import { clockTime, day } from "../schema/values.ts"
import { findingIn, type LocatedFinding } from "../yaml-file.ts"

/** Spans of the programme that end before they begin, and working spans of a day that overlap or are out of order. */
export function spans({ files: { programme } }: Draft): LocatedFinding[] {
  return [
    // A day's closure may be one day long; a working span must have a length.
    ...reversed("closed", (from, to) => isDay(from) && isDay(to) && from > to),
    ...reversed("hours", (from, to) => isTime(from) && isTime(to) && from >= to),
    ...reversed("quiet", (from, to) => isTime(from) && isTime(to) && from >= to),
    ...overlapping(),
  ]

  function reversed(list: string, isReversed: (from: string, to: string) => boolean): LocatedFinding[] {
    return listAt(programme, [list]).flatMap((span, index) => {
      const from = textAt(span, "from") ?? ""
      const to = textAt(span, "to") ?? ""
      return isReversed(from, to) ? [findingIn(programme, spanReversed(from, to), [list, index, "to"])] : []
    })
  }

  function overlapping(): LocatedFinding[] {
    const hours = listAt(programme, ["hours"])
    return hours.slice(1).flatMap((span, index) => {
      const before = textAt(hours[index], "to") ?? ""
      const from = textAt(span, "from") ?? ""
      return isTime(before) && isTime(from) && from < before
        ? [findingIn(programme, spansOverlap(from, before), ["hours", index + 1, "from"])]
        : []
    })
  }
}

function isDay(written: string): boolean {
  return day.safeParse(written).success
}

function isTime(written: string): boolean {
  return clockTime.safeParse(written).success
}
