import { z } from "zod"
import { type Formats, formats, type TradeFormat } from "./formats.ts"

/** A JSON Schema as plain data. */
export type JsonSchema = Record<string, unknown>

/**
 * The JSON Schema of each kind of file, by the name its first line asks for (`job`, `house`, `room` ...), made of the schemas that
 * the files are checked by, so that editors complete and explain what the build takes. Draft 7, which editors read best.
 */
export function jsonSchemas(trades: readonly TradeFormat[]): Record<keyof Formats, JsonSchema> {
  const all = formats(trades, withNothing)
  return {
    job: jsonSchema(all.job),
    house: jsonSchema(all.house),
    room: jsonSchema(all.room),
    products: jsonSchema(all.products),
    programme: jsonSchema(all.programme),
    money: jsonSchema(all.money),
    variations: jsonSchema(all.variations),
    catalogue: jsonSchema(all.catalogue),
  }
}

/** The text of a schema file: keys in the order of the format, two spaces, a line feed at the end. */
export function schemaText(schema: JsonSchema): string {
  return `${JSON.stringify(schema, null, 2)}\n`
}

/** A trade's key with nothing behind it asks for the trade with all its defaults, where it has them. */
function withNothing(inputs: z.ZodType): z.ZodType {
  return inputs.safeParse({}).success ? inputs.nullable() : inputs
}

function jsonSchema(schema: z.ZodType): JsonSchema {
  const { $schema, $ref, $defs, definitions, ...rest } = z.toJSONSchema(schema, {
    io: "input",
    target: "draft-7",
    unrepresentable: "any",
    override: ({ jsonSchema: node }) => {
      for (const key of ownWords) delete (node as JsonSchema)[key]
    },
  }) as JsonSchema
  const named = (definitions ?? $defs) as Record<string, JsonSchema> | undefined
  // A schema with an id of its own comes as a reference to itself; an editor's hover reads better without.
  const root = typeof $ref === "string" ? named?.[$ref.slice($ref.lastIndexOf("/") + 1)] : undefined
  return { $schema, ...(root ?? rest) }
}

/** What the schemas say to intake alone. */
const ownWords = ["slip", "refersTo", "kinds", "id"]
