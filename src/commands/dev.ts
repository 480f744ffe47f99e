import { mkdirSync } from "node:fs"
import Eleventy from "@11ty/eleventy"
import { findingText } from "../intake/finding-text.ts"
import { siteData } from "../press/site-data.ts"
import { buildOptions } from "./arguments.ts"
import { prepareJobs } from "./prepare.ts"
import type { Terminal } from "./terminal.ts"

/** Where the preview writes and listens. */
const previewFolder = "output/.preview"
const port = 8080

/**
 * `npm run dev`: the site while YAML and templates change, served on this machine only. Paper is not printed.
 * Findings are shown at each change; a job with an error keeps its last good sheets.
 */
export async function devCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const options = buildOptions(args)
  mkdirSync(previewFolder, { recursive: true })
  let last = (await prepared()).jobs
  async function prepared() {
    const now = await prepareJobs(options)
    for (const finding of now.findings) terminal.err(findingText(finding))
    return now
  }
  const site = async () => {
    const now = (await prepared()).jobs
    last = now.length > 0 ? now : last
    return siteData(last)
  }
  const eleventy = new Eleventy("templates", previewFolder, {
    configPath: ".eleventy.js",
    quietMode: true,
    runMode: "serve",
    config: (eleventyConfig) => {
      eleventyConfig.addGlobalData("request", { site, staging: previewFolder })
      eleventyConfig.addWatchTarget(options.jobsDir)
      eleventyConfig.setServerOptions({ port, showAllHosts: false })
    },
  })
  await eleventy.init()
  await eleventy.watch()
  await eleventy.serve(port)
  terminal.out(
    `Preview: http://localhost:${port}/site/ and /print/ (change a file and look again; stop with Ctrl-C)`,
  )
  return new Promise(() => {})
}
