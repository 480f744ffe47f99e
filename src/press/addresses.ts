import type { JobFile } from "../intake/schema/job.ts"
import type { Sheet } from "../sheets/numbers.ts"

/** Revision of a job as it stands: its letter, or 0 before the first issue, the day it carries and who stands for it. */
export interface Revision {
  letter: string
  /** As printed: `A`, or `draft, not issued`. */
  text: string
  on: string
  by: string
}

/** The revision a job is built at: unissued paper carries the day it was prepared on. */
export function revisionOf(job: JobFile): Revision {
  return { letter: "0", text: "draft, not issued", on: job.prepared.on, by: job.prepared.by }
}

/** Address of the hosted copy that a sheet's QR opens: it says whether this paper is current. */
export function revisionAddress(job: JobFile, sheet: Pick<Sheet, "path">, revision: Revision): string {
  return `${job.hosted}/${job.code}/${sheet.path}/${revision.letter.toLowerCase()}/`
}
