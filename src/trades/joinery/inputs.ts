import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import { length, line, type Reference, refersTo, wallNumber } from "../../intake/schema/values.ts"

const moulding = { refersTo: "product" satisfies Reference, kinds: ["length"] }

/** What may be written under `work.joinery` of a room. Products left out fall back to those chosen for the job. */
export const joineryInputs = z
  .strictObject({
    skirting: z
      .union([z.literal(false), productId("length")])
      .optional()
      .meta({
        description: "Product id of the skirting, or false for none.",
        examples: ["skirting-145"],
        ...moulding,
      }),
    architrave: z
      .union([z.literal(false), productId("length")])
      .optional()
      .meta({
        description: "Product id of the architraves, or false for none.",
        examples: ["architrave-69"],
        ...moulding,
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
      .strictObject({ product: productId("length").optional(), lengths: z.array(length).min(1).max(20) })
      .optional()
      .meta({ description: "Nosings along open edges and the stair head: lengths in mm." }),
    threshold: z
      .array(
        z.strictObject({ door: refersTo("door"), product: productId("length").optional(), profile: line }),
      )
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
