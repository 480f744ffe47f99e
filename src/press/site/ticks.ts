import type { Block } from "../../kernels/paper.ts"
import { sha256 } from "../revisions/fingerprint.ts"

/** A box to tick on a hosted page: its key, and what a tick in it says when it is carried out as text. */
export interface Tick {
  key: string
  says: string
}

/** Signs of a key: enough to tell the lines of a sheet apart. */
const keyLength = 12

/**
 * The boxes of a block, one a line (null where a line has none). A key is made of what the line says, so that a tick
 * stays with its line through new revisions and is lost when the line changes; days and times apart, since work that only
 * moves in time stays done.
 */
export function ticksOf(block: Block): (Tick | null)[] {
  if (block.kind === "checks")
    return keyed(
      block.caption,
      block.items.map(({ text }) => text),
    )
  if (block.kind !== "table" || !block.columns.some(({ as }) => as === "tick")) return []
  const boxes = block.columns.map(({ as }) => as === "tick")
  const said = block.rows.map((row) => {
    const open = row.as !== "hold" && row.cells.some((cell, index) => boxes[index] && cell === "")
    return open
      ? row.cells
          .map((cell) => cell.trim())
          .filter(Boolean)
          .join(", ") || null
      : null
  })
  return keyed(block.caption, said)
}

/** Days and times as sheets print them. */
const moments =
  /\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} [A-Z][a-z]{2}(?: \d{4})?(?: \d{2}:\d{2})?|\b\d{2}:\d{2}\b/g

function keyed(caption: string, lines: readonly (string | null)[]): (Tick | null)[] {
  const seen = new Map<string, number>()
  return lines.map((says) => {
    if (says === null) return null
    const lasting = says.replace(moments, "")
    const count = seen.get(lasting) ?? 0
    seen.set(lasting, count + 1)
    const key = sha256(JSON.stringify([caption, lasting, count])).slice(0, keyLength)
    return { key, says: `${caption}: ${says}` }
  })
}
