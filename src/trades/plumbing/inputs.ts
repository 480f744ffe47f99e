import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import { length, lengthOrNought, line, thickness, wallNumber } from "../../intake/schema/values.ts"

const wall = wallNumber.meta({ description: "Wall number.", examples: [2] })
const fromLeft = lengthOrNought.meta({
  description: "Left end of the wall to its left side, seen from inside, mm.",
  examples: [900],
})

const radiator = z
  .strictObject({
    wall,
    fromLeft,
    width: length.meta({ description: "Width of the radiator, mm.", examples: [1000] }),
    height: length.meta({ description: "Height of the radiator, mm.", examples: [600] }),
    foot: lengthOrNought.optional().meta({
      description: "Finished floor to its lower edge, mm; else by rule.",
      examples: [150],
    }),
    tails: z
      .array(lengthOrNought)
      .min(1)
      .max(4)
      .optional()
      .meta({
        description: "Centres of the pipes from the wall's left end, mm; else one beside each end by rule.",
        examples: [[860, 1940]],
      }),
    tailsOff: lengthOrNought.optional().meta({
      description: "Centre of the pipes off the finished wall, mm; by the brackets' maker.",
      examples: [55],
    }),
    pipe: thickness.default(15).meta({ description: "Outside of the pipe, mm.", examples: [15] }),
    product: productId("each")
      .optional()
      .meta({ description: "Product id; else the one chosen.", examples: ["radiator-1000"] }),
  })
  .meta({ description: "One radiator." })
export type Radiator = z.infer<typeof radiator>

const ware = z
  .strictObject({
    kind: z.enum(["wc", "basin", "shower", "bath", "towel-rail", "sink"]).meta({
      description: "What it is.",
      examples: ["basin"],
    }),
    wall,
    fromLeft,
    width: length.meta({ description: "Width along the wall, mm.", examples: [550] }),
    depth: length.optional().meta({
      description: "Depth out from the wall, mm; else a shower is as deep as wide, a bath by rule.",
      examples: [700],
    }),
    rim: lengthOrNought.optional().meta({
      description: "Finished floor to its rim or upper edge, mm, where it matters.",
      examples: [850],
    }),
    onTile: z
      .boolean()
      .default(true)
      .meta({ description: "Stands on or hangs from tile.", examples: [true] }),
    note: line.optional().meta({ description: "What to know.", examples: ["waste to the gable"] }),
    product: productId("each")
      .optional()
      .meta({ description: "Product id; else the one chosen.", examples: ["basin-550"] }),
  })
  .meta({ description: "One piece of sanitaryware." })
export type Ware = z.infer<typeof ware>

/** What the author may write for plumbing in one room, under `work.plumbing`. */
export const plumbingInputs = z
  .strictObject({
    radiators: z.array(radiator).max(20).default([]).meta({ description: "Radiators by wall." }),
    sanitaryware: z.array(ware).max(20).default([]).meta({ description: "Sanitaryware by wall." }),
    firstFix: z
      .enum(["done", "to-do"])
      .default("done")
      .meta({
        description: "Whether pipes are already in.",
        examples: ["done"],
      }),
  })
  .meta({ description: "Radiators and sanitaryware of one room." })
export type PlumbingInputs = z.infer<typeof plumbingInputs>
