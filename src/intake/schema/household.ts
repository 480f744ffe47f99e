import { z } from "zod"
import { day, line, refersTo } from "./values.ts"

/** The people who live in the house during the work, under `household` of `programme.yaml`. */
export const household = z
  .strictObject({
    sleeps: z
      .array(
        z.strictObject({
          room: refersTo("room"),
          who: line.meta({ description: "Who, as a role.", examples: ["two adults"] }),
        }),
      )
      .max(30)
      .default([])
      .meta({ description: "Who sleeps where during the work." }),
    screens: z
      .array(
        z.strictObject({
          at: line.meta({ description: "Where it hangs.", examples: ["foot of the new stair"] }),
          up: day,
          down: day.optional().meta({ description: "Day it comes down; else with the last covers." }),
        }),
      )
      .max(10)
      .default([])
      .meta({ description: "Dust screens between the work and the people in the house." }),
    breakthrough: z
      .strictObject({
        at: line.meta({
          description: "Where the new storey is opened to the house.",
          examples: ["new stair"],
        }),
        on: day,
      })
      .optional()
      .meta({ description: "The day on which the house below is opened to the new storey." }),
    keys: line.optional().meta({
      description: "Who holds which keys, as roles.",
      examples: ["foreman: front door; no key is left on site"],
    }),
    parking: line
      .optional()
      .meta({ description: "Where the trades park.", examples: ["in the yard, gate left free"] }),
    skip: line
      .optional()
      .meta({ description: "Where the skip stands.", examples: ["on the drive, covered"] }),
    controlVisit: day.optional().meta({
      description: "The day for which building control has agreed to look before the first night.",
    }),
  })
  .meta({ description: "The people who live in the house during the work, and what they were promised." })
export type Household = z.infer<typeof household>

/** A delivery whose day is already fixed with its supplier. */
export const bookedDelivery = z
  .strictObject({
    product: refersTo("product"),
    on: day.meta({ description: "The day it is booked for." }),
  })
  .meta({ description: "A delivery that is already booked; too early or too late is found." })
export type BookedDelivery = z.infer<typeof bookedDelivery>
