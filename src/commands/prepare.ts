import { workOut } from "../build.ts"
import type { Job, ReadJob } from "../intake/job.ts"
import { type ReadJobs, readJobs } from "../intake/read-jobs.ts"
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
export async function prepareJobs(wanted: JobsWanted): Promise<PreparedJobs> {
  const read = readWanted(wanted)
  const jobs: SetJob[] = []
  const findings = [...read.findings]
  for (const each of read.jobs) {
    const worked = await workOutJob(each)
    findings.push(...worked.findings)
    if (worked.job) jobs.push(worked.job)
  }
  return { jobs, findings, sources: new Map(read.jobs.map((each) => [each.ref, sourcesOf(each)])) }
}

/** Reads the jobs wanted; what belongs to one job is among its own findings. */
export function readWanted({ jobsDir, only, shard }: JobsWanted): ReadJobs {
  const { jobs, findings } = readJobs({ jobsDir, only, trades, issueRecord })
  return { jobs: shard ? inShard(jobs, shard) : jobs, findings }
}

/** One job worked out and set, or null with an error among its findings; every finding in its place. */
export interface WorkedOut {
  job: SetJob | null
  findings: LocatedFinding[]
}

/** Works one job out and sets its sheets. */
export async function workOutJob(read: ReadJob): Promise<WorkedOut> {
  if (!read.job) return { job: null, findings: read.findings }
  const result = await workOut(read.job, trades)
  const locate = read.locator()
  const own = result.findings.map((finding) => ({ ...finding, place: locate(finding.at) }))
  const findings = [...read.findings, ...own]
  return { job: hasErrors(own) ? null : setJob(read.ref, result, issuesOf(read.job)), findings }
}

/** The issue records of a job; intake has held them against the schema. */
export function issuesOf(job: Job): IssueRecord[] {
  return job.issues.map(({ record }) => record as IssueRecord)
}

/** What a job was written in, for its archive. */
export function sourcesOf({ sources }: ReadJob): Attachment[] {
  return sources.map(({ file, text }) => ({
    name: `source/${file.replace(/^\.\.\//, "")}`,
    bytes: new TextEncoder().encode(text),
    mime: "application/yaml",
    relationship: "Source",
    description: `What the job was made from: ${file}`,
  }))
}
