import { readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { filesBelow } from "../output-tree.ts"
import { sha256 } from "../revisions/fingerprint.ts"
import { assetAddress, siteAssets, workerSource } from "./assets.ts"

/** Signs of a sum in the list of what a phone keeps. */
const sumLength = 16

/** How long a page waits for the host before the kept one is shown, ms. */
const patience = 3000

/** What the worker of a job is told. */
export interface KeptCopy {
  code: string
  /** Changes when any page or asset does. */
  hash: string
  zone: string
  patience: number
  /** Addresses below the job's folder, a page's without its file name, each with the beginning of its sha256. */
  files: [string, string][]
}

/** The list of what a phone keeps of a job: every page, and the scripts and style sheet they ask for. */
export function keptCopy(
  job: Pick<KeptJob, "code" | "zone">,
  pages: readonly { path: string; bytes: Uint8Array }[],
): KeptCopy {
  const sum = (bytes: Uint8Array) => sha256(bytes).slice(0, sumLength)
  const files: [string, string][] = [
    ...pages.map(({ path, bytes }): [string, string] => [
      path.replace(/index\.html$/, "") || "./",
      sum(bytes),
    ]),
    ...siteAssets().map(({ name, bytes }): [string, string] => [`../${assetAddress(name)}`, sum(bytes)]),
  ]
  return {
    code: job.code,
    hash: sha256(JSON.stringify(files)).slice(0, sumLength),
    zone: job.zone,
    patience,
    files,
  }
}

/** A job as its kept copy names it. */
export interface KeptJob {
  code: string
  zone: string
  /** The letter that each sheet carries now, by its address. */
  letters: Record<string, string>
}

/**
 * Writes a job's worker, and `copy.json`: what is published now, asked for by pages and worker, never kept.
 * The job's pages must have been written.
 */
export function writeKeptCopy(staging: string, job: KeptJob): void {
  const folder = join(staging, "site", job.code)
  const copy = keptCopy(
    job,
    filesBelow(folder).filter(({ path }) => path.endsWith(".html")),
  )
  const worker = `const job = ${JSON.stringify(copy)}\n${readFileSync(workerSource, "utf8")}`
  writeFileSync(join(folder, "worker.js"), worker)
  writeFileSync(join(folder, "copy.json"), `${JSON.stringify({ hash: copy.hash, sheets: job.letters })}\n`)
}
