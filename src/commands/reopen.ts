import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { type ReadAttachment, readAttachments } from "../press/pdf/attachments.ts"
import { alteredFiles, sumsName } from "../press/records/archive-files.ts"
import { jobJson } from "../press/records/job-json.ts"
import { exitStatus, reopenOptions } from "./arguments.ts"
import { prepareJobs } from "./prepare.ts"
import type { Terminal } from "./terminal.ts"

/** Names of embedded files that may be written into a folder: no way out of it, nothing hidden. */
const harmlessName =
  /^[A-Za-z0-9][A-Za-z0-9_-]*(\.[A-Za-z0-9_-]+)*(\/[A-Za-z0-9][A-Za-z0-9_-]*(\.[A-Za-z0-9_-]+)*)*$/

/**
 * `npm run reopen -- FILE`: from an archive PDF alone. Takes out the job's embedded files, names any that was altered, works the
 * job out again in a folder of its own and says whether the results are the same.
 * @returns exit status: 0 same and nothing altered, 1 otherwise
 */
export async function reopenCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const { file } = reopenOptions(args)
  const files = await readAttachments(readFileSync(file))
  const kept = files.find((each) => each.name === "job.json")
  const ref = kept ? refIn(kept) : null
  if (!kept || !ref || !files.some((each) => each.name === sumsName)) {
    terminal.err(`${file} holds no job: it is not an archive pack, or its files were taken out.`)
    return exitStatus.findings
  }
  const altered = alteredFiles(files)
  for (const name of altered) terminal.err(`${name}: altered since it was archived`)
  const again = await workedOutAgain(files, ref)
  if (again === null) terminal.err("The embedded files no longer make a job.")
  const same = again !== null && again === text(kept)
  terminal.out(
    same
      ? `${ref}: worked out again, every result the same.`
      : `${ref}: worked out again, the results differ.`,
  )
  terminal.out(
    altered.length === 0 ? "No embedded file was altered." : `${altered.length} embedded file(s) altered.`,
  )
  return same && altered.length === 0 ? exitStatus.done : exitStatus.findings
}

function text(file: ReadAttachment): string {
  return new TextDecoder().decode(file.bytes)
}

function refIn(file: ReadAttachment): string | null {
  try {
    const { ref } = JSON.parse(text(file)) as { ref?: unknown }
    return typeof ref === "string" && harmlessName.test(ref) ? ref : null
  } catch {
    return null
  }
}

/** The job's results from its embedded files, in a folder that is taken away again; null where they make no job. */
async function workedOutAgain(files: readonly ReadAttachment[], ref: string): Promise<string | null> {
  const folder = mkdtempSync(join(tmpdir(), "reopen-"))
  try {
    for (const { name, bytes } of files) {
      const source = /^source\/(.+)$/.exec(name)?.[1]
      if (!source || !harmlessName.test(source)) continue
      const path = source === "catalogue.yaml" ? join(folder, source) : join(folder, ref, source)
      mkdirSync(dirname(path), { recursive: true })
      writeFileSync(path, bytes)
    }
    const { jobs } = await prepareJobs({ jobsDir: folder, only: ref })
    return jobs[0] ? jobJson(jobs[0]) : null
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
