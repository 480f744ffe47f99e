import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import {
  id,
  length,
  lengthOrNought,
  line,
  type Reference,
  refersTo,
  smallOrNought,
  wallNumber,
} from "../../intake/schema/values.ts"

const moulding = productId("length")
/** The same for a choice of `false` or a product: intake reads it at the choice itself. */
const reference = { refersTo: "product" satisfies Reference, kinds: ["length"] }

const lengths = z
  .array(length)
  .min(1)
  .max(60)
  .meta({ description: "Finished lengths, mm.", examples: [[900, 900]] })
const nosingInput = z.strictObject({ product: moulding.optional(), lengths })

const trim = z
  .strictObject({
    opening: id.meta({
      description: "Id of a window, roof window or hatch of this room.",
      examples: ["RW1"],
    }),
    product: moulding.optional().meta({ description: "Product id; the room's architrave where left out." }),
    sides: z
      .union([z.literal(3), z.literal(4)])
      .optional()
      .meta({ description: "4 round a roof window or hatch, 3 over a sill board.", examples: [4] }),
  })
  .meta({ description: "A trim mitred round an opening." })

const made = z
  .strictObject({
    what: z
      .enum(["bath panel", "boxing", "wardrobe frame", "shelf", "other"])
      .meta({ description: "What the pieces are for.", examples: ["shelf"] }),
    name: line
      .optional()
      .meta({ description: "Which one, where there are several.", examples: ["over the desk"] }),
    wall: wallNumber.optional(),
    product: moulding.meta({
      description: "Product id of what they are cut from.",
      examples: ["plank-18-220"],
    }),
    lengths: lengths.meta({ description: "Finished lengths, mm.", examples: [[1200, 1200, 340]] }),
  })
  .meta({ description: "Pieces of something made on site." })

const threshold = z
  .strictObject({
    door: refersTo("door"),
    product: moulding.optional(),
    profile: line.meta({ description: "Kind of bar.", examples: ["ramp, tile 13 to oak 19"] }),
  })
  .meta({ description: "A threshold bar: which doorway, what kind of profile." })

/** The parts of a stair that are cut from lengths. */
export const stairParts = [
  "nosing",
  "tread",
  "riser",
  "string",
  "newel",
  "handrail",
  "base rail",
  "baluster",
  "guarding",
] as const

const stairPart = z
  .strictObject({
    what: z.enum(stairParts).meta({ description: "Which part of the stair.", examples: ["handrail"] }),
    product: moulding.meta({ description: "Product id of what it is cut from." }),
    lengths,
  })
  .meta({ description: "Pieces of a stair: lengths along the longest edge, mm." })

const stairWork = z
  .strictObject({
    stair: id.meta({ description: "Id of the stair in house.yaml.", examples: ["S2"] }),
    rises: z.array(length).min(1).max(30).optional().meta({
      description:
        "Each rise as taped before finishes, from the bottom, mm; all as in house.yaml where left out.",
    }),
    onTreads: smallOrNought
      .default(0)
      .meta({ description: "Thickness of what is laid on the treads, mm.", examples: [12] }),
    handrailHeight: lengthOrNought
      .optional()
      .meta({ description: "Top of handrail over the pitch line, mm." }),
    guardingHeight: lengthOrNought.optional().meta({ description: "Top of guarding over the floor, mm." }),
    parts: z.array(stairPart).max(40).default([]).meta({ description: "Parts of the stair to be cut." }),
  })
  .meta({ description: "What is done to a stair, written in the room at its head." })
export type StairWork = z.infer<typeof stairWork>

/** What may be written under `work.joinery` of a room. Products left out fall back to those chosen for the job. */
export const joineryInputs = z
  .strictObject({
    skirting: z
      .union([z.literal(false), moulding])
      .optional()
      .meta({
        description: "Product id of the skirting, or false for none.",
        examples: ["skirting-145"],
        ...reference,
      }),
    architrave: z
      .union([z.literal(false), moulding])
      .optional()
      .meta({
        description: "Product id of the architraves, or false for none.",
        examples: ["architrave-69"],
        ...reference,
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
    nosing: nosingInput
      .optional()
      .meta({ description: "Nosings along open edges and the stair head: lengths in mm." }),
    threshold: z
      .array(threshold)
      .max(20)
      .default([])
      .meta({ description: "Threshold bars: doorway and what kind of profile." }),
    trims: z
      .array(trim)
      .max(40)
      .default([])
      .meta({
        description: "Trims round windows, roof windows and hatches.",
        examples: [[{ opening: "RW1" }]],
      }),
    made: z
      .array(made)
      .max(60)
      .default([])
      .meta({ description: "Bath panel, boxing, wardrobe frames, shelves: pieces cut from lengths." }),
    stairs: z
      .array(stairWork)
      .max(4)
      .default([])
      .meta({ description: "Work on the stair that comes up to this room." }),
    sawn: z
      .array(line)
      .max(400)
      .default([])
      .meta({
        description: "Marks of pieces that are sawn already: they leave the saw sheet.",
        examples: [["A1-1-S1"]],
      }),
    standsProud: z
      .boolean()
      .default(false)
      .meta({ description: "true: the foreman accepts a skirting thicker than the architrave." }),
  })
  .meta({ description: "Skirting, architraves, trims, nosings, thresholds and stair parts of a room." })
export type JoineryInputs = z.infer<typeof joineryInputs>

/** Work on stairs as a room's results carry it; what is not that counts as none. */
export function stairsWritten(results: unknown): StairWork[] {
  const read = z.array(stairWork).safeParse(results)
  return read.success ? read.data : []
}
