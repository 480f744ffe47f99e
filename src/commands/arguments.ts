import { existsSync } from "node:fs"
import { parseArgs } from "node:util"
import { refForm } from "../intake/read-jobs.ts"
import { isIsoDate } from "../kernels/calendar/dates.ts"

/** Where a command's words go: one call, one line or more, without the last line feed. */
export type Writer = (text: string) => void

/** The two outlets of a command. */
export interface Outlets {
  out: Writer
  err: Writer
}

/** Exit status of a command, as the README lists them. */
export const exitStatus = { done: 0, findings: 1, wrongUsage: 2, ourFault: 3 } as const

/** A command called in a way it does not know; its message is for the one who typed it. */
export class WrongUsage extends Error {
  override name = "WrongUsage"
  readonly exitStatus = exitStatus.wrongUsage
}

/** One of several disjoint parts of the jobs: part `part` (from 1) of `of`. */
export interface Shard {
  part: number
  of: number
}

/** What `build` may be told. */
export interface BuildOptions {
  jobsDir: string
  outputDir: string
  only?: string
  shard: Shard
  debug: boolean
}

const buildUsage = `usage: npm run build -- [--jobs DIR] [--output DIR] [--only REF] [--shard I/N] [--debug]
  --jobs DIR     folder of the jobs (jobs)
  --output DIR   folder to write into (output)
  --only REF     this job alone
  --shard I/N    the I-th of N parts of the jobs, from 1
  --debug        say more where we are at fault`

/** Options of `build`; throws `WrongUsage`. */
export function buildOptions(args: readonly string[]): BuildOptions {
  const { values } = parsed(args, buildUsage, {
    jobs: { type: "string", default: "jobs" },
    output: { type: "string", default: "output" },
    only: { type: "string" },
    shard: { type: "string", default: "1/1" },
    debug: { type: "boolean", default: false },
  })
  return {
    jobsDir: folder(values.jobs, "--jobs", buildUsage),
    outputDir: folder(values.output, "--output", buildUsage),
    ...(values.only === undefined ? {} : { only: ref(values.only, buildUsage) }),
    shard: shardOf(String(values.shard)),
    debug: values.debug === true,
  }
}

/** What `check` may be told. */
export interface CheckOptions {
  jobsDir: string
  only?: string
}

const checkUsage = `usage: npm run check -- [--jobs DIR] [--only REF]
  --jobs DIR     folder of the jobs (jobs)
  --only REF     this job alone`

/** Options of `check`; throws `WrongUsage`. */
export function checkOptions(args: readonly string[]): CheckOptions {
  const { values } = parsed(args, checkUsage, {
    jobs: { type: "string", default: "jobs" },
    only: { type: "string" },
  })
  const jobsDir = folder(values.jobs, "--jobs", checkUsage)
  return values.only === undefined ? { jobsDir } : { jobsDir, only: ref(values.only, checkUsage) }
}

/** What `new` is told. */
export interface NewOptions {
  jobsDir: string
  ref: string
}

const newUsage = `usage: npm run new -- REF [--jobs DIR]
  REF            the new job's reference: small letters, digits and hyphens, beginning with a letter, 2 to 32 characters
  --jobs DIR     folder of the jobs (jobs)`

/** Options of `new`; throws `WrongUsage`. */
export function newOptions(args: readonly string[]): NewOptions {
  const { values, positionals } = parsed(args, newUsage, { jobs: { type: "string", default: "jobs" } }, true)
  const [given, ...more] = positionals
  if (given === undefined || more.length) throw new WrongUsage(`one REF is needed\n${newUsage}`)
  return { jobsDir: folder(values.jobs, "--jobs", newUsage), ref: ref(given, newUsage) }
}

const issueUsage = `usage: npm run issue -- REF --reason TEXT [--on DAY] [--by ROLE] [--jobs DIR]
  --reason TEXT  why it is issued, printed on the revision sheet
  --on DAY       the day it carries, YYYY-MM-DD (today)
  --by ROLE      who issues it (the one who prepared the job)
  --jobs DIR     folder of the jobs (jobs)`

/** What `issue` is told. */
export interface IssueOptions {
  jobsDir: string
  ref: string
  reason: string
  on?: string
  by?: string
}

/** Options of `issue`; throws `WrongUsage`. */
export function issueOptions(args: readonly string[]): IssueOptions {
  const { values, positionals } = parsed(
    args,
    issueUsage,
    {
      jobs: { type: "string", default: "jobs" },
      reason: { type: "string" },
      on: { type: "string" },
      by: { type: "string" },
    },
    true,
  )
  const [given, ...more] = positionals
  if (given === undefined || more.length) throw new WrongUsage(`one REF is needed\n${issueUsage}`)
  const reason = typeof values.reason === "string" ? values.reason.trim() : ""
  if (reason === "") throw new WrongUsage(`--reason is needed: why is it issued?\n${issueUsage}`)
  const on = typeof values.on === "string" ? values.on : undefined
  if (on !== undefined && !isIsoDate(on))
    throw new WrongUsage(`--on wants a day as YYYY-MM-DD, not "${on}"\n${issueUsage}`)
  const by = typeof values.by === "string" ? values.by : undefined
  return { jobsDir: folder(values.jobs, "--jobs", issueUsage), ref: ref(given, issueUsage), reason, on, by }
}

const reopenUsage = `usage: npm run reopen -- FILE
  FILE   an archive pack, archive.pdf`

/** Options of `reopen`; throws `WrongUsage`. */
export function reopenOptions(args: readonly string[]): { file: string } {
  const { positionals } = parsed(args, reopenUsage, {}, true)
  const [file, ...more] = positionals
  if (file === undefined || more.length) throw new WrongUsage(`one FILE is needed\n${reopenUsage}`)
  if (!existsSync(file)) throw new WrongUsage(`there is no file ${file}\n${reopenUsage}`)
  return { file }
}

/** Which of the refs, in their order, belong to a part: every N-th, so that large jobs side by side are spread. */
export function inShard<T>(all: readonly T[], { part, of }: Shard): T[] {
  return all.filter((_, index) => index % of === part - 1)
}

type OptionForms = Record<string, { type: "string" | "boolean"; default?: string | boolean }>

interface Values {
  values: Record<string, string | boolean | undefined>
  positionals: string[]
}

function parsed(
  args: readonly string[],
  usage: string,
  options: OptionForms,
  allowPositionals = false,
): Values {
  try {
    return parseArgs({ args: [...args], options, allowPositionals, strict: true }) as unknown as Values
  } catch (error) {
    throw new WrongUsage(`${(error as Error).message}\n${usage}`)
  }
}

function folder(value: unknown, option: string, usage: string): string {
  if (typeof value !== "string" || value.trim() === "")
    throw new WrongUsage(`${option} needs a folder\n${usage}`)
  return value
}

function ref(value: unknown, usage: string): string {
  if (typeof value !== "string" || !refForm.test(value))
    throw new WrongUsage(`'${String(value)}' is no job's reference\n${usage}`)
  return value
}

function shardOf(written: string): Shard {
  const [, part, of] = (/^(\d{1,6})\/(\d{1,6})$/.exec(written) ?? []).map(Number)
  if (part === undefined || of === undefined || part < 1 || part > of)
    throw new WrongUsage(
      `--shard needs I/N with I from 1 to N, such as 2/5; '${written}' is written\n${buildUsage}`,
    )
  return { part, of }
}
