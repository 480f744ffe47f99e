import { existsSync, readdirSync, statSync } from "node:fs"
import { join } from "node:path"
import { z } from "zod"
import { hasErrors } from "../kernels/finding.ts"
import { duplicatesInCatalogue } from "./checks/duplicates.ts"
import { slipsIn } from "./checks/unit-slips.ts"
import { naturalOrder } from "./folder.ts"
import { formats, type TradeFormat } from "./formats.ts"
import type { ReadJob } from "./job.ts"
import { badRef, codeTaken, linkLeadsOut, noJobs, noSuchJob, type Saying } from "./messages.ts"
import { nearest } from "./nearest.ts"
import { readJob, type Shared } from "./read-job.ts"
import { checkedBy } from "./schema-findings.ts"
import { leadsOut, readText } from "./text-file.ts"
import { type LocatedFinding, type YamlFile, yamlFile } from "./yaml-file.ts"

/** Where to read and what to hold it against. */
export interface ReadJobsOptions {
  /** Folder with one folder for each job, and the catalogue they share. */
  jobsDir: string
  /** Only the job of this ref. */
  only?: string
  trades: readonly TradeFormat[]
  /** Schema of the records in `issues/*.yaml`; any record is taken without it. */
  issueRecord?: z.ZodType
}

/** Every job of a folder as read. */
export interface ReadJobs {
  /** In natural order of their refs. */
  jobs: ReadJob[]
  /** What belongs to no single job: the folder itself, the catalogue. */
  findings: LocatedFinding[]
}

/** Form of a job's reference, which is also its folder's name. */
export const refForm = /^[a-z][a-z0-9-]{1,31}$/

/**
 * Reads all jobs under a folder, or one of them. Nothing is thrown for what the author wrote: every mistake is a finding with
 * file, line and column, and a job with an error among its findings has no `job`.
 */
export function readJobs({ jobsDir, only, trades, issueRecord }: ReadJobsOptions): ReadJobs {
  if (!existsSync(jobsDir)) return { jobs: [], findings: [ofFolder(".", noJobs(jobsDir))] }
  const refs = folderNames(jobsDir)
  const asked = only === undefined ? refs : refs.filter((ref) => ref === only)
  if (only !== undefined && !asked.length)
    return { jobs: [], findings: [ofFolder(".", noSuchJob(only, nearest(only, refs)))] }
  const { findings, ...shared } = readShared(jobsDir, trades, issueRecord)
  const refused = asked.flatMap((ref) => refusal(jobsDir, ref))
  const isRefused = new Set(refused.map((finding) => finding.at.file))
  const jobs = asked.filter((ref) => !isRefused.has(ref)).map((ref) => readJob(join(jobsDir, ref), shared))
  return { jobs: withOwnCodes(jobs), findings: [...findings, ...refused] }
}

function folderNames(jobsDir: string): string[] {
  return readdirSync(jobsDir)
    .filter((name) => !/^[._]/.test(name))
    .filter((name) => statSync(join(jobsDir, name), { throwIfNoEntry: false })?.isDirectory())
    .toSorted(naturalOrder)
}

function refusal(jobsDir: string, ref: string): LocatedFinding[] {
  if (!refForm.test(ref)) return [ofFolder(ref, badRef(ref))]
  return leadsOut(join(jobsDir, ref), jobsDir) ? [ofFolder(ref, linkLeadsOut())] : []
}

function ofFolder(file: string, saying: Saying): LocatedFinding {
  return { ...saying, at: { file, path: [] }, place: { file, line: 1, column: 1 } }
}

function readShared(
  jobsDir: string,
  trades: readonly TradeFormat[],
  issueRecord: z.ZodType = z.unknown(),
): Shared & { findings: LocatedFinding[] } {
  const path = join(jobsDir, "catalogue.yaml")
  const catalogue = existsSync(path)
    ? yamlFile("../catalogue.yaml", "catalogue.yaml", readText(path, jobsDir))
    : null
  const schemas = formats(trades)
  const { data, findings } = checkedCatalogue(catalogue, schemas.catalogue)
  return {
    trades,
    formats: schemas,
    catalogue,
    catalogueProducts: data?.products ?? [],
    catalogueIsSound: !hasErrors(findings),
    issueRecord,
    findings,
  }
}

function checkedCatalogue<T>(
  catalogue: YamlFile | null,
  schema: z.ZodType<T>,
): { data?: T; findings: LocatedFinding[] } {
  if (!catalogue?.readable) return { findings: catalogue?.findings ?? [] }
  const { data, findings } = checkedBy(catalogue, schema)
  const more = [...duplicatesInCatalogue(catalogue), ...slipsIn(catalogue, schema)]
  return { data, findings: [...catalogue.findings, ...findings, ...more] }
}

/** Jobs whose code is that of an earlier one get a finding and are no longer whole. */
function withOwnCodes(jobs: ReadJob[]): ReadJob[] {
  const owners = new Map<string, string>()
  return jobs.map((read) => {
    if (!read.job) return read
    const { code } = read.job.job
    const owner = owners.get(code)
    if (owner === undefined) {
      owners.set(code, read.ref)
      return read
    }
    const at = { file: "job.yaml", path: ["code"] }
    const { job: _, ...rest } = read
    const finding = { ...codeTaken(code, owner), at, place: read.locator()(at) }
    return { ...rest, findings: [...read.findings, finding] }
  })
}
