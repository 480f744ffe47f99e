import type { z } from "zod"
import { globalRegistry } from "zod"

/** A place in a file's schema together with the value written there. */
export interface SchemaVisit {
  schema: z.core.$ZodType
  value: unknown
  path: (string | number)[]
  /** What the schema and its wrappers say of themselves (`description`, `refersTo`, `slip` ...). */
  meta: Readonly<Record<string, unknown>>
}

/** Calls `visit` for every value written that the schema knows, outermost first; values of a wrong type are not entered. */
export function walkSchema(
  schema: z.core.$ZodType,
  value: unknown,
  visit: (visited: SchemaVisit) => void,
  path: (string | number)[] = [],
): void {
  if (value === undefined) return
  visit({ schema, value, path, meta: metaOf(schema) })
  for (const [key, part] of partsOf(schema, value)) {
    walkSchema(part, (value as Record<string | number, unknown>)[key], visit, [...path, key])
  }
}

/** The schema at a path, led by the values written; undefined where the schema knows no such place. */
export function schemaAt(
  schema: z.core.$ZodType,
  value: unknown,
  path: readonly PropertyKey[],
): z.core.$ZodType | undefined {
  let here: z.core.$ZodType | undefined = schema
  let written = value
  for (const key of path) {
    const known: z.core.$ZodType | undefined = here && chosenOption(unwrapped(here), written)
    here = known && partAt(known, key)
    written = isKeyed(written) && Object.hasOwn(written, key) ? written[key] : undefined
  }
  return here
}

/** Keys that may be written in the mapping at this schema; empty where it is none or takes any key. */
export function keysOf(schema: z.core.$ZodType | undefined, value: unknown): string[] {
  const known = schema && chosenOption(unwrapped(schema), value)
  return known && isKind(known, "object") ? Object.keys(known._zod.def.shape) : []
}

/** What a schema and the wrappers around it (optional, default ...) say of themselves; the outer word counts. */
export function metaOf(schema: z.core.$ZodType): Record<string, unknown> {
  const inner = innerOf(schema)
  return { ...(inner ? metaOf(inner) : {}), ...(globalRegistry.get(schema) ?? {}) }
}

/** The schema without its wrappers. */
export function unwrapped(schema: z.core.$ZodType): z.core.$ZodType {
  const inner = innerOf(schema)
  return inner ? unwrapped(inner) : schema
}

type Kinds = {
  object: z.core.$ZodObject
  array: z.core.$ZodArray
  tuple: z.core.$ZodTuple
  record: z.core.$ZodRecord
  union: z.core.$ZodUnion
}

function isKind<K extends keyof Kinds>(schema: z.core.$ZodType, kind: K): schema is Kinds[K] {
  return schema._zod.def.type === kind
}

function isKeyed(value: unknown): value is Record<PropertyKey, unknown> {
  return typeof value === "object" && value !== null
}

function innerOf(schema: z.core.$ZodType): z.core.$ZodType | undefined {
  const def = schema._zod.def as {
    innerType?: z.core.$ZodType
    in?: z.core.$ZodType
    getter?: () => z.core.$ZodType
  }
  return def.innerType ?? def.in ?? def.getter?.()
}

/** Of a union the option that the value is meant for: by its discriminator, else the first that takes it; others as they are. */
function chosenOption(schema: z.core.$ZodType, value: unknown): z.core.$ZodType | undefined {
  if (!isKind(schema, "union")) return schema
  const { options } = schema._zod.def
  const by = (schema._zod.def as { discriminator?: string }).discriminator
  const option =
    by === undefined
      ? options.find((each) => "safeParse" in each && (each as z.ZodType).safeParse(value).success)
      : options.find((each) => isKeyed(value) && takes(partAt(unwrapped(each), by), value[by]))
  return option && chosenOption(unwrapped(option), value)
}

function takes(schema: z.core.$ZodType | undefined, value: unknown): boolean {
  return schema?._zod.values?.has(value as string) ?? false
}

function partAt(schema: z.core.$ZodType, key: PropertyKey): z.core.$ZodType | undefined {
  if (isKind(schema, "object")) {
    const { shape } = schema._zod.def
    return Object.hasOwn(shape, key) ? shape[key as string] : undefined
  }
  if (isKind(schema, "array")) return schema._zod.def.element
  if (isKind(schema, "tuple")) return schema._zod.def.items[Number(key)]
  if (isKind(schema, "record")) return schema._zod.def.valueType
  return undefined
}

function partsOf(schema: z.core.$ZodType, value: unknown): [string | number, z.core.$ZodType][] {
  const known = chosenOption(unwrapped(schema), value)
  if (!known || !isKeyed(value)) return []
  const keys: (string | number)[] = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value)
  const wantsList = isKind(known, "array") || isKind(known, "tuple")
  if (wantsList !== Array.isArray(value)) return []
  return keys.flatMap((key) => {
    const part = partAt(known, key)
    return part ? [[key, part] as [string | number, z.core.$ZodType]] : []
  })
}
