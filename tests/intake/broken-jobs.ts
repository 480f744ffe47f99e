import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { z } from "zod"
import type { TradeFormat } from "../../src/intake/formats.ts"
import { type ReadJobs, readJobs } from "../../src/intake/read-jobs.ts"
import { productId } from "../../src/intake/schema/products.ts"
import { thickness, wallNumber } from "../../src/intake/schema/values.ts"

/** One thing done to the sound jobs folder before it is read; files are relative to it. */
export type Mutation =
  | { file: string; find: string; replace: string }
  | { file: string; text: string }
  | { file: string; bytes: number[] }
  | { file: string; linkTo: string }
  | { remove: string }
  | { copy: string; to: string }

/** Trades that take little, so that the fixtures stand apart from the real ones. */
export const smallTrades: TradeFormat[] = [
  {
    id: "floors",
    inputs: z.strictObject({
      finish: z.enum(["floating-board", "stays"]),
      board: productId("board").optional(),
      gap: thickness.optional(),
      along: wallNumber.optional(),
    }),
    uses: [{ use: "board", kind: "board", what: "Floor board" }],
  },
  {
    id: "joinery",
    inputs: z.strictObject({ skirting: z.boolean().default(true) }),
    uses: [{ use: "skirting", kind: "length", what: "Skirting" }],
  },
  {
    id: "doors",
    inputs: z.strictObject({}),
    doorInputs: z.strictObject({
      hang: z.enum(["new", "stays"]).default("stays"),
      leaf: productId("leaf").optional(),
    }),
    uses: [],
  },
]

const good = new URL("../broken/good", import.meta.url).pathname

/** A copy of the sound jobs folder with mutations done to it, handed to `use` and removed afterwards. */
export function withBroken<T>(mutations: readonly Mutation[], use: (jobsDir: string) => T): T {
  const { root, jobsDir } = broken(mutations)
  try {
    return use(jobsDir)
  } finally {
    rmSync(root, { recursive: true, force: true })
  }
}

/** As `withBroken`, for what takes its time. */
export async function withBrokenAsync<T>(
  mutations: readonly Mutation[],
  use: (jobsDir: string) => Promise<T>,
): Promise<T> {
  const { root, jobsDir } = broken(mutations)
  try {
    return await use(jobsDir)
  } finally {
    rmSync(root, { recursive: true, force: true })
  }
}

function broken(mutations: readonly Mutation[]): { root: string; jobsDir: string } {
  const root = mkdtempSync(join(tmpdir(), "jobs-"))
  const jobsDir = join(root, "jobs")
  cpSync(good, jobsDir, { recursive: true })
  for (const mutation of mutations) mutate(jobsDir, mutation)
  return { root, jobsDir }
}

/** What intake reads of the sound jobs folder with mutations done to it. */
export function readBroken(mutations: readonly Mutation[]): ReadJobs {
  return withBroken(mutations, (jobsDir) => readJobs({ jobsDir, trades: smallTrades }))
}

function mutate(jobsDir: string, mutation: Mutation): void {
  const at = (file: string) => join(jobsDir, file)
  if ("remove" in mutation) rmSync(at(mutation.remove), { recursive: true })
  else if ("copy" in mutation) cpSync(at(mutation.copy), at(mutation.to), { recursive: true })
  else {
    const path = at(mutation.file)
    mkdirSync(dirname(path), { recursive: true })
    rewrite(path, mutation)
  }
}

function rewrite(path: string, mutation: Extract<Mutation, { file: string }>): void {
  if ("linkTo" in mutation) {
    rmSync(path, { force: true, recursive: true })
    symlinkSync(mutation.linkTo, path)
  } else if ("text" in mutation) writeFileSync(path, mutation.text)
  else if ("bytes" in mutation) writeFileSync(path, Uint8Array.from(mutation.bytes))
  else {
    const before = readFileSync(path, "utf8")
    if (before.split(mutation.find).length !== 2)
      throw new Error(`${mutation.find} must stand in ${path} exactly once`)
    writeFileSync(
      path,
      before.replace(mutation.find, () => mutation.replace),
    )
  }
}
