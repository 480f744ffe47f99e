import { z } from "zod"

/** A length in mm as taped; a whole or half millimetre, within a house. A figure under 20 is taken for metres by mistake (see unit-slip). */
export const length = z
  .number()
  .positive()
  .max(60_000)
  .meta({ description: "Length in millimetres, as taped.", examples: [2400] })

/** A length that may be nought. */
export const lengthOrNought = z
  .number()
  .min(0)
  .max(60_000)
  .meta({ description: "Length in millimetres; may be 0." })

/** A height above or below a datum, mm; below is negative. */
export const level = z
  .number()
  .min(-30_000)
  .max(60_000)
  .meta({ description: "Level in millimetres from the named datum; below it is negative." })

/** A small dimension (a thickness, a gap, a projection), mm. */
export const thickness = z
  .number()
  .positive()
  .max(1000)
  .meta({ description: "Thickness or small dimension in millimetres.", examples: [18] })

/** An amount of money as quoted text, so that "1.10" stays 1.10. */
export const amount = z
  .string()
  .regex(/^\d{1,7}(\.\d{1,4})?$/, 'expected quoted digits such as "34.90"')
  .meta({ description: "Money as quoted text, no sign, no currency.", examples: ["34.90"] })

/** A share in per cent. */
export const percent = z.number().min(0).max(100).meta({ description: "Per cent, 0 to 100." })

/** A calendar day. */
export const day = z
  .string()
  .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, "expected a day as YYYY-MM-DD")
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

/** One line of text for people. */
export const line = z.string().min(1).max(200).meta({ description: "One line of text." })

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
