import { z } from "zod"
import { airHumidity, day, headLine, length, line, refersTo, text } from "./values.ts"

/** A job's own value for a rulebook entry. */
export const override = z
  .strictObject({
    id: z
      .string()
      .min(1)
      .max(80)
      .meta({ description: "Id of the rulebook entry, as printed at the foot of sheets." }),
    value: z.number().meta({ description: "The job's value, in the entry's unit." }),
    reason: text.meta({
      description: "Why, in words that will be printed.",
      examples: ["the maker of this board says 12"],
    }),
  })
  .meta({ description: "One rulebook entry overridden for this job." })

/** `job.yaml`: what the job is, for whom, where its hosted copy lives. */
export const jobFile = z
  .strictObject({
    ref: z
      .string()
      .regex(/^[a-z][a-z0-9-]{1,31}$/, "expected small letters, digits and hyphens")
      .meta({ description: "The office's reference; the same as the folder's name." }),
    code: z
      .string()
      .regex(
        /^[0-9a-hjkmnp-tv-z]{8}$/,
        "expected 8 characters from digits and small letters without i, l, o and u",
      )
      .meta({
        description:
          "8 characters that cannot be guessed, fixed for the job's life; part of the hosted address.",
      }),
    title: headLine(60),
    client: line.meta({ description: "The client, as a role; printed on private paper only." }),
    site: headLine(80).meta({
      description: "Where the work is, in at most 80 characters that give no address away.",
    }),
    hosted: z
      .string()
      .regex(
        /^https:\/\/[a-z0-9.-]{3,60}(\/[a-z0-9-]+)*$/,
        "expected https://host, small letters, no slash at the end",
      )
      .meta({ description: "Where output/site is published.", examples: ["https://packs.example"] }),
    prepared: z
      .strictObject({ on: day, by: line })
      .meta({ description: "Day and role printed on unissued paper." }),
    language: z.literal("en-GB").default("en-GB"),
    zone: z
      .string()
      .max(60)
      .refine(isTimeZone, { params: { code: "unknown-zone" }, error: "no such time zone" })
      .default("Europe/London")
      .meta({ description: "Time zone of the site, as named in the tz database." }),
    currency: z.literal("GBP").default("GBP"),
    carry: z
      .strictObject({ longest: length, heaviest: z.number().positive().max(200) })
      .meta({ description: "Longest length (mm) and heaviest load (kg) that goes up the stair." }),
    climate: z
      .strictObject({
        temperature: z
          .number()
          .min(-10)
          .max(40)
          .meta({ description: "Air in the rooms during the work, °C." }),
        humidity: airHumidity.meta({ description: "Relative humidity during the work, %." }),
        inService: z
          .strictObject({
            temperature: z.number().min(5).max(35),
            humidityLow: airHumidity,
            humidityHigh: airHumidity,
          })
          .meta({ description: "What the rooms will see in use through the year." }),
      })
      .meta({ description: "Air during the work and in use." }),
    overrides: z.array(override).max(200).default([]),
    notes: z.array(text).max(50).default([]),
    foldOuts: z
      .boolean()
      .default(false)
      .meta({ description: "True for a pack of A3 fold-outs: bar chart and storey plans." }),
    tradesOn: z.array(refersTo("trade")).max(50).optional(),
  })
  .meta({
    id: "job",
    title: "job.yaml",
    description: "What the job is, for whom, and where its hosted copy lives.",
  })
export type JobFile = z.infer<typeof jobFile>

/** True for a zone of the tz database. */
function isTimeZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat("en-GB", { timeZone: name }).format(0).length > 0
  } catch {
    return false
  }
}
