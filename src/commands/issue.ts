import { existsSync, linkSync, mkdirSync, rmSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { stringify } from "yaml"
import { findingText } from "../intake/finding-text.ts"
import { hasErrors } from "../kernels/finding.ts"
import { type IssuedSheet, type IssueRecord, nextLetter } from "../press/revisions/record.ts"
import type { RevisedSheet, SetJob } from "../press/set-job.ts"
import { issuedProgramme } from "../programme/compare.ts"
import { exitStatus, issueOptions } from "./arguments.ts"
import { prepareJobs } from "./prepare.ts"
import type { Terminal } from "./terminal.ts"

/** What an issue needs besides its arguments. */
export interface IssueNeeds {
  terminal: Terminal
  /** The day of the issue unless one is given, YYYY-MM-DD. */
  today: string
}

/**
 * `npm run issue -- REF --reason TEXT`: freezes a revision. Writes `issues/<letter>.yaml` into the job's folder, once and for good:
 * the day, by whom, why, and a fingerprint of every sheet. Nothing is written where no sheet has changed since the last issue.
 */
export async function issueCommand(
  args: readonly string[],
  { terminal, today }: IssueNeeds,
): Promise<number> {
  const { jobsDir, ref, reason, on = today, by } = issueOptions(args)
  const { jobs, findings } = await prepareJobs({ jobsDir, only: ref })
  const job = jobs[0]
  if (!job || hasErrors(findings)) {
    for (const finding of findings) if (finding.severity === "error") terminal.err(findingText(finding))
    terminal.err("Nothing was issued: mend the errors above first.")
    return exitStatus.findings
  }
  const changed = job.sheets.filter(isChanged)
  if (changed.length === 0 && goneSinceLast(job).length === 0) {
    terminal.out(`Nothing was issued: no sheet has changed since revision ${job.revision.letter}.`)
    return exitStatus.done
  }
  const record: IssueRecord = {
    revision: nextLetter(job.revision.letter === "0" ? undefined : job.revision.letter),
    on,
    by: by ?? job.result.job.prepared.by,
    reason,
    programme: issuedProgramme(job.result.programme),
    sheets: job.sheets.filter((sheet) => sheet.kind !== "revision-log").map(issuedSheet),
  }
  const folder = join(jobsDir, ref, "issues")
  mkdirSync(folder, { recursive: true })
  const file = join(folder, `${record.revision.toLowerCase()}.yaml`)
  if (!writtenOnce(file, recordText(record))) {
    terminal.err(
      `${file} is there already and is never changed. Nothing was issued; build, look at it, and issue again.`,
    )
    return exitStatus.findings
  }
  terminal.out(
    `Revision ${record.revision} is issued: ${changed.length} of ${record.sheets.length} sheets are new or changed. ${file}`,
  )
  terminal.out("Build again; then commit the job folder, issue record and all.")
  return exitStatus.done
}

/** A record appears whole or not at all, and never in place of another. False where there is one. */
function writtenOnce(file: string, text: string): boolean {
  const draft = `${file}.draft-${process.pid}`
  writeFileSync(draft, text)
  try {
    linkSync(draft, file)
    return true
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === "EEXIST") return false
    // A disk without links.
    if (existsSync(file)) return false
    writeFileSync(file, text, { flag: "wx" })
    return true
  } finally {
    rmSync(draft, { force: true })
  }
}

function isChanged(sheet: RevisedSheet): boolean {
  return sheet.kind !== "revision-log" && sheet.revision.letter === "0"
}

/** Sheets that the last issue had and the job has no longer. */
function goneSinceLast({ gone, revision }: SetJob): string[] {
  return gone
    .filter((each) => each.history.issued.some((issued) => issued.revision.letter === revision.letter))
    .map((each) => each.number)
}

function issuedSheet(sheet: RevisedSheet): IssuedSheet {
  const { number, title, hash, parts } = sheet.fingerprint
  return isChanged(sheet) ? { number, title, hash, parts } : { number, title, hash }
}

function recordText(record: IssueRecord): string {
  return `# Written by the issue command; never changed by hand.\n${stringify(record, { lineWidth: 0 })}`
}
