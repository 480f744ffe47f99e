import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import { length, line, refersTo, smallOrNought, thickness, wallNumber } from "../../intake/schema/values.ts"

const paint = productId("liquid")

/** What a wall or ceiling is before the first coat. */
export const surfaceState = z.enum(["new-plaster", "old-paint", "old-gloss", "stained"]).meta({
  description:
    "What stands there now: new-plaster takes a mist coat; old-gloss a bond coat; stained a stain-blocking coat.",
  examples: ["new-plaster"],
})
export type SurfaceState = z.infer<typeof surfaceState>

const products = z
  .strictObject({
    mist: paint
      .optional()
      .meta({ description: "Paint for the mist coat; else the white.", examples: ["white-matt"] }),
    white: paint
      .optional()
      .meta({ description: "White for plaster, under the colour.", examples: ["white-matt"] }),
    ceilingWhite: paint
      .optional()
      .meta({ description: "White for ceilings; else the white.", examples: ["white-matt"] }),
    wallColour: paint.optional().meta({ description: "Paint of the wall colour.", examples: ["colour-1"] }),
    moistureColour: paint
      .optional()
      .meta({ description: "Wall paint for wet rooms.", examples: ["moisture-1"] }),
    moistureWhite: paint
      .optional()
      .meta({ description: "Ceiling paint for wet rooms.", examples: ["moisture-white"] }),
    bond: paint.optional().meta({ description: "Bond coat over old gloss.", examples: ["bond-coat"] }),
    stainBlock: paint.optional().meta({ description: "Stain-blocking coat.", examples: ["stain-block"] }),
    primer: paint.optional().meta({ description: "Primer for bare wood.", examples: ["wood-primer"] }),
    undercoat: paint
      .optional()
      .meta({ description: "Undercoat for wood; never for plaster.", examples: ["undercoat"] }),
    trim: paint.optional().meta({ description: "Finish for wood.", examples: ["trim-satin"] }),
    doorFinish: paint
      .optional()
      .meta({ description: "Clear finish for doors left as wood.", examples: ["door-varnish"] }),
  })
  .meta({ description: "Product ids for this room; else those chosen for the job." })

const woodwork = z
  .strictObject({
    state: z
      .enum(["bare", "primed", "old-paint", "none"])
      .default("primed")
      .meta({
        description: "What the wood is before the first coat; none: no wood is painted here.",
        examples: ["primed"],
      }),
    colour: line
      .default("trim colour")
      .meta({ description: "Colour, by name or role.", examples: ["trim colour"] }),
    skirting: z
      .boolean()
      .default(true)
      .meta({ description: "Skirting is painted.", examples: [true] }),
    architraves: z
      .boolean()
      .default(true)
      .meta({ description: "Architraves are painted.", examples: [true] }),
    linings: z
      .boolean()
      .default(true)
      .meta({
        description: "Door linings and stops are painted, by the room the leaf swings into.",
        examples: [true],
      }),
    doors: z
      .enum(["paint", "clear", "none"])
      .default("paint")
      .meta({
        description: "Door leaves: painted, given a clear finish, or left.",
        examples: ["paint"],
      }),
    except: z
      .array(refersTo("door"))
      .max(20)
      .default([])
      .meta({
        description: "Doorways of this room whose leaf and frame are left as they are.",
        examples: [["d-cupboard"]],
      }),
    other: z
      .array(
        z.strictObject({
          what: line.meta({ description: "What it is.", examples: ["window board"] }),
          length: length.meta({ description: "Length, mm.", examples: [1800] }),
          girth: length.meta({ description: "Width round what is painted, mm.", examples: [240] }),
        }),
      )
      .max(40)
      .default([])
      .meta({ description: "Other wood to paint, by length and girth." }),
  })
  .meta({ description: "Wood to be painted." })

/** What the author may write for decorating in one room, under `work.decorating`. */
export const decoratingInputs = z
  .strictObject({
    walls: surfaceState.default("new-plaster"),
    ceiling: surfaceState.default("new-plaster"),
    slopes: surfaceState
      .optional()
      .meta({ description: "Sloping ceilings; else as the ceiling.", examples: ["new-plaster"] }),
    slopeIs: z
      .enum(["wall", "ceiling"])
      .default("ceiling")
      .meta({
        description: "Whether the slopes take the wall's or the ceiling's colour: the client's choice.",
        examples: ["ceiling"],
      }),
    wallColour: line.default("wall colour").meta({
      description: "Wall colour, by name or role.",
      examples: ["wall colour 1"],
    }),
    ceilingColour: line.default("white").meta({ description: "Ceiling colour.", examples: ["white"] }),
    accents: z
      .array(z.strictObject({ wall: wallNumber, colour: line, product: paint.optional() }))
      .max(20)
      .default([])
      .meta({
        description: "Walls in another colour, each with its product.",
        examples: [[{ wall: 3, colour: "wall colour 2" }]],
      }),
    leave: z
      .array(wallNumber)
      .max(40)
      .default([])
      .meta({
        description: "Walls that are not painted (a wardrobe front, panelling).",
        examples: [[4]],
      }),
    deepColour: z
      .boolean()
      .default(false)
      .meta({ description: "A deep colour: one coat more.", examples: [false] }),
    wet: z
      .boolean()
      .optional()
      .meta({ description: "Wet room: moisture-tolerant paint; else bathrooms only.", examples: [true] }),
    plasterDry: z
      .boolean()
      .default(false)
      .meta({
        description:
          "true: new plaster was seen an even pale colour at the survey, so no drying time is waited for.",
        examples: [false],
      }),
    plasterThickness: thickness
      .optional()
      .meta({ description: "Plaster thickness where more than a skim, mm.", examples: [11] }),
    mist: z
      .strictObject({
        paint: z
          .number()
          .positive()
          .max(20)
          .meta({ description: "Parts of paint.", examples: [3] }),
        water: z
          .number()
          .positive()
          .max(20)
          .meta({ description: "Parts of water.", examples: [1] }),
      })
      .optional()
      .meta({ description: "Mist coat as the paint's maker says; else by rule." }),
    coldestSurface: z
      .number()
      .min(-20)
      .max(50)
      .optional()
      .meta({
        description:
          "Coldest surface to be coated, as read, °C (a gable, a reveal); checked against the dew point.",
        examples: [14],
      }),
    still: z
      .boolean()
      .default(false)
      .meta({
        description: "true: the room stays closed while it dries, without moving air; drying takes longer.",
        examples: [false],
      }),
    texture: z
      .boolean()
      .default(false)
      .meta({ description: "An old textured coating is on a surface.", examples: [false] }),
    boardDepth: smallOrNought
      .optional()
      .meta({ description: "Skirting girth where none is new, mm.", examples: [150] }),
    woodwork: woodwork.prefault({}),
    products: products.prefault({}),
  })
  .meta({ description: "Walls, ceilings and woodwork of one room." })
export type DecoratingInputs = z.infer<typeof decoratingInputs>
export type PaintUse = keyof DecoratingInputs["products"]
