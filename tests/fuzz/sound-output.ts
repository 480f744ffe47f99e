import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { drawn } from "../../src/press/drawn.ts"
import { recordFiles } from "../../src/press/records/record-files.ts"
import type { SetJob } from "../../src/press/set-job.ts"
import { type SiteData, siteData } from "../../src/press/site-data.ts"
import { writeSite } from "../../src/press/write-site.ts"

/** What must never reach a reader, unless the author typed it. */
const slips: [string, RegExp][] = [
  ["NaN", /\bNaN\b/],
  ["Infinity", /\bInfinity\b/],
  ["undefined", /\bundefined\b/],
  ["[object", /\[object \w+\]/],
  ["<script>alert", /<script>alert/],
]

/** A negative amount of what one buys, covers or spends. */
const negativeAmount =
  /(?<![\w.,–-])[-−]\d[\d,.]*\s*(?:m2|m²|l|litres?|kg|packs?|tins?|lengths?|hours?|h|nr)\b/

/**
 * Everything wrong with a pack's text and figures, in words; nothing where it may be printed.
 * @param source what the author wrote, all files together: words that stand in it may stand on paper
 */
export function wrongWith(job: SetJob, source: string): string[] {
  const wrong = new Set<string>()
  const words = slips.filter(([word]) => !source.includes(word))
  const say = (text: string, where: string) => {
    for (const [word, pattern] of words)
      if (pattern.test(text)) wrong.add(`${word} in ${where}: ${near(text, pattern)}`)
    if (negativeAmount.test(text)) wrong.add(`negative amount in ${where}: ${near(text, negativeAmount)}`)
  }
  for (const sheet of job.sheets) {
    for (const text of texts(sheet.blocks)) say(text, sheet.number)
    for (const figure of figures(sheet.blocks))
      if (!Number.isFinite(figure)) wrong.add(`a figure that is ${figure} in ${sheet.number}`)
    for (const block of sheet.blocks)
      if (block.kind === "drawing") say(drawn(block, sheet.orientation, "x").svg, `${sheet.number} drawing`)
  }
  for (const { name, text } of recordFiles(job)) say(text, name)
  for (const each of amounts(job))
    if (!(each.value >= 0) || !Number.isFinite(each.value)) wrong.add(`${each.what} is ${each.value}`)
  return [...wrong]
}

/** The same of the pages that Eleventy writes. */
export async function wrongInPages(job: SetJob, source: string): Promise<string[]> {
  const site = siteData([job])
  const staging = mkdtempSync(join(tmpdir(), "storey-rod-fuzz-site-"))
  try {
    await writeSite({ site: async (): Promise<SiteData> => site, staging })
    const words = slips.filter(([word]) => !source.includes(word) || word === "<script>alert")
    return pagesBelow(staging).flatMap((path) => {
      const whole = readFileSync(join(staging, path), "utf8")
      // The hosted pages carry scripts of our own, the same in every job; one that an author wrote must not be among them.
      const html = whole.includes("<script>alert")
        ? whole
        : whole.replace(/<script\b[^>]*>[\s\S]*?<\/script>/g, "")
      return words
        .filter(([, pattern]) => pattern.test(html))
        .map(([word, pattern]) => `${word} in ${path}: ${near(html, pattern)}`)
    })
  } finally {
    rmSync(staging, { recursive: true, force: true })
  }
}

function pagesBelow(folder: string): string[] {
  if (!existsSync(folder)) return []
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" })
  return names.filter((name) => name.endsWith(".html"))
}

function near(text: string, pattern: RegExp): string {
  const index = text.search(pattern)
  return JSON.stringify(text.slice(Math.max(0, index - 60), index + 60))
}

function amounts({ result }: SetJob): { what: string; value: number }[] {
  const { lines, cutLists } = result.orders
  return [
    ...result.results.flatMap(({ work }) => [
      ...work.quantities.flatMap(({ what, net, gross }) => [
        { what: `net ${what}`, value: net },
        { what: `gross ${what}`, value: gross },
      ]),
      ...work.pieces.map(({ mark, length }) => ({ what: `piece ${mark}`, value: length })),
      ...work.steps.map(({ key, hours }) => ({ what: `hours of ${key}`, value: hours })),
    ]),
    ...lines.flatMap(({ product, net, gross, bought, total, packs }) => [
      { what: `net of ${product.id}`, value: net },
      { what: `gross of ${product.id}`, value: gross },
      { what: `bought of ${product.id}`, value: bought },
      { what: `total of ${product.id}`, value: Number(total) },
      ...packs.map((pack) => ({ what: `packs of ${product.id}`, value: pack.count })),
    ]),
    ...cutLists.flatMap(({ product, plan }) =>
      plan.bars.map((bar) => ({ what: `length of ${product.id}`, value: bar.length })),
    ),
  ]
}

function texts(data: unknown): string[] {
  if (typeof data === "string") return [data]
  return typeof data === "object" && data !== null ? Object.values(data).flatMap(texts) : []
}

function figures(data: unknown): number[] {
  if (typeof data === "number") return [data]
  return typeof data === "object" && data !== null ? Object.values(data).flatMap(figures) : []
}
