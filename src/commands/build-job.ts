import { copyFileSync, rmSync } from "node:fs"
import { join } from "node:path"
import { findingText } from "../intake/finding-text.ts"
import type { ReadJob } from "../intake/job.ts"
import type { LocatedFinding } from "../intake/yaml-file.ts"
import type { Press } from "../press/browser/launch.ts"
import { copyHeld, type EarlierManifest } from "../press/earlier.ts"
import type { OfficeRow } from "../press/office-list.ts"
import { type EarlierDocuments, type Printing, printDocuments } from "../press/print-documents.ts"
import type { ProgramHash } from "../press/program-hash.ts"
import { archiveFiles } from "../press/records/archive-files.ts"
import { recordFiles } from "../press/records/record-files.ts"
import { writeManifest, writeRecords } from "../press/records/write-records.ts"
import { sha256 } from "../press/revisions/fingerprint.ts"
import type { SetJob } from "../press/set-job.ts"
import { rowOf, type SiteData, siteData } from "../press/site-data.ts"
import { writeSite } from "../press/write-site.ts"
import { sourcesOf } from "./prepare.ts"
import type { stopwatch, Terminal } from "./terminal.ts"

/** A job as it lies in the staging folder, with what the lists and the summary say of it. */
export interface BuiltJob {
  ref: string
  office: OfficeRow
  findings: readonly { severity: string; text: string }[]
  sheets: number
  documents: number
  boundPages: number
  /** True if nothing that goes into it has changed since the last build. */
  asBefore: boolean
}

/** What a job is built with. */
export interface JobTask {
  press: Press | null
  program: ProgramHash
  /** What the last output says of the job, if it holds it. */
  earlier: EarlierManifest | null
  staging: string
  output: string
  findings: readonly LocatedFinding[]
  terminal: Terminal
  watch: ReturnType<typeof stopwatch>
}

/** Writes, prints and records one job that has been worked out. */
export async function buildJob(job: SetJob, read: ReadJob, task: JobTask): Promise<BuiltJob> {
  const { staging, program, press, watch } = task
  const site = siteData([job])
  await writeSite({ site: async () => site, staging })
  watch.lap("site")
  const records = recordFiles(job)
  writeRecords(staging, job.ref, records)
  const { printed, measures } = press
    ? await printJob(job, site, { ...task, press, read })
    : { printed: [], measures: new Map() }
  rmSync(join(staging, "press", "print", job.ref), { recursive: true, force: true })
  rmSync(join(staging, "press", "site"), { recursive: true, force: true })
  watch.lap("printing")
  const findings = task.findings.map((each) => ({ severity: each.severity, text: findingText(each) }))
  writeManifest(staging, job, {
    browser: press?.version ?? null,
    pages: site.all,
    printed,
    measures: measures.get(job.ref) ?? new Map(),
    // A print that gave a warning is made again, so that the warning is given again.
    madeOf: printed.every(({ made }) => made !== null) ? madeOf(read, program) : "",
    findings,
  })
  const bound = printed.find((each) => each.document.pack.id === "job")
  return {
    ref: job.ref,
    office: rowOf(job),
    findings,
    sheets: job.sheets.length,
    documents: printed.length,
    boundPages: bound?.pages ?? 0,
    asBefore: false,
  }
}

/**
 * A job taken over whole from the last output: its files, the program and the browser are the same, and every file of it
 * is as its manifest says.
 * @returns null where it must be built
 */
export function takenOver(
  read: ReadJob,
  press: Press | null,
  {
    earlier,
    program,
    output,
    staging,
  }: Pick<JobTask, "program" | "output" | "staging"> & { earlier: EarlierManifest },
): BuiltJob | null {
  if (earlier.madeOf !== madeOf(read, program) || earlier.browser !== (press?.version ?? null)) return null
  if (!copyHeld(earlier, { from: output, to: staging })) {
    for (const own of [join("print", read.ref), join("site", earlier.code)])
      rmSync(join(staging, own), { recursive: true, force: true })
    return null
  }
  const own = join("print", read.ref, "manifest.json")
  copyFileSync(join(output, own), join(staging, own))
  return {
    ref: read.ref,
    office: earlier.office as OfficeRow,
    findings: earlier.findings,
    sheets: earlier.sheets.length,
    documents: earlier.documents.length,
    boundPages: earlier.documents.find(({ path }) => path === `print/${read.ref}/job`)?.pages ?? 0,
    asBefore: true,
  }
}

/** Hash of everything that goes into a job: the program, and each file it was read from. */
function madeOf(read: ReadJob, program: ProgramHash): string {
  return sha256(
    JSON.stringify([program.whole, read.ref, read.sources.map(({ file, text }) => [file, sha256(text)])]),
  )
}

async function printJob(
  job: SetJob,
  site: SiteData,
  { press, read, staging, output, earlier, program, terminal }: JobTask & { press: Press; read: ReadJob },
): Promise<Printing> {
  const archive = archiveFiles(job, sourcesOf(read), recordFiles(job))
  const printing = await printDocuments(press, site.documents, {
    staging,
    attachments: new Map([[`print/${job.ref}/archive`, archive]]),
    pressHash: program.press,
    earlier: earlier ? documentsOf(earlier, { output, staging }) : undefined,
    progress: (done, of) => terminal.progress(`${job.ref}: ${done} of ${of} documents`),
  })
  for (const warning of printing.warnings) terminal.err(`warning: ${warning}`)
  return printing
}

function documentsOf(
  earlier: EarlierManifest,
  { output, staging }: { output: string; staging: string },
): EarlierDocuments {
  const made = new Map(earlier.documents.map((each) => [each.path, each]))
  return {
    made: (path) => made.get(path),
    measures: new Map(Object.entries(earlier.measures)),
    fetch: (file) => copyHeld(earlier, { from: output, to: staging, only: (place) => place === file }),
  }
}
