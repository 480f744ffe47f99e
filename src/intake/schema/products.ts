import { z } from "zod"
import type { Reference } from "./values.ts"
import { amount, id, length, line, refersTo, text, thickness } from "./values.ts"

const common = {
  id,
  name: line,
  supplier: line.meta({ description: "Who sells it, as a role.", examples: ["timber merchant"] }),
  lead: z.number().int().min(0).max(365).meta({ description: "Lead time in days." }),
  note: text.optional(),
}

/** A floor board sold in packs. */
export const board = z
  .strictObject({
    ...common,
    kind: z.literal("board"),
    thickness,
    width: length,
    length,
    perPack: z.number().int().positive().max(100),
    mix: z
      .array(
        z.strictObject({
          length: length.meta({ description: "One length in the pack, mm." }),
          perPack: z
            .number()
            .int()
            .positive()
            .max(100)
            .meta({ description: "Boards of that length in every pack." }),
        }),
      )
      .min(2)
      .max(6)
      .optional()
      .meta({
        description:
          "Where a pack holds several lengths: how many boards of each, together perPack. The board's length is then the longest of them.",
        examples: [
          [
            { length: 2200, perPack: 4 },
            { length: 1820, perPack: 2 },
            { length: 1300, perPack: 2 },
          ],
        ],
      }),
    packMass: z.number().positive().max(200).meta({ description: "Mass of a pack, kg." }),
    pricePerM2: amount,
    moves: z.number().positive().max(1).optional().meta({
      description: "Movement across the width against solid timber, as a share; the maker's figure.",
    }),
  })
  .superRefine(({ length, perPack, mix }, { addIssue }) => {
    if (!mix) return
    const wrong = (key: string, message: string) =>
      addIssue({ code: "custom", path: [key], message, params: { code: "board-mix" } })
    const together = mix.reduce((sum, each) => sum + each.perPack, 0)
    const longest = Math.max(...mix.map((each) => each.length))
    if (together !== perPack) wrong("perPack", `the mix has ${together} boards to a pack, not ${perPack}`)
    if (longest !== length) wrong("length", `the longest board of the mix is ${longest}, not ${length}`)
    if (new Set(mix.map((each) => each.length)).size < mix.length)
      wrong("mix", "a length stands in the mix twice")
  })

/** A sheet or roll good sold by area. */
export const roll = z.strictObject({
  ...common,
  kind: z.literal("roll"),
  thickness,
  width: length,
  area: z.number().positive().max(1000).meta({ description: "Area of a roll or pack, m2." }),
  mass: z.number().positive().max(200),
  price: amount.meta({ description: "Price of one roll." }),
  foil: z.boolean().default(false).meta({ description: "Has a foil face, which is a moisture layer." }),
})

/** A moulding or timber sold in lengths. */
export const lengthGood = z.strictObject({
  ...common,
  kind: z.literal("length"),
  thickness,
  width: thickness,
  material: z.enum(["mdf", "softwood", "hardwood", "metal"]),
  primed: z.boolean().default(false),
  lengths: z
    .array(
      z.strictObject({
        length,
        price: amount,
        available: z
          .number()
          .int()
          .min(0)
          .max(9999)
          .optional()
          .meta({
            description: "How many of this length can be had; without it, as many as are wanted.",
            examples: [12],
          }),
      }),
    )
    .min(1)
    .max(20),
})

/** A door leaf. */
export const leaf = z.strictObject({
  ...common,
  kind: z.literal("leaf"),
  width: length,
  height: length,
  thickness,
  mass: z.number().positive().max(200),
  core: z.enum(["solid", "hollow"]),
  fire: z
    .enum(["none", "30", "60"])
    .meta({ description: "Minutes of fire resistance its label states; none for an ordinary leaf." }),
  trim: z
    .strictObject({
      hinge: z.number().min(0),
      lock: z.number().min(0),
      head: z.number().min(0),
      foot: z.number().min(0),
    })
    .meta({ description: "Most that may be taken off each edge, mm, by the leaf's data sheet." }),
  face: z.enum(["oak", "primed", "painted", "glazed"]),
  price: amount,
})

