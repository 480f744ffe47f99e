import { basename } from "node:path"
import type { z } from "zod"
import { type At, hasErrors } from "../kernels/finding.ts"
import { doorways } from "./checks/doorways.ts"
import { duplicates } from "./checks/duplicates.ts"
import { openings } from "./checks/openings.ts"
import { references } from "./checks/references.ts"
import { spans } from "./checks/spans.ts"
import { unitSlips } from "./checks/unit-slips.ts"
import { type Draft, textAt } from "./draft.ts"
import { filesInOrder, type JobFiles, naturalOrder, readFolder } from "./folder.ts"
import type { Formats, TradeFormat } from "./formats.ts"
import type { Job, ReadJob } from "./job.ts"
import { fileNameDiffers, refDiffers } from "./messages.ts"
import { type Place, positionOf } from "./place.ts"
import type { Product } from "./schema/products.ts"
import { id as roomId } from "./schema/values.ts"
import { checkedBy } from "./schema-findings.ts"
import { findingIn, type LocatedFinding, type YamlFile, yamlFile } from "./yaml-file.ts"

/** What the jobs of a folder share. */
export interface Shared {
  trades: readonly TradeFormat[]
  formats: Formats
  /** The catalogue's file, if there is one. */
  catalogue: YamlFile | null
  catalogueProducts: readonly Product[]
  /** False if the catalogue has errors: no job is whole then. */
  catalogueIsSound: boolean
  /** Schema of an issue record. */
  issueRecord: z.ZodType
}

/** Reads one job's folder: every file checked alone and against the others, all findings at once, in the order of the files. */
export function readJob(dir: string, shared: Shared): ReadJob {
  const files = withWorksFilledIn(readFolder(dir))
  const all = filesInOrder(files)
  const withCatalogue = shared.catalogue ? [...all, shared.catalogue] : all
  const parts = checkedFiles(files, shared)
  const draft: Draft = { files, catalogue: shared.catalogue, formats: shared.formats, trades: shared.trades }
  const own = [...all.flatMap((yaml) => yaml.findings), ...parts.findings, ...names(files, basename(dir))]
  const early = [...own, ...duplicates(draft), ...references(draft), ...unitSlips(draft), ...spans(draft)]
  const findings = inOrder([...early, ...doorways(draft, early), ...openings(draft, early)], all)
  const sources = withCatalogue.filter((yaml) => yaml.text !== "").map(({ file, text }) => ({ file, text }))
  const texts = withCatalogue.map(({ file, shown, text }) => ({ file, shown, text }))
  const read = {
    ref: basename(dir),
    dir,
    findings,
    sources,
    locator: locatorOf(texts, dir),
  }
  if (hasErrors(findings) || !shared.catalogueIsSound) return read
  const job = wholeJob(parts, files, shared)
  return job ? { ...read, job: { ...job, ref: read.ref, dir, sources } } : read
}

/** A key under `work` with nothing behind it asks for the trade with all its defaults. */
function withWorksFilledIn(files: JobFiles): JobFiles {
  const filled = (yaml: YamlFile): YamlFile => ({ ...yaml, value: worksFilledIn(yaml.value) })
  return {
    ...files,
    house: filled(files.house),
    rooms: files.rooms.map(filled),
    variations: files.variations && filled(files.variations),
  }
}

function worksFilledIn(value: unknown, under = ""): unknown {
  if (Array.isArray(value)) return value.map((item) => worksFilledIn(item))
  if (value === null && under === "work") return {}
  if (typeof value !== "object" || value === null) return value
  const entries = Object.entries(value).map(([key, inside]) => {
    const isTrade = under === "work" && inside === null
    return [key, isTrade ? {} : worksFilledIn(inside, under === "" ? key : "")] as const
  })
  return Object.fromEntries(entries)
}

type Part<K extends keyof Formats> = z.output<Formats[K]> | undefined

interface Parts {
  job: Part<"job">
  house: Part<"house">
  rooms: { yaml: YamlFile; data: Part<"room"> }[]
  products: Part<"products">
  programme: Part<"programme">
  money: Part<"money"> | null
  variations: Part<"variations"> | null
  issues: { file: string; record: unknown }[]
  findings: LocatedFinding[]
}

