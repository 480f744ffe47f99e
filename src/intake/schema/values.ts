import { z } from "zod"

/** What an id or a number written in a file may refer to. */
export type Reference =
  | "room"
  | "room-or-beyond"
  | "door"
  | "storey"
  | "product"
  | "crew"
  | "trade"
  | "wall-of-this-room"

/**
 * When a figure in mm is suspect of being metres or centimetres: when it is under `below` (and, with `fractionsOnly`, has a
 * fraction too). Kept in a schema's meta under `slip`; a suspect figure is a finding, never a guess.
 */
export interface Slip {
  below: number
  fractionsOnly?: boolean
}

/** Under this many mm a taped length of a house is more likely metres (common practice: tapes read to a few metres). */
const likelyMetres = 20

/** A length in mm as taped; a whole or half millimetre, within a house. A figure under 20 is suspect of being metres. */
export const length = z
  .number()
  .positive()
  .max(60_000)
  .meta({
    description: "Length in millimetres, as taped.",
    examples: [2400],
    slip: { below: likelyMetres } satisfies Slip,
  })

/** A length that may be nought; a fraction under 20 is suspect of being metres. */
export const lengthOrNought = z
  .number()
  .min(0)
  .max(60_000)
  .meta({
    description: "Length in millimetres; may be 0.",
    slip: { below: likelyMetres, fractionsOnly: true } satisfies Slip,
  })

/** A small length that may be nought and may well be a fraction (a finish, a lean), mm. */
export const smallOrNought = z
  .number()
  .min(0)
  .max(1000)
  .meta({ description: "Small dimension in millimetres; may be 0." })

/** A height above or below a datum, mm; below is negative. */
export const level = z
  .number()
  .min(-30_000)
  .max(60_000)
  .meta({
    description: "Level in millimetres from the named datum; below it is negative.",
    slip: { below: likelyMetres, fractionsOnly: true } satisfies Slip,
  })

/** A small dimension (a thickness, a gap, a projection), mm. */
export const thickness = z
  .number()
  .positive()
  .max(1000)
  .meta({
    description: "Thickness or small dimension in millimetres.",
    examples: [18],
    slip: { below: 0.1 } satisfies Slip,
  })

/** An amount of money as quoted text, so that "1.10" stays 1.10. */
export const amount = z
  .string()
  .regex(/^\d{1,7}(\.\d{1,4})?$/, 'expected quoted digits such as "34.90"')
  .meta({ description: "Money as quoted text, no sign, no currency.", examples: ["34.90"] })

/** A share in per cent. */
export const percent = z.number().min(0).max(100).meta({ description: "Per cent, 0 to 100." })

/** Relative humidity of the air of a room, per cent: air without any water has no dew point, and no house has it. */
export const airHumidity = z.number().min(1).max(100).meta({ description: "Relative humidity, 1 to 100 %." })

/** A calendar day. */
export const day = z
  .string()
  .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, "expected a day as YYYY-MM-DD")
  .refine(isInCalendar, { params: { code: "day-impossible" }, error: "no such day in the calendar" })
  .meta({ description: "Calendar day, YYYY-MM-DD.", examples: ["2027-03-01"] })

/** A time of day. */
export const clockTime = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, "expected a time as HH:MM, quoted")
  .meta({ description: "Time of day, HH:MM, quoted.", examples: ["08:00"] })

/** An id the author gives to a room, door, product ...: letters, digits and hyphens. */
export const id = z
  .string()
  .regex(/^[A-Za-z][A-Za-z0-9-]{0,31}$/, "expected letters, digits and hyphens, beginning with a letter")
  .meta({
    description: "Id: letters, digits, hyphens; begins with a letter; at most 32 characters.",
    examples: ["A1"],
  })

/** An id that must be one of those written elsewhere in the job. */
export function refersTo(what: Reference) {
  return id.meta({ refersTo: what })
}

/** Number of a wall of the same room, from 1. */
export const wallNumber = z
  .number()
  .int()
  .min(1)
  .max(60)
  .meta({
    description: "Wall number, clockwise from the entry door's wall (1).",
    refersTo: "wall-of-this-room" satisfies Reference,
  })

/** One line of text for people. */
export const line = z
  .string()
  .min(1)
  .max(200)
  .refine((written) => !/[\r\n]/.test(written), {
    params: { code: "line-break" },
    error: "a line break in text that must be one line",
  })
  .meta({ description: "One line of text." })

/** One line of text that stands in the head or foot of a page: longer would not fit the paper. */
export const headLine = (most: number) =>
  line.max(most).meta({
    description: `One line of text, at most ${most} characters: it stands in the head or foot of pages.`,
  })

/** A few lines of text for people. */
export const text = z.string().min(1).max(2000).meta({ description: "Text of a few lines." })

/** What a length was taped to. */
export const face = z
  .enum(["plaster", "stud", "brick", "lining"])
  .meta({ description: "The face that lengths were taped to; never assumed." })

/** What a height was taped from. */
export const datum = z
  .enum(["deck", "finished-floor", "old-floor", "ground"])
  .meta({ description: "The level that heights were taped from; never assumed." })
export type Datum = z.infer<typeof datum>

/** When, by whom, and to what something was measured. */
export const measured = z
  .strictObject({
    on: day,
    by: line.meta({ description: "Who measured, as a role.", examples: ["foreman"] }),
    lengthsTo: face,
    heightsFrom: datum,
    tape: thickness
      .default(3)
      .meta({ description: "How far a taped length can be trusted, plus or minus mm." }),
  })
  .meta({ description: "When and by whom measured, the face lengths go to and the datum heights come from." })

/** True for a day that the calendar has, and for text that is no day at all: that is left to the check of its form. */
function isInCalendar(written: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(written)) return true
  const [year, month, date] = written.split("-").map(Number) as [number, number, number]
  return new Date(Date.UTC(year, month, 0)).getUTCDate() >= date
}
