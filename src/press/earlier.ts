import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { z } from "zod"
import { sha256 } from "./revisions/fingerprint.ts"

/** A PDF as its job's manifest remembers it. */
export interface MadeDocument {
  /** Below the output folder, without its ending. */
  path: string
  /** Hash of everything it was made of: HTML, typefaces, browser, the press itself, what is embedded. */
  madeOf: string
  pages: number
  /** Pages of the contents before its first sheet. */
  contents: number
  sheets: Record<string, number>
}

const office = z.strictObject({
  ref: z.string(),
  title: z.string(),
  site: z.string(),
  client: z.string(),
  revision: z.string(),
  on: z.string(),
  from: z.string(),
  to: z.string(),
  onText: z.string(),
  workText: z.string(),
  packs: z.array(z.strictObject({ file: z.string(), title: z.string() })),
  records: z.array(z.string()),
  find: z.string(),
})

const manifest = z.object({
  ref: z.string(),
  code: z.string(),
  browser: z.string().nullable(),
  madeOf: z.string(),
  office,
  findings: z.array(z.strictObject({ severity: z.string(), text: z.string() })),
  documents: z.array(
    z.strictObject({
      path: z.string(),
      madeOf: z.string(),
      pages: z.number(),
      contents: z.number(),
      sheets: z.record(z.string(), z.number()),
    }),
  ),
  measures: z.record(z.string(), z.strictObject({ of: z.string(), pages: z.number(), tight: z.boolean() })),
  files: z.array(z.object({ path: z.string(), sha256: z.string() })),
  sheets: z.array(z.object({ id: z.string() })),
})

/** What a job's manifest says of how it was made. */
export type EarlierManifest = z.infer<typeof manifest>

/** The manifest of a job in an output folder; null where there is none, or none of this form. */
export function earlierManifest(output: string, ref: string): EarlierManifest | null {
  const path = join(output, "print", ref, "manifest.json")
  if (!existsSync(path)) return null
  try {
    return manifest.parse(JSON.parse(readFileSync(path, "utf8")))
  } catch {
    return null
  }
}

/** Where a file of a manifest lies below the output folder. */
export function placeOf({ ref }: Pick<EarlierManifest, "ref">, path: string): string {
  return path.startsWith("site/") ? path : join("print", ref, path)
}

/**
 * Copies files of an earlier output, each held against its manifest first.
 * @returns false where one is missing or altered, or there is none; what was copied until then is left for the caller to write over
 */
export function copyHeld(
  earlier: EarlierManifest,
  { from, to, only = () => true }: { from: string; to: string; only?: (place: string) => boolean },
): boolean {
  let copied = 0
  for (const { path, sha256: sum } of earlier.files) {
    const place = placeOf(earlier, path)
    if (!only(place)) continue
    const source = join(from, place)
    if (!existsSync(source) || sha256(readFileSync(source)) !== sum) return false
    mkdirSync(dirname(join(to, place)), { recursive: true })
    copyFileSync(source, join(to, place))
    copied += 1
  }
  return copied > 0
}
