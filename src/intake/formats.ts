import { z } from "zod"
import { door, type HouseFile, houseFile } from "./schema/house.ts"
import { type JobFile, jobFile } from "./schema/job.ts"
import {
  type CatalogueFile,
  catalogueFile,
  type ProductKind,
  type ProductsFile,
  productId,
  productsFile,
} from "./schema/products.ts"
import { type MoneyFile, moneyFile, type ProgrammeFile, programmeFile } from "./schema/programme.ts"
import { type RoomFile, roomFile } from "./schema/room.ts"

/** What intake must know of a trade: what may be written for it. The composer hands in every trade. */
export interface TradeFormat {
  /** Key under `work` of a room. */
  id: string
  title?: string
  inputs: z.ZodType
  /** What may be written under `work` of a doorway; of one trade at most. */
  doorInputs?: z.ZodType
  /** Uses of products that may be chosen in products.yaml. */
  uses: readonly { use: string; kind: ProductKind; what: string }[]
}

/** The schema of each kind of file, with what the trades take spliced in. */
export interface Formats {
  job: z.ZodType<JobFile>
  house: z.ZodType<HouseFile>
  room: z.ZodType<RoomFile>
  products: z.ZodType<ProductsFile>
  programme: z.ZodType<ProgrammeFile>
  money: z.ZodType<MoneyFile>
  catalogue: z.ZodType<CatalogueFile>
}

/**
 * The schemas of a job's files: rooms take each trade's inputs under `work`, doorways those of the trade that hangs doors, and
 * products.yaml the uses that the trades name. `around` wraps each trade's inputs, for a schema that editors read.
 */
export function formats(
  trades: readonly TradeFormat[],
  around: (inputs: z.ZodType) => z.ZodType = (inputs) => inputs,
): Formats {
  return {
    job: jobFile,
    house: houseWith(trades, around),
    room: roomWith(trades, around),
    products: productsWith(trades),
    programme: programmeFile,
    money: moneyFile,
    catalogue: catalogueFile,
  }
}

function roomWith(trades: readonly TradeFormat[], around: (inputs: z.ZodType) => z.ZodType): Formats["room"] {
  const work = Object.fromEntries(
    trades.map((trade) => [
      trade.id,
      around(trade.inputs)
        .optional()
        .meta({ title: trade.title ?? trade.id }),
    ]),
  )
  const description = roomFile.shape.work.meta()?.description ?? ""
  const extended = roomFile.extend({ work: z.strictObject(work).default({}).meta({ description }) })
  return extended.meta(withoutId(roomFile)) as unknown as Formats["room"]
}

function houseWith(
  trades: readonly TradeFormat[],
  around: (inputs: z.ZodType) => z.ZodType,
): Formats["house"] {
  const inputs = trades.find((trade) => trade.doorInputs)?.doorInputs
  if (!inputs) return houseFile
  const description = door.shape.work.meta()?.description ?? ""
  const entry = door.extend({ work: around(inputs).optional().meta({ description }) }).meta(withoutId(door))
  const extended = houseFile.extend({ doors: z.array(entry).max(mostDoors).default([]) })
  return extended.meta(withoutId(houseFile)) as unknown as Formats["house"]
}

/** Most doorways of a house, as in house.yaml's own schema. */
const mostDoors = 200

function productsWith(trades: readonly TradeFormat[]): Formats["products"] {
  const uses = trades.flatMap((trade) => trade.uses)
  if (!uses.length) return productsFile
  const chosen = Object.fromEntries(
    uses.map(({ use, what }) => {
      const kinds = uses.filter((other) => other.use === use).map((other) => other.kind)
      return [
        use,
        productId(...new Set(kinds))
          .optional()
          .meta({ description: `${what}.` }),
      ]
    }),
  )
  const description = productsFile.shape.chosen.meta()?.description ?? ""
  const extended = productsFile.extend({ chosen: z.strictObject(chosen).meta({ description }) })
  return extended.meta(withoutId(productsFile)) as unknown as Formats["products"]
}

function withoutId(schema: z.ZodType): Record<string, unknown> {
  const { id: _, ...rest } = schema.meta() ?? {}
  return rest
}
