import { workOut } from "../build.ts"
import type { Job, ReadJob } from "../intake/job.ts"
import { readJobs } from "../intake/read-jobs.ts"
import type { LocatedFinding } from "../intake/yaml-file.ts"
import { hasErrors } from "../kernels/finding.ts"
import type { Attachment } from "../press/pdf/attachments.ts"
import { type IssueRecord, issueRecord } from "../press/revisions/record.ts"
import { type SetJob, setJob } from "../press/set-job.ts"
import { trades } from "../trades/index.ts"
import { inShard, type Shard } from "./arguments.ts"

/** Which jobs to read. */
export interface JobsWanted {
  jobsDir: string
  only?: string
  /** The I-th of N disjoint parts of the jobs, from 1. */
  shard?: Shard
}

/** Jobs read, worked out and set, with every finding in its place. */
export interface PreparedJobs {
  jobs: SetJob[]
  /** What each job was written in, for the archive: by ref. */
  sources: ReadonlyMap<string, Attachment[]>
  findings: LocatedFinding[]
}

/** Reads the jobs, works each out once, and sets its sheets. A job with an error among its findings is not set. */
export async function prepareJobs({ jobsDir, only, shard }: JobsWanted): Promise<PreparedJobs> {
  const read = readJobs({ jobsDir, only, trades, issueRecord })
  const mine = shard ? inShard(read.jobs, shard) : read.jobs
  const jobs: SetJob[] = []
  const findings = [...read.findings]
  for (const each of mine) {
    findings.push(...each.findings)
    if (!each.job) continue
    const result = await workOut(each.job, trades)
    findings.push(...result.findings.map((finding) => ({ ...finding, place: each.locate(finding.at) })))
    if (!hasErrors(result.findings)) jobs.push(setJob(each.ref, result, issuesOf(each.job)))
  }
  return { jobs, findings, sources: new Map(mine.map((each) => [each.ref, sourcesOf(each)])) }
}

/** The issue records of a job; intake has held them against the schema. */
export function issuesOf(job: Job): IssueRecord[] {
  return job.issues.map(({ record }) => record as IssueRecord)
}

function sourcesOf({ sources }: ReadJob): Attachment[] {
  return sources.map(({ file, text }) => ({
    name: `source/${file.replace(/^\.\.\//, "")}`,
    bytes: new TextEncoder().encode(text),
    mime: "application/yaml",
    relationship: "Source",
    description: `What the job was made from: ${file}`,
  }))
}