/** Anything sold in tins by volume. */
export const liquid = z.strictObject({
  ...common,
  kind: z.literal("liquid"),
  use: z.enum([
    "mist",
    "emulsion",
    "white-emulsion",
    "moisture-emulsion",
    "undercoat",
    "trim",
    "primer",
    "bond",
    "stain-block",
    "oil",
    "varnish",
  ]),
  base: z.enum(["water", "solvent", "oil"]),
  colour: line,
  rate: z
    .number()
    .positive()
    .max(50)
    .optional()
    .meta({ description: "Maker's spreading rate, m2 per litre and coat." }),
  tins: z
    .array(z.strictObject({ litres: z.number().positive().max(50), price: amount }))
    .min(1)
    .max(10),
})

/** Anything sold by the piece, box, bag, tube or bottle. */
export const each = z.strictObject({
  ...common,
  kind: z.literal("each"),
  unit: line.meta({ description: "What one is.", examples: ["box of 200", "tube", "bag"] }),
  holds: z.number().positive().meta({ description: "How much one holds, in the unit it is used by." }),
  holdsUnit: z.enum(["nr", "kg", "l", "m", "m2"]),
  mass: z.number().positive().max(500).optional(),
  price: amount,
})

/** A tile. */
export const tile = z.strictObject({
  ...common,
  kind: z.literal("tile"),
  width: length,
  height: length,
  thickness,
  perBox: z.number().int().positive(),
  boxMass: z.number().positive().max(100),
  price: amount.meta({ description: "Price of one box." }),
})

/** One product of the catalogue. */
export const product = z
  .discriminatedUnion("kind", [board, roll, lengthGood, leaf, liquid, each, tile])
  .meta({ description: "A product with its sizes, coverage, mass, price and lead time." })
export type Product = z.infer<typeof product>
export type ProductKind = Product["kind"]
/** Every kind that a product may be. */
export const productKinds: ReadonlySet<string> = new Set(
  product.options.flatMap((option) => [...option.shape.kind.values]),
)
export type ProductOf<K extends ProductKind> = Extract<Product, { kind: K }>

/** Id of a product in the catalogue or of this job, of one of these kinds; for the inputs of a trade. */
export function productId(...kinds: ProductKind[]) {
  return id.meta({ refersTo: "product" satisfies Reference, kinds })
}

/** `catalogue.yaml`, shared by the jobs of a folder. */
export const catalogueFile = z
  .strictObject({ products: z.array(product).max(2000) })
  .meta({ id: "catalogue", title: "catalogue.yaml", description: "Products that jobs choose from." })
export type CatalogueFile = z.infer<typeof catalogueFile>

/** `products.yaml`: what this job chooses, by what it is for, and what it adds to the catalogue. */
export const productsFile = z
  .strictObject({
    chosen: z
      .record(z.string(), id)
      .meta({ description: "Product id for each use, e.g. skirting: skirting-145." }),
    products: z.array(product).max(500).default([]).meta({ description: "Products of this job alone." }),
    inHand: z
      .array(
        z.strictObject({
          product: refersTo("product"),
          amount: z.number().positive(),
          note: line.optional(),
        }),
      )
      .max(200)
      .default([])
      .meta({ description: "Stock in hand: lengths in mm, otherwise units as sold." }),
    suppliers: z
      .array(
        z.strictObject({
          supplier: line.meta({
            description: "As written with the products.",
            examples: ["timber merchant"],
          }),
          days: z
            .array(z.enum(["mon", "tue", "wed", "thu", "fri", "sat", "sun"]))
            .min(1)
            .max(7)
            .optional()
            .meta({ description: "Days on which it delivers; every working day where left out." }),
          leadIn: z
            .enum(["calendar", "working"])
            .default("calendar")
            .meta({ description: "Whether its lead times count calendar days or working days." }),
          collect: z.boolean().default(false).meta({ description: "True if one drives there to collect." }),
        }),
      )
      .max(50)
      .default([])
      .meta({ description: "How each supplier's goods come; delivered on any working day where left out." }),
    stores: z
      .array(
        z.strictObject({
          place: line.meta({ description: "Where goods wait for their day.", examples: ["the garage"] }),
          takes: z
            .array(z.enum(["board", "roll", "length", "leaf", "liquid", "each", "tile"]))
            .min(1)
            .max(7),
          note: line.optional(),
        }),
      )
      .max(20)
      .default([])
      .meta({ description: "Where to put what comes, by kind of product." }),
  })
  .meta({ id: "products", title: "products.yaml", description: "Products chosen for this job." })
export type ProductsFile = z.infer<typeof productsFile>