function checkedFiles(files: JobFiles, { formats, issueRecord }: Shared): Parts {
  const findings: LocatedFinding[] = []
  const checked = <T>(yaml: YamlFile, schema: z.ZodType<T>): T | undefined => {
    if (!yaml.readable) return undefined
    const result = checkedBy(yaml, schema)
    findings.push(...result.findings)
    return result.data
  }
  return {
    job: checked(files.job, formats.job),
    house: checked(files.house, formats.house),
    rooms: files.rooms.map((yaml) => ({ yaml, data: checked(yaml, formats.room) })),
    products: checked(files.products, formats.products),
    programme: checked(files.programme, formats.programme),
    money: files.money ? checked(files.money, formats.money) : null,
    variations: files.variations ? checked(files.variations, formats.variations) : null,
    issues: files.issues.map((yaml) => ({ file: yaml.file, record: checked(yaml, issueRecord) })),
    findings,
  }
}

function names({ job, rooms }: JobFiles, folder: string): LocatedFinding[] {
  const ref = textAt(job.value, "ref")
  const differs =
    ref !== undefined && ref !== folder ? [findingIn(job, refDiffers(ref, folder), ["ref"])] : []
  const misnamed = rooms.flatMap((room) => {
    const id = textAt(room.value, "id")
    // An id that is none has its own finding.
    const isNamed =
      !roomId.safeParse(id).success ||
      id === undefined ||
      `rooms/${id}.yaml`.toLowerCase() === room.file.toLowerCase()
    return isNamed ? [] : [findingIn(room, fileNameDiffers(room.file, id), ["id"])]
  })
  return [...differs, ...misnamed]
}

/** Findings by file and place; at one place a hint gives way to what is certainly wrong there. */
function inOrder(findings: LocatedFinding[], files: YamlFile[]): LocatedFinding[] {
  const rank = new Map(files.map((yaml, index) => [yaml.file, index]))
  const hints = ["unit-slip", "number-form"]
  const weight = ({ code }: LocatedFinding) => hints.length - hints.indexOf(code)
  const spot = ({ place }: LocatedFinding) => `${place.file}:${place.line}:${place.column}`
  const codes = new Map<string, Set<string>>()
  for (const finding of findings)
    codes.set(spot(finding), (codes.get(spot(finding)) ?? new Set()).add(finding.code))
  return findings
    .filter(
      (finding) =>
        !hints.includes(finding.code) ||
        ![...codes.get(spot(finding))!].some((other) => outweighs(other, finding.code, hints)),
    )
    .toSorted(
      (one, other) =>
        (rank.get(one.at.file) ?? 0) - (rank.get(other.at.file) ?? 0) ||
        one.place.line - other.place.line ||
        one.place.column - other.place.column ||
        weight(one) - weight(other),
    )
}

function outweighs(code: string, hint: string, hints: readonly string[]): boolean {
  return !hints.includes(code) || hints.indexOf(code) > hints.indexOf(hint)
}

type Text = Pick<YamlFile, "file" | "shown" | "text">

/** Made outside of what reads a job, so that nothing but the texts is held. */
function locatorOf(texts: readonly Text[], dir: string): () => (at: At) => Place {
  return () => located(texts, dir)
}

/** Finds places in files that are parsed again as they are asked for: a job that waits is no more than its texts and data. */
function located(files: readonly Text[], dir: string): (at: At) => Place {
  const parsed = new Map<string, YamlFile>()
  return (at) => {
    const kept = files.find((each) => each.file === at.file)
    if (!kept) return { file: `${basename(dir)}/${at.file}`, line: 1, column: 1 }
    const yaml = parsed.get(at.file) ?? yamlFile(kept.file, kept.shown, { text: kept.text })
    parsed.set(at.file, yaml)
    return { file: yaml.shown, ...positionOf(yaml, at.path) }
  }
}

function wholeJob(
  parts: Parts,
  files: JobFiles,
  shared: Shared,
): Omit<Job, "ref" | "dir" | "sources"> | undefined {
  const { job, house, products, programme, money, variations } = parts
  if (!job || !house || !products || !programme) return undefined
  if (money === undefined || variations === undefined) return undefined
  const rooms = parts.rooms
    .flatMap(({ yaml, data }) => (data ? [{ ...data, file: yaml.file }] : []))
    .toSorted((one, other) => naturalOrder(one.id, other.id))
  if (rooms.length < files.rooms.length) return undefined
  const all = [...shared.catalogueProducts, ...products.products]
  return {
    job,
    house: { ...house, doors: house.doors.map((door) => ({ ...door, work: door.work ?? {} })) },
    rooms,
    products: new Map(all.map((product) => [product.id, product])),
    chosen: new Map(Object.entries(products.chosen)),
    inHand: products.inHand,
    suppliers: products.suppliers,
    stores: products.stores,
    programme,
    money,
    variations: variations?.variations ?? [],
    works: new Map(rooms.map((room) => [room.id, new Map(Object.entries(room.work))])),
    issues: parts.issues,
  }
}
