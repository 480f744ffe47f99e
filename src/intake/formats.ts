import { z } from "zod"
import { door, type HouseFile, houseFile } from "./schema/house.ts"
import { type JobFile, jobFile } from "./schema/job.ts"
import { type MoneyFile, moneyFile } from "./schema/money.ts"
import {
  type CatalogueFile,
  catalogueFile,
  type ProductKind,
  type ProductsFile,
  productId,
  productsFile,
} from "./schema/products.ts"
import { type ProgrammeFile, programmeFile } from "./schema/programme.ts"
import { type RoomFile, roomFile } from "./schema/room.ts"
import {
  type VariationsFile,
  variation,
  variationsFile,
  variedDoor,
  variedRoom,
} from "./schema/variations.ts"

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
  variations: z.ZodType<VariationsFile>
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
    variations: variationsWith(trades, around),
    catalogue: catalogueFile,
  }
}

function roomWith(trades: readonly TradeFormat[], around: (inputs: z.ZodType) => z.ZodType): Formats["room"] {
  const work = worksOf(trades, around)
  const description = roomFile.shape.work.meta()?.description ?? ""
  const extended = roomFile.extend({ work: z.strictObject(work).default({}).meta({ description }) })
  return extended.meta(withoutId(roomFile)) as unknown as Formats["room"]
}

function worksOf(trades: readonly TradeFormat[], around: (inputs: z.ZodType) => z.ZodType) {
  return Object.fromEntries(
    trades.map((trade) => [
      trade.id,
      around(trade.inputs)
        .optional()
        .meta({ title: trade.title ?? trade.id }),
    ]),
  )
}

function variationsWith(
  trades: readonly TradeFormat[],
  around: (inputs: z.ZodType) => z.ZodType,
): Formats["variations"] {
  const described = (schema: z.ZodType) => ({ description: schema.meta()?.description ?? "" })
  const room = variedRoom.extend({
    work: z.strictObject(worksOf(trades, around)).default({}).meta(described(variedRoom.shape.work)),
  })
  const doorInputs = trades.find((trade) => trade.doorInputs)?.doorInputs
  const door = doorInputs
    ? variedDoor.extend({ work: around(doorInputs).meta(described(variedDoor.shape.work)) })
    : variedDoor
  const one = variation.safeExtend({
    rooms: z.array(room).max(mostVaried).default([]),
    doors: z.array(door).max(mostVaried).default([]),
    chosen: chosenWith(trades).default({}).meta(described(variation.shape.chosen)) as never,
  })
  const extended = variationsFile.extend({ variations: z.array(one).max(mostVaried) })
  return extended.meta(withoutId(variationsFile)) as unknown as Formats["variations"]
}

/** Most entries of a list of a variation. */
const mostVaried = 100

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
  if (!trades.some((trade) => trade.uses.length > 0)) return productsFile
  const description = productsFile.shape.chosen.meta()?.description ?? ""
  const extended = productsFile.extend({ chosen: chosenWith(trades).meta({ description }) })
  return extended.meta(withoutId(productsFile)) as unknown as Formats["products"]
}

/** Products by the uses that the trades name. */
function chosenWith(trades: readonly TradeFormat[]) {
  const uses = trades.flatMap((trade) => trade.uses)
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
  return z.strictObject(chosen)
}

function withoutId(schema: z.ZodType): Record<string, unknown> {
  const { id: _, ...rest } = schema.meta() ?? {}
  return rest
}
