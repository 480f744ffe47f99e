import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { type Document, isNode, isScalar, parse, parseDocument, stringify, visit } from "yaml"
import { newCommand } from "../../src/commands/new.ts"
import { readWanted, workOutJob } from "../../src/commands/prepare.ts"
import { mutateBytes } from "./mutate-bytes.ts"
import { mutateData, type Pool, poolOf } from "./mutate-data.ts"
import { type Random, seeded } from "./random.ts"
import { wrongInPages, wrongWith } from "./sound-output.ts"

const top = new URL("../..", import.meta.url).pathname

/** The files of one job and of the catalogue, by path below the jobs' folder. */
export type Files = ReadonlyMap<string, Uint8Array>

/** Jobs to begin from, and what may be moved from one into another. */
export interface Seeds {
  jobs: ReadonlyMap<string, Files>
  pool: Pool
}

/** The demo jobs, and one that `new` has just written. */
export async function seedJobs(): Promise<Seeds> {
  const folder = mkdtempSync(join(tmpdir(), "storey-rod-fuzz-seeds-"))
  try {
    cpSync(join(top, "jobs"), folder, { recursive: true })
    const quiet = () => {}
    await newCommand(["new-job", "--jobs", folder], { out: quiet, err: quiet, today: "2027-03-01" })
    const jobs = new Map(["garden-room", "new-job", "lock-house"].map((ref) => [ref, filesOf(folder, ref)]))
    const all = [...jobs.values()].flatMap((files) => [...files.values()])
    return { jobs, pool: poolOf(all.map((bytes) => parse(new TextDecoder().decode(bytes)))) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function filesOf(folder: string, ref: string): Files {
  const names = readdirSync(join(folder, ref), { recursive: true, encoding: "utf8" })
  const own = names.filter((name) => name.endsWith(".yaml")).map((name) => join(ref, name))
  return new Map(
    ["catalogue.yaml", ...own.sort()].map((path) => {
      const text = readFileSync(join(folder, path), "utf8")
      // A new job's code is drawn by chance.
      return [path, new TextEncoder().encode(text.replace(/^code: .*$/m, "code: 7q2hx0mv"))]
    }),
  )
}

/** What came of one mutated job. */
export interface Outcome {
  seed: number
  ref: string
  came: "findings" | "pack"
  findings: number
  /** Seconds. */
  took: number
  /** What must not be: a crash, or something wrong in the pack. */
  wrong: string[]
}

/** How a job is chosen and how far its pack is followed. */
export interface FuzzOptions {
  /** The large demo job as the seed of one case in so many; never where 0. */
  largeOneIn: number
  /** Pages written by Eleventy for one seed in so many. */
  pagesOneIn: number
}

/** One mutated job: read, worked out and set; the same for the same seed. */
export async function fuzzCase(seed: number, { jobs, pool }: Seeds, options: FuzzOptions): Promise<Outcome> {
  const random = seeded(seed)
  const large = options.largeOneIn > 0 && seed % options.largeOneIn === 0
  const ref = large ? "lock-house" : random.of(["garden-room", "garden-room", "new-job"])
  const files = mutated(jobs.get(ref)!, pool, random)
  const source = [...files.values()].map((bytes) => new TextDecoder().decode(bytes)).join("\n")
  const folder = writeFiles(files, random)
  const begun = performance.now()
  const outcome = { seed, ref, came: "findings" as Outcome["came"], findings: 0, wrong: [] as string[] }
  try {
    const read = readWanted({ jobsDir: folder })
    outcome.findings = read.findings.length
    for (const each of read.jobs) {
      const worked = await workOutJob(each)
      outcome.findings += worked.findings.length
      outcome.wrong.push(...withoutPlace(worked.findings, source))
      if (!worked.job) continue
      outcome.came = "pack"
      outcome.wrong.push(...wrongWith(worked.job, source))
      if (seed % options.pagesOneIn === 0) outcome.wrong.push(...(await wrongInPages(worked.job, source)))
    }
    if (outcome.came === "findings" && outcome.findings === 0)
      outcome.wrong.push("no pack, and nothing said why")
  } catch (error) {
    outcome.wrong.push(`crash: ${error instanceof Error ? (error.stack ?? error.message) : error}`)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  if (({} as Record<string, unknown>).polluted !== undefined)
    outcome.wrong.push("the ancestor of all objects was changed")
  return { ...outcome, took: (performance.now() - begun) / 1000 }
}

/** The files of a mutated job, written out for a closer look. */
export function writeCase(seed: number, { jobs, pool }: Seeds, options: FuzzOptions): string {
  const random = seeded(seed)
  const large = options.largeOneIn > 0 && seed % options.largeOneIn === 0
  const ref = large ? "lock-house" : random.of(["garden-room", "garden-room", "new-job"])
  return writeFiles(mutated(jobs.get(ref)!, pool, random), random)
}

/** One to three changes, six in seven of them to what stands in the files, the others to their bytes. */
function mutated(job: Files, pool: Pool, random: Random): Map<string, Uint8Array> {
  const files = new Map(job)
  for (let count = 1 + random.whole(3); count > 0; count--) {
    const path = chosenFile([...files.keys()], random)
    const bytes = files.get(path)!
    files.set(path, random.chance(0.86) ? dataChanged(bytes, pool, random) : mutateBytes(bytes, random))
  }
  if (random.chance(0.02)) files.delete(random.of([...files.keys()]))
  return files
}

function chosenFile(paths: readonly string[], random: Random): string {
  const rooms = paths.filter((path) => path.includes("/rooms/"))
  return random.of(rooms.length > 0 && random.chance(0.5) ? rooms : paths)
}

/** True if a list or mapping is a key: as plain data it becomes text, in twice the time for each level of it. */
function hasWideKey(document: Document): boolean {
  let found = false
  visit(document, {
    Pair: (_, { key }) => {
      if (!isNode(key) || isScalar(key)) return undefined
      found = true
      return visit.BREAK
    },
  })
  return found
}

function dataChanged(bytes: Uint8Array, pool: Pool, random: Random): Uint8Array {
  let data: unknown
  try {
    const document = parseDocument(new TextDecoder("utf-8", { fatal: true }).decode(bytes))
    if (document.errors.length > 0 || hasWideKey(document)) return mutateBytes(bytes, random)
    data = document.toJS({ maxAliasCount: 10 })
  } catch {
    return mutateBytes(bytes, random)
  }
  mutateData(data, pool, random)
  return new TextEncoder().encode(stringify(data, { lineWidth: 0 }))
}

function writeFiles(files: ReadonlyMap<string, Uint8Array>, random: Random): string {
  const folder = mkdtempSync(join(tmpdir(), "storey-rod-fuzz-"))
  for (const [path, bytes] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), bytes)
  }
  if (random.chance(0.01)) {
    const path = join(folder, random.of([...files.keys()]))
    rmSync(path, { force: true })
    symlinkSync(random.of(["/etc/hostname", "/dev/zero", "../outside.yaml", "."]), path)
  }
  return folder
}

interface Said {
  message: string
  place: { file: string; line: number; column: number }
}

function withoutPlace(findings: readonly Said[], source: string): string[] {
  const slip = ["undefined", "[object"].filter((word) => !source.includes(word))
  return findings
    .filter(
      ({ message, place }) =>
        !(place.line >= 1 && place.column >= 1 && place.file) || slip.some((word) => message.includes(word)),
    )
    .map(({ message, place }) => `a finding that is none: ${JSON.stringify(place)} ${message}`)
}
