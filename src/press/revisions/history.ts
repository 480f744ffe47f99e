import type { Block } from "../../kernels/paper.ts"
import type { Revision } from "../addresses.ts"
import { type Fingerprint, rowHash, uniqueNames } from "./fingerprint.ts"
import { type IssuedPart, type IssuedSheet, type IssueRecord, letterRank } from "./record.ts"

/** A sheet's life through the issues. */
export interface SheetHistory {
  /** What the sheet as it stands now carries: the letter of the issue it last changed with, or a draft. */
  revision: Revision
  /** Every letter it was ever issued under, oldest first, with the day and what changed with it. */
  issued: IssuedRevision[]
  /** The parts it had before what it shows now, to tell what changed; none where it is new. */
  before: IssuedPart[] | null
}

/** One letter a sheet was issued under. */
export interface IssuedRevision {
  revision: Revision
  /** Parts that differ from the letter before; empty for the first. */
  changed: string[]
}

/** Issue records in order of their letters. */
export function inOrderOfIssue(records: readonly IssueRecord[]): IssueRecord[] {
  return [...records].sort((a, b) => letterRank(a.revision) - letterRank(b.revision))
}

/**
 * A sheet's history.
 * @param records in order of issue
 * @param now     its fingerprint today, or null if the job has it no longer
 * @param draft   what unissued paper carries
 */
export function sheetHistory(
  records: readonly IssueRecord[],
  number: string,
  { now, draft }: { now: Fingerprint | null; draft: Revision },
): SheetHistory {
  const issued: (IssuedRevision & { sheet: IssuedSheet; parts: IssuedPart[] | null })[] = []
  for (const record of records) {
    const sheet = record.sheets.find((each) => each.number === number)
    const last = issued[issued.length - 1]
    if (!sheet || sheet.hash === last?.sheet.hash) continue
    const parts = sheet.parts ?? last?.parts ?? null
    issued.push({
      revision: revisionFrom(record),
      changed: last ? changedParts(last.parts, parts) : [],
      sheet,
      parts,
    })
  }
  const last = issued[issued.length - 1]
  const asIssued = now !== null && last !== undefined && last.sheet.hash === now.hash
  const since = last ? { ...draft, text: `draft, changed since ${last.revision.letter}` } : draft
  return {
    revision: asIssued ? last.revision : since,
    issued: issued.map(({ revision, changed }) => ({ revision, changed })),
    before: asIssued ? (issued[issued.length - 2]?.parts ?? null) : (last?.parts ?? null),
  }
}

function revisionFrom(record: IssueRecord): Revision {
  return { letter: record.revision, text: record.revision, on: record.on, by: record.by }
}

/** Names of the parts that are new or differ; nothing is said of parts that went, but that one did. */
export function changedParts(
  before: readonly IssuedPart[] | null,
  after: readonly IssuedPart[] | null,
): string[] {
  if (!before || !after) return []
  const old = new Map(before.map((part) => [part.name, part.hash]))
  const changed = after.filter((part) => old.get(part.name) !== part.hash).map((part) => part.name)
  const names = new Set(after.map((part) => part.name))
  const gone = before.filter((part) => !names.has(part.name)).map((part) => `${part.name} (taken out)`)
  return [...changed, ...gone]
}

/** The blocks of a sheet with every row marked that its last revision did not have in the same table. */
export function withChangeMarks(blocks: readonly Block[], before: readonly IssuedPart[] | null): Block[] {
  if (!before) return [...blocks]
  const names = uniqueNames(blocks)
  return blocks.map((block, index) => {
    if (block.kind !== "table") return block
    const old = new Set(before.find((part) => part.name === names[index])?.rows ?? [])
    return {
      ...block,
      rows: block.rows.map((row) => (old.has(rowHash(row.cells)) ? row : { ...row, changed: true })),
    }
  })
}
