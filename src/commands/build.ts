import { rmSync } from "node:fs"
import { join } from "node:path"
import { findingText } from "../intake/finding-text.ts"
import { hasErrors } from "../kernels/finding.ts"
import { findBrowser } from "../press/browser/find.ts"
import { withBrowser } from "../press/browser/launch.ts"
import { dropStaging, openStaging, replaceOutput } from "../press/output-tree.ts"
import type { Attachment } from "../press/pdf/attachments.ts"
import { type PrintedDocument, printDocuments } from "../press/print-documents.ts"
import { archiveFiles } from "../press/records/archive-files.ts"
import { recordFiles } from "../press/records/record-files.ts"
import { writeManifest, writeRecords } from "../press/records/write-records.ts"
import type { SetJob } from "../press/set-job.ts"
import { type SiteData, siteData } from "../press/site-data.ts"
import { writeSite } from "../press/write-site.ts"
import { type BuildOptions, exitStatus } from "./arguments.ts"
import { type PreparedJobs, prepareJobs } from "./prepare.ts"
import { stopwatch, type Terminal } from "./terminal.ts"

/** What a build needs besides its options. */
export interface BuildNeeds {
  terminal: Terminal
  env: NodeJS.ProcessEnv
}

/**
 * Builds every job wanted into the output folder: read, worked out, set, written by Eleventy, printed, put in place.
 * With an error among the findings nothing is written and the last good output stays.
 */
export async function buildCommand(options: BuildOptions, { terminal, env }: BuildNeeds): Promise<number> {
  const watch = stopwatch()
  const prepared = await prepareJobs(options)
  watch.lap("reading and working out")
  for (const finding of prepared.findings) if (finding.severity !== "note") terminal.err(findingText(finding))
  if (hasErrors(prepared.findings)) {
    terminal.err("Nothing was built: mend the errors above. The last output stands as it was.")
    return exitStatus.findings
  }
  const staging = openStaging(options.outputDir)
  try {
    const site = siteData(prepared.jobs)
    await writeSite({ jobs: async () => prepared.jobs, staging })
    watch.lap("site")
    const outcome = await print(prepared, site, { staging, env, terminal })
    watch.lap("printing")
    rmSync(join(staging, "press"), { recursive: true, force: true })
    for (const job of prepared.jobs) {
      const pages = site.all.filter((page) => page.code === job.result.job.code)
      writeManifest(staging, job, { browser: outcome.browser, pages, printed: outcome.printed })
    }
    replaceOutput(options.outputDir, staging)
    watch.lap("putting in place")
    summary(prepared, outcome, { terminal, seconds: watch.laps(), output: options.outputDir })
    return outcome.browser === null ? exitStatus.ourFault : exitStatus.done
  } catch (error) {
    dropStaging(staging)
    throw error
  }
}

interface Outcome {
  browser: string | null
  printed: PrintedDocument[]
}

interface Printing {
  staging: string
  env: NodeJS.ProcessEnv
  terminal: Terminal
}

async function print(
  prepared: PreparedJobs,
  site: SiteData,
  { staging, env, terminal }: Printing,
): Promise<Outcome> {
  const attachments = new Map<string, Attachment[]>()
  for (const job of prepared.jobs)
    attachments.set(`print/${job.ref}/archive`, records(job, prepared, staging))
  const search = findBrowser(env)
  if ("missing" in search) {
    terminal.err(search.missing)
    terminal.err("The site was written; no paper was printed.")
    return { browser: null, printed: [] }
  }
  return withBrowser(search.found, async (press) => {
    const { printed, warnings } = await printDocuments(press, site.documents, {
      staging,
      attachments,
      progress: (done, of) => terminal.progress(`printing ${done} of ${of} documents`),
    })
    for (const warning of warnings) terminal.err(`warning: ${warning}`)
    return { browser: press.version, printed }
  })
}

function records(job: SetJob, prepared: PreparedJobs, staging: string): Attachment[] {
  const files = recordFiles(job)
  writeRecords(staging, job.ref, files)
  return archiveFiles(job, prepared.sources.get(job.ref) ?? [], files)
}

function summary(
  prepared: PreparedJobs,
  outcome: Outcome,
  { terminal, seconds, output }: { terminal: Terminal; seconds: [string, number][]; output: string },
): void {
  terminal.progress("")
  for (const job of prepared.jobs) {
    const pages = outcome.printed.filter((each) => each.document.path.startsWith(`print/${job.ref}/`))
    const bound = pages.find((each) => each.document.pack.id === "job")
    const own = prepared.findings.filter((finding) => finding.place.file.startsWith(`${job.ref}/`))
    terminal.out(
      `${job.ref}: ${job.sheets.length} sheets, ${pages.length} packs, ${bound?.pages ?? 0} pages bound; ` +
        `${own.filter((each) => each.severity === "warning").length} warnings, ${own.filter((each) => each.severity === "note").length} notes`,
    )
  }
  const times = seconds.map(([stage, took]) => `${stage} ${took.toFixed(1)} s`).join(", ")
  terminal.out(`${times}. Paper: ${join(output, "print", "index.html")}; to publish: ${join(output, "site")}`)
}
