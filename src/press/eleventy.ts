import { writeFileSync } from "node:fs"
import { join } from "node:path"
import type { EleventyConfig } from "@11ty/eleventy"
import { invariant } from "../kernels/fault.ts"
import type { Block, Column, Orientation } from "../kernels/paper.ts"
import { drawn } from "./drawn.ts"
import { type OfficeRow, officeScript } from "./office-list.ts"
import type { BuildRequest } from "./request.ts"
import { assetAddress, writeSiteAssets } from "./site/assets.ts"
import { type KeptJob, writeKeptCopy } from "./site/kept-copy.ts"
import { writeLostPage } from "./site/lost-page.ts"
import { contentPolicy } from "./site/policy.ts"
import { ticksOf } from "./site/ticks.ts"
import { copyAssets, templatesFolder } from "./templates.ts"

type DrawingBlock = Extract<Block, { kind: "drawing" }>

/**
 * Eleventy's configuration: the jobs, worked out, become the templates' data; the site and the documents to print are written.
 * @param eleventyConfig with the request of a command in its global data
 */
export function configureEleventy(eleventyConfig: EleventyConfig): void {
  const request = eleventyConfig.globalData.request as BuildRequest | undefined
  invariant(request, "Eleventy was started without a build request")
  eleventyConfig.setInputDirectory(templatesFolder)
  eleventyConfig.setIncludesDirectory("includes")
  eleventyConfig.setOutputDirectory(request.staging)
  eleventyConfig.setTemplateFormats(["njk"])
  eleventyConfig.setUseGitIgnore(false)
  eleventyConfig.setNunjucksEnvironmentOptions({ autoescape: true })
  let office: readonly OfficeRow[] = []
  let kept: readonly KeptJob[] = []
  eleventyConfig.addGlobalData("site", async () => {
    const site = await request.site()
    office = site.office
    kept = site.jobs
    return site
  })
  eleventyConfig.addNunjucksFilter("drawn", (block: DrawingBlock, orientation: Orientation, id: string) =>
    drawn(block, orientation, id),
  )
  eleventyConfig.addNunjucksFilter("share", share)
  eleventyConfig.addNunjucksFilter("climb", (path: string) => "../".repeat(path.split("/").length - 1))
  eleventyConfig.addNunjucksFilter("asset", assetAddress)
  eleventyConfig.addNunjucksFilter("ticks", ticksOf)
  eleventyConfig.addNunjucksFilter("policy", () => contentPolicy())
  eleventyConfig.on("eleventy.after", () => {
    copyAssets(request.staging)
    writeSiteAssets(request.staging)
    writeLostPage(request.staging)
    for (const job of kept) writeKeptCopy(request.staging, job)
    writeFileSync(join(request.staging, "print", "jobs.js"), officeScript(office))
  })
}

/** Width of a column that names none, as a share of those that do. */
const unnamedShare: Record<NonNullable<Column["as"]>, number> = {
  tick: 0.09,
  figure: 0.14,
  mark: 0.14,
  write: 0.2,
  text: 0.18,
}

/** A column's width as its share of the table. */
function share(column: Column, columns: readonly Column[]): string {
  const named = columns.reduce((sum, each) => sum + (each.width ?? 0), 0) || columns.length
  const weight = (each: Column) => each.width ?? named * unnamedShare[each.as ?? "text"]
  const total = columns.reduce((sum, each) => sum + weight(each), 0)
  return `${((100 * weight(column)) / total).toFixed(2)}%`
}
