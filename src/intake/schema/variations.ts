import { z } from "zod"
import { amount, day, id, line, refersTo, text } from "./values.ts"

/** What a variation changes in one room. */
export const variedRoom = z.strictObject({
  room: refersTo("room"),
  work: z
    .record(z.string(), z.unknown())
    .default({})
    .meta({ description: "By trade, in place of what the room's own file says of that trade." }),
  omit: z
    .array(refersTo("trade"))
    .max(20)
    .default([])
    .meta({ description: "Trades whose work in this room is left out." }),
})

/** What a variation changes at one doorway. */
export const variedDoor = z.strictObject({
  door: refersTo("door"),
  work: z
    .unknown()
    .optional()
    .meta({ description: "In place of what house.yaml says under `work` of this doorway." }),
})

/** A change to the work that was agreed on. */
export const variation = z
  .strictObject({
    id: id.meta({ examples: ["V1"] }),
    on: day.meta({ description: "Day it was written." }),
    asked: line.meta({ description: "Who asked for it, as a role.", examples: ["client"] }),
    what: line.meta({ description: "The change in plain words; the client reads it." }),
    why: text.optional(),
    accepted: day.optional().meta({
      description:
        "Day the client signed it; only then is it part of the job. Leave it out while it is priced.",
    }),
    declined: day.optional().meta({ description: "Day it was turned down." }),
    rooms: z.array(variedRoom).max(50).default([]),
    doors: z.array(variedDoor).max(50).default([]),
    chosen: z
      .record(z.string(), id)
      .default({})
      .meta({ description: "Products chosen in place of those in products.yaml, by use." }),
    sums: z
      .array(
        z.strictObject({
          what: line,
          amount,
          omit: z.boolean().default(false).meta({ description: "True if the sum is taken off." }),
        }),
      )
      .max(50)
      .default([])
      .meta({ description: "Sums added or taken off besides, before tax." }),
  })
  .refine((each) => !(each.accepted && each.declined), {
    params: { code: "variation-both-ways" },
    error: "expected `accepted` or `declined`, not both",
  })
  .meta({
    description: "A change to the agreed work: what is added and left out, and whether it is accepted.",
  })
/** A variation as its author wrote it. */
export type Variation = z.infer<typeof variation>

/** `variations.yaml`: changes to the agreed work, in order; private. */
export const variationsFile = z.strictObject({ variations: z.array(variation).max(100) }).meta({
  id: "variations",
  title: "variations.yaml",
  description: "Changes to the agreed work, priced and accepted or not; never published.",
})
export type VariationsFile = z.infer<typeof variationsFile>
