import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import {
  id,
  length,
  lengthOrNought,
  line,
  type Reference,
  smallOrNought,
  text,
  thickness,
} from "../../intake/schema/values.ts"

const chosenOrNot = (what: string) =>
  z
    .union([z.boolean(), id])
    .optional()
    .meta({
      description: `${what}: true, false, or the product id.`,
      examples: [true],
      refersTo: "product" satisfies Reference,
      kinds: ["each"],
    })

const leafAsItWas = z
  .strictObject({
    width: length,
    height: length,
    thickness,
    mass: z.number().positive().max(200).optional().meta({ description: "Mass, kg, where it was weighed." }),
    fire: z
      .enum(["none", "20", "30", "60"])
      .default("none")
      .meta({ description: "Minutes its label or plug shows; none where no label is found." }),
    hinges: z
      .enum(["left", "right"])
      .optional()
      .meta({ description: "Side of its hinges, seen from where the knuckles show." }),
    latch: length.optional().meta({ description: "Height of the old keep above the old floor, mm." }),
  })
  .meta({ description: "The leaf that hangs there now, as measured." })

const certificate = z
  .strictObject({
    gapLeast: smallOrNought.optional(),
    gapMost: smallOrNought.optional(),
    threshold: smallOrNought
      .optional()
      .meta({ description: "Most under the foot by the leaf's data sheet, mm." }),
    hinges: z.number().int().min(2).max(5).optional().meta({ description: "Hinges its data sheet asks." }),
    pads: z
      .boolean()
      .optional()
      .meta({ description: "Its data sheet asks for intumescent pads under hinges, latch and keep." }),
    number: line.optional().meta({ description: "Number on the certificate or data sheet." }),
  })
  .meta({ description: "Figures of the leaf's own data sheet or certificate; they override the rulebook." })

/** What may be written under `work` of a doorway in house.yaml. Product ids left out fall back to those chosen for the job. */
export const doorInputs = z
  .strictObject({
    hang: z
      .enum(["new", "rehang", "stays"])
      .default("stays")
      .meta({
        description:
          "new: a new leaf; rehang: the old leaf comes off and goes back; stays: left as it hangs.",
        examples: ["new"],
      }),
    leaf: productId("leaf")
      .optional()
      .meta({ description: "Product id of the leaf.", examples: ["leaf-oak-44-762"] }),
    was: leafAsItWas.optional().meta({ description: "The leaf that hangs there now, as measured." }),
    certificate: certificate
      .optional()
      .meta({ description: "Figures of the leaf's own data sheet; they override the rulebook." }),
    lining: productId("length")
      .optional()
      .meta({ description: "Product id of the lining timber, where a lining is made." }),
    stop: productId("length").optional().meta({ description: "Product id of the planted stop." }),
    hinge: productId("each").optional().meta({ description: "Product id of the hinges." }),
    hingeLength: length.optional().meta({ description: "Length of a hinge, mm.", examples: [100] }),
    hingeThickness: thickness
      .optional()
      .meta({ description: "Thickness of a hinge's flap, mm: how deep it is let in.", examples: [3] }),
    latch: chosenOrNot("Latch"),
    lock: chosenOrNot("Lock"),
    handle: chosenOrNot("Handles"),
    thumbTurn: chosenOrNot("Thumb-turn bolt that opens from outside with a coin"),
    closer: chosenOrNot("Closer"),
    closerFace: z
      .enum(["pull", "push"])
      .optional()
      .meta({
        description:
          "Face of the leaf the closer is screwed to: pull, where the knuckles show, or push; pull where left out.",
        examples: ["pull"],
      }),
    backcheck: z.boolean().default(false).meta({ description: "The closer has a backcheck." }),
    heavyUse: z.boolean().default(false).meta({ description: "In hard use all day: more for the hinges." }),
    seal: chosenOrNot("Intumescent strip"),
    smoke: z.boolean().default(false).meta({ description: "With smoke seals: blade or brush." }),
    thresholdSeal: z.boolean().default(false).meta({ description: "A seal drops or stands at the foot." }),
    undercutFor: z
      .enum(["air", "none"])
      .default("none")
      .meta({ description: "air: the gap at the foot lets air through.", examples: ["air"] }),
    handleHeight: length.optional().meta({
      description: "Spindle above the finished floor, mm; the same for the whole house where left out.",
    }),
    backset: length.optional().meta({ description: "Edge of leaf to spindle, mm." }),
    rebateBy: z
      .enum(["move-stop", "deepen", "replace-lining"])
      .optional()
      .meta({
        description: "What is done where the leaf is thicker than the kept rebate.",
        examples: ["move-stop"],
      }),
    keepOff: z
      .array(
        z.strictObject({ fromTop: lengthOrNought, to: length, what: line }).meta({
          description: "A zone of the hinge edge where no hinge may sit, from the top of the leaf, mm.",
        }),
      )
      .max(10)
      .default([])
      .meta({ description: "Zones of the hinge edge with glass or other things near it." }),
    swept: z
      .boolean()
      .default(true)
      .meta({ description: "false: the swing was tried on site and is clear; do not check it." }),
    note: text.optional().meta({ description: "A note printed at the head of the door sheet." }),
  })
  .meta({ description: "What is to hang in a doorway." })
export type DoorInputs = z.infer<typeof doorInputs>

/** What may be written under `work.doors` of a room: `{}` hangs the doors that belong to the room. */
export const doorsInputs = z
  .strictObject({
    note: text.optional().meta({ description: "A note printed at the head of the door sheet." }),
  })
  .meta({ description: "Hang the doors that belong to this room: those whose leaf swings into it." })
export type DoorsInputs = z.infer<typeof doorsInputs>

/** What is to hang in a doorway; what intake could not read counts as nothing written (intake has said so). */
export function doorWork(work: unknown): DoorInputs {
  const read = doorInputs.safeParse(work)
  return read.success ? read.data : doorInputs.parse({})
}
