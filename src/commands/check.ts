import { findingText } from "../intake/finding-text.ts"
import type { TradeFormat } from "../intake/formats.ts"
import type { Job, ReadJob } from "../intake/job.ts"
import { readJobs } from "../intake/read-jobs.ts"
import type { LocatedFinding } from "../intake/yaml-file.ts"
import { type Finding, hasErrors } from "../kernels/finding.ts"
import { type CheckOptions, checkOptions, exitStatus, type Outlets, WrongUsage } from "./arguments.ts"

/** What `check` needs besides its arguments. */
export interface CheckNeeds extends Outlets {
  trades: readonly TradeFormat[]
  /** What later stages find in a job that intake took: outlines that do not close, and the like. */
  examine?(job: Job): readonly Finding[] | Promise<readonly Finding[]>
}

/**
 * `npm run check`: reads and validates the jobs, writes nothing. Every finding is a line `file:line:column: message` on the error
 * outlet, with the file as it is reached from the folder of jobs; a last line on the other outlet sums up.
 * @returns exit status: 0 no error, 1 any error, 2 wrong usage
 */
export async function checkCommand(args: readonly string[], needs: CheckNeeds): Promise<number> {
  let options: CheckOptions
  try {
    options = checkOptions(args)
  } catch (error) {
    if (!(error instanceof WrongUsage)) throw error
    needs.err(error.message)
    return error.exitStatus
  }
  const { jobs, findings } = readJobs({ ...options, trades: needs.trades })
  const all = [...findings]
  for (const read of jobs) all.push(...read.findings, ...(await examined(read, needs)))
  for (const finding of all) needs.err(findingText(finding))
  needs.out(summary(jobs.length, all))
  return hasErrors(all) ? exitStatus.findings : exitStatus.done
}

async function examined(read: ReadJob, { examine }: CheckNeeds): Promise<LocatedFinding[]> {
  if (!read.job || !examine) return []
  const findings = await examine(read.job)
  const locate = read.locator()
  return findings.map((finding) => ({ ...finding, place: locate(finding.at) }))
}

function summary(jobs: number, findings: readonly Finding[]): string {
  const count = (severity: Finding["severity"]) =>
    findings.filter((finding) => finding.severity === severity).length
  const counted = (number: number, word: string) => `${number} ${word}${number === 1 ? "" : "s"}`
  return `${counted(jobs, "job")} read: ${counted(count("error"), "error")}, ${counted(count("warning"), "warning")}, ${counted(count("note"), "note")}`
}
