import { cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { buildCommand } from "../../src/commands/build.ts"

/** The top of the project. */
export const top = new URL("../..", import.meta.url).pathname

/** The small demo job that is copied and changed; its reference. */
export const ref = "garden-room"

/** A replacement in one file of the jobs folder; fails loudly where the text to replace is not there. */
export interface Change {
  file: string
  find: string | RegExp
  put: string
}

/** An empty folder of this test's own, to be removed by the caller. */
export function ownFolder(): string {
  return mkdtempSync(join(tmpdir(), "storey-rod-whole-"))
}

/** Copies the small demo job and the catalogue into a folder, changed as told, with files of its own added. */
export function copyOfJob(
  folder: string,
  { changes = [], files = {} }: { changes?: readonly Change[]; files?: Readonly<Record<string, string>> },
): string {
  const jobs = join(folder, "jobs")
  mkdirSync(jobs, { recursive: true })
  for (const name of ["catalogue.yaml", ref])
    cpSync(join(top, "jobs", name), join(jobs, name), { recursive: true })
  for (const [file, text] of Object.entries(files)) writeFileSync(join(jobs, file), text)
  for (const { file, find, put } of changes) {
    const path = join(jobs, file)
    const before = readFileSync(path, "utf8")
    const after = before.replace(find, () => put)
    if (after === before) throw new Error(`${file} holds no ${find}`)
    writeFileSync(path, after)
  }
  return jobs
}

/** What a build said and how it ended. */
export interface BuildRun {
  status: number
  out: string
  err: string
}

/** What a test puts into the environment of a build, and belongs in no output. */
export const environmentSecret = "k3y-9f2c71d4e8"

/** Runs the build command in this process, with the browser named (`packaged` unless given). */
export async function build(jobsDir: string, outputDir: string, browser = "packaged"): Promise<BuildRun> {
  const out: string[] = []
  const err: string[] = []
  const status = await buildCommand(
    { jobsDir, outputDir, only: ref, shard: { part: 1, of: 1 }, debug: false },
    {
      terminal: { out: (text) => out.push(text), err: (text) => err.push(text), progress: () => {} },
      env: { ...process.env, STOREY_ROD_BROWSER: browser },
    },
  )
  return { status, out: out.join("\n"), err: err.join("\n") }
}
