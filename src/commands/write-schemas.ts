import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import type { TradeFormat } from "../intake/formats.ts"
import { jsonSchemas, schemaText } from "../intake/json-schemas.ts"

/** Folder of the schemas within the folder of jobs, as the first line of each job file names it. */
export const schemaFolder = ".schema"

/** Writes `<jobsDir>/.schema/<name>.schema.json` for every kind of file, so that editors complete and explain; returns the paths. */
export function writeSchemas(jobsDir: string, trades: readonly TradeFormat[]): string[] {
  const dir = join(jobsDir, schemaFolder)
  mkdirSync(dir, { recursive: true })
  return Object.entries(jsonSchemas(trades)).map(([name, schema]) => {
    const path = join(dir, `${name}.schema.json`)
    writeFileSync(path, schemaText(schema))
    return path
  })
}
