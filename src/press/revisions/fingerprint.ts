import { createHash } from "node:crypto"
import type { Block } from "../../kernels/paper.ts"
import type { Sheet } from "../../sheets/numbers.ts"
import { plain } from "../records/plain.ts"
import type { IssuedPart } from "./record.ts"

/** Signs of a short fingerprint: enough to tell the rows of a sheet apart. */
const shortLength = 12

/** What a reader of a sheet sees, as fingerprints: of the whole, and of each part of it. */
export interface Fingerprint {
  number: string
  title: string
  /** Changes when and only when something shown on the sheet changes (its revision and page numbers apart). */
  hash: string
  parts: IssuedPart[]
}

/** sha256 of bytes or text, as hexadecimal text. */
export function sha256(content: Uint8Array | string): string {
  return createHash("sha256").update(content).digest("hex")
}

/** A value's fingerprint, the same whatever the order of its keys. */
function hashOf(value: unknown): string {
  return sha256(JSON.stringify(plain(value)) ?? "")
}

/**
 * The fingerprint of a sheet.
 * @param place the room or job at its head
 * @param rests the rulebook entries at its foot, in words
 */
export function fingerprintOf(sheet: Sheet, place: string, rests: readonly string[]): Fingerprint {
  const { number, title, purpose, datum, blocks } = sheet
  const named = uniqueNames(blocks)
  const parts = blocks.map((block, index): IssuedPart => {
    const part = { name: named[index]!, hash: hashOf(block).slice(0, shortLength) }
    return block.kind === "table" ? { ...part, rows: block.rows.map((row) => rowHash(row.cells)) } : part
  })
  return { number, title, hash: hashOf({ title, purpose, datum, blocks, place, rests }), parts }
}

/** The fingerprint of one row of a table. */
export function rowHash(cells: readonly string[]): string {
  return hashOf(cells).slice(0, shortLength)
}

/** A name for each part of a sheet, as its reader would call it; the same name twice is counted. */
export function uniqueNames(blocks: readonly Block[]): string[] {
  const seen = new Map<string, number>()
  return blocks.map((block) => {
    const name = nameOf(block)
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return count === 1 ? name : `${name} (${count})`
  })
}

const kindNames: Partial<Record<Block["kind"], string>> = {
  figures: "figures at the head",
  text: "text",
  cautions: "cautions",
  sign: "signatures",
  list: "list",
}

function nameOf(block: Block): string {
  if (block.kind === "drawing") return `drawing: ${block.drawing.title}`
  if (block.kind === "heading") return block.text
  const caption = "caption" in block ? block.caption : undefined
  return caption ?? kindNames[block.kind] ?? block.kind
}
