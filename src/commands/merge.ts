import { cpSync, existsSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { join } from "node:path"
import { parseArgs } from "node:util"
import type { OfficeRow } from "../press/office-list.ts"
import { dropStaging, filesBelow, healOutput, openStaging, replaceOutput } from "../press/output-tree.ts"
import { sha256 } from "../press/revisions/fingerprint.ts"
import { siteData } from "../press/site-data.ts"
import { writeSite } from "../press/write-site.ts"
import { exitStatus, WrongUsage } from "./arguments.ts"
import type { Terminal } from "./terminal.ts"

const usage = `usage: npm run merge -- DIR... [--output DIR]
  DIR...         outputs of all parts of the jobs, each built with --shard I/N
  --output DIR   folder to write into (output)`

/** One job as a part's output holds it. */
interface BuiltJob {
  ref: string
  code: string
  folder: string
  office: OfficeRow
}

/**
 * `npm run merge`: joins the outputs of all parts into one tree, the same as if the jobs had been built in one go.
 * Every file is held against its job's manifest first; with one that is missing or altered, nothing is written.
 */
export async function mergeCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const { parts, output } = told(args)
  const jobs = parts.flatMap(builtJobs).sort((a, b) => (a.ref < b.ref ? -1 : 1))
  const wrong = [...twice(jobs), ...jobs.flatMap(altered)]
  for (const each of wrong) terminal.err(each)
  if (wrong.length > 0) {
    terminal.err("Nothing was joined. The last output stands as it was.")
    return exitStatus.findings
  }
  const staging = openStaging(output)
  try {
    const lists = siteData(
      [],
      jobs.map(({ office }) => office),
    )
    await writeSite({ site: async () => lists, staging })
    rmSync(join(staging, "press"), { recursive: true, force: true })
    for (const { ref, code, folder } of jobs) {
      for (const own of [join("print", ref), join("site", code)])
        cpSync(join(folder, own), join(staging, own), { recursive: true })
    }
    replaceOutput(output, staging)
  } catch (error) {
    dropStaging(staging)
    throw error
  }
  terminal.out(`${jobs.length} jobs of ${parts.length} parts: ${join(output, "print", "index.html")}`)
  return exitStatus.done
}

function told(args: readonly string[]): { parts: string[]; output: string } {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { output: { type: "string", default: "output" }, debug: { type: "boolean" } },
    })
    if (positionals.length === 0) throw new Error("name the folders to join")
    for (const folder of [...positionals, values.output]) healOutput(folder)
    const missing = positionals.find((folder) => !existsSync(join(folder, "print", "index.html")))
    if (missing !== undefined)
      throw new Error(`${missing} holds no output: there is no print/index.html in it`)
    return { parts: positionals, output: values.output }
  } catch (error) {
    throw new WrongUsage(`${error instanceof Error ? error.message : error}\n${usage}`)
  }
}

function builtJobs(folder: string): BuiltJob[] {
  const print = join(folder, "print")
  return readdirSync(print, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(print, entry.name, "manifest.json")))
    .map(({ name }) => {
      const { code, office } = manifestOf(folder, name)
      return { ref: name, code, folder, office }
    })
}

interface Manifest {
  code: string
  office: OfficeRow
  files: { path: string; sha256: string }[]
}

function manifestOf(folder: string, ref: string): Manifest {
  const path = join(folder, "print", ref, "manifest.json")
  try {
    return JSON.parse(readFileSync(path, "utf8"))
  } catch {
    throw new WrongUsage(`${path} cannot be read: build that part again`)
  }
}

function twice(jobs: readonly BuiltJob[]): string[] {
  return jobs.flatMap((job, index) => {
    const before = jobs[index - 1]
    return before?.ref === job.ref
      ? [
          `${job.ref} is in ${before.folder} and in ${job.folder}: the parts must not overlap; build each with its own --shard I/N`,
        ]
      : []
  })
}

/** What differs from a job's manifest, in words. */
function altered({ ref, code, folder }: BuiltJob): string[] {
  const { files } = manifestOf(folder, ref)
  const held = new Map([
    ...filesBelow(join(folder, "print", ref)).map(({ path, bytes }) => [path, bytes] as const),
    ...filesBelow(join(folder, "site", code)).map(
      ({ path, bytes }) => [`site/${code}/${path}`, bytes] as const,
    ),
  ])
  const said = (path: string, what: string) =>
    `${join(folder, "print", ref)}: ${path} ${what}; build that part again`
  return files.flatMap(({ path, sha256: sum }) => {
    const bytes = held.get(path)
    if (!bytes) return [said(path, "is missing")]
    return sha256(bytes) === sum ? [] : [said(path, "is not what was built")]
  })
}
