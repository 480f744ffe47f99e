import { z } from "zod"
import { bookedDelivery, household } from "./household.ts"
import { clockTime, day, id, line, refersTo, text } from "./values.ts"

/** `programme.yaml`: start, hours, crews, and the people in the house. */
export const programmeFile = z
  .strictObject({
    start: day,
    holidays: z.enum(["england-and-wales", "none"]).meta({ description: "Public holidays observed." }),
    hours: z
      .array(z.strictObject({ from: clockTime, to: clockTime }))
      .min(1)
      .max(4)
      .meta({ description: "Working spans of a working day." }),
    days: z
      .array(z.enum(["mon", "tue", "wed", "thu", "fri", "sat", "sun"]))
      .min(1)
      .max(7),
    closed: z
      .array(z.strictObject({ from: day, to: day, why: line }))
      .max(50)
      .default([]),
    crews: z
      .array(
        z.strictObject({
          id,
          name: line.meta({ description: "The crew, as a role.", examples: ["joiners"] }),
          people: z.number().int().min(1).max(20),
          trades: z
            .array(refersTo("trade"))
            .min(1)
            .max(20)
            .meta({ description: "Trades whose steps this crew does." }),
          visits: z
            .number()
            .int()
            .min(1)
            .max(50)
            .optional()
            .meta({ description: "Most visits, if it comes by visit." }),
          licensed: z.boolean().default(false),
        }),
      )
      .min(1)
      .max(20),
    quiet: z
      .array(
        z.strictObject({
          days: z.array(z.enum(["mon", "tue", "wed", "thu", "fri", "sat", "sun"])),
          from: clockTime,
          to: clockTime,
          why: line,
          rooms: z.array(refersTo("room")).default([]),
        }),
      )
      .max(20)
      .default([])
      .meta({ description: "Hours of quiet for people in the house: no sawing, hammering or sanding." }),
    bedtime: clockTime.default("22:00"),
    progress: z
      .array(
        z.strictObject({
          step: z
            .string()
            .min(1)
            .max(120)
            .meta({
              description: "Key of the step, from the column step of programme.csv.",
              examples: ["floors/A1/boards"],
            }),
          started: day.optional(),
          finished: day.optional(),
        }),
      )
      .max(2000)
      .default([])
      .meta({ description: "Days on which steps really began and ended; the rest is dated anew." }),
    household: household
      .optional()
      .meta({ description: "The people who live in the house during the work." }),
    booked: z.array(bookedDelivery).max(100).default([]).meta({ description: "Deliveries already booked." }),
    notes: z.array(text).max(20).default([]),
  })
  .meta({
    id: "programme",
    title: "programme.yaml",
    description: "Start, hours, crews and the people in the house.",
  })
export type ProgrammeFile = z.infer<typeof programmeFile>
