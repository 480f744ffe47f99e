import { z } from "zod"
import { id, length, line } from "../../intake/schema/values.ts"

const wallNumber = z.number().int().min(1).max(60)

/** What may be written under `work.joinery` of a room. Products left out fall back to those chosen for the job. */
export const joineryInputs = z
  .strictObject({
    skirting: z
      .union([z.literal(false), id])
      .optional()
      .meta({ description: "Product id of the skirting, or false for none.", examples: ["skirting-145"] }),
    architrave: z
      .union([z.literal(false), id])
      .optional()
      .meta({
        description: "Product id of the architraves, or false for none.",
        examples: ["architrave-69"],
      }),
    without: z
      .array(wallNumber)
      .max(60)
      .default([])
      .meta({ description: "Walls without skirting (tiled, or behind a fitted carcass).", examples: [[3]] }),
    plinths: z
      .boolean()
      .default(false)
      .meta({ description: "Plinth blocks stand at the foot of the architraves." }),
    nosing: z
      .strictObject({ product: id.optional(), lengths: z.array(length).min(1).max(20) })
      .optional()
      .meta({ description: "Nosings along open edges and the stair head: lengths in mm." }),
    threshold: z
      .array(z.strictObject({ door: id, product: id.optional(), profile: line }))
      .max(20)
      .default([])
      .meta({ description: "Threshold bars: doorway and what kind of profile." }),
    standsProud: z
      .boolean()
      .default(false)
      .meta({ description: "true: the foreman accepts a skirting thicker than the architrave." }),
  })
  .meta({ description: "Skirting, architraves, nosings and thresholds of a room." })
export type JoineryInputs = z.infer<typeof joineryInputs>
