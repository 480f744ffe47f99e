import type { z } from "zod"
import type { JobFiles } from "./folder.ts"
import type { Formats, TradeFormat } from "./formats.ts"
import { valueAt } from "./schema-findings.ts"
import type { YamlFile } from "./yaml-file.ts"

/** A job's files before they are known to be sound: what the checks across files look at. */
export interface Draft {
  files: JobFiles
  catalogue: YamlFile | null
  formats: Formats
  trades: readonly TradeFormat[]
}

/** Every file with the schema it is held against. */
export function filesWithSchemas({ files, formats }: Draft): [YamlFile, z.ZodType][] {
  const pairs: [YamlFile, z.ZodType][] = [
    [files.job, formats.job],
    [files.house, formats.house],
    ...files.rooms.map((room) => [room, formats.room] as [YamlFile, z.ZodType]),
    [files.products, formats.products],
    [files.programme, formats.programme],
  ]
  if (files.money) pairs.push([files.money, formats.money])
  if (files.variations) pairs.push([files.variations, formats.variations])
  return pairs
}

/** What stands at a path, if it is a list; an empty list otherwise. */
export function listAt(yaml: YamlFile | null, path: readonly PropertyKey[]): unknown[] {
  const list = valueAt(yaml?.value, path)
  return Array.isArray(list) ? list : []
}

/** What stands under a key, if it is text. */
export function textAt(value: unknown, ...path: PropertyKey[]): string | undefined {
  const text = valueAt(value, path)
  return typeof text === "string" ? text : undefined
}
