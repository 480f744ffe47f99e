import { rmSync } from "node:fs"
import { join } from "node:path"
import { findingText } from "../intake/finding-text.ts"
import type { ReadJob } from "../intake/job.ts"
import type { LocatedFinding } from "../intake/yaml-file.ts"
import { hasErrors } from "../kernels/finding.ts"
import { findBrowser } from "../press/browser/find.ts"
import { type Press, withBrowser } from "../press/browser/launch.ts"
import { earlierManifest } from "../press/earlier.ts"
import type { OfficeRow } from "../press/office-list.ts"
import { dropStaging, healOutput, openStaging, replaceOutput } from "../press/output-tree.ts"
import { type ProgramHash, programHash } from "../press/program-hash.ts"
import { siteData } from "../press/site-data.ts"
import { writeSite } from "../press/write-site.ts"
import { type BuildOptions, exitStatus } from "./arguments.ts"
import { type BuiltJob, buildJob, takenOver } from "./build-job.ts"
import { readWanted, workOutJob } from "./prepare.ts"
import { stopwatch, type Terminal } from "./terminal.ts"

/** What a build needs besides its options. */
export interface BuildNeeds {
  terminal: Terminal
  env: NodeJS.ProcessEnv
}

/**
 * Builds every job wanted into the output folder, one after the other: taken over whole from the last output where nothing
 * that goes into it has changed, else worked out, set, written by Eleventy and printed. The lists come last, and the tree is
 * put in place when all is well. With an error among the findings nothing is written and the last good output stays.
 */
export async function buildCommand(options: BuildOptions, { terminal, env }: BuildNeeds): Promise<number> {
  const watch = stopwatch()
  healOutput(options.outputDir)
  const { jobs, findings } = readWanted(options)
  watch.lap("reading")
  tell(findings, terminal)
  if (hasErrors(findings) || jobs.some((each) => hasErrors(each.findings))) {
    for (const each of jobs) tell((await workOutJob(each)).findings, terminal)
    return nothingBuilt(terminal)
  }
  const search = findBrowser(env)
  if ("missing" in search) {
    const status = await buildAll(jobs, null, { options, terminal, watch })
    if (status !== exitStatus.done) return status
    terminal.err(search.missing)
    terminal.err("The site was written; no paper was printed.")
    return exitStatus.ourFault
  }
  return withBrowser(search.found, (press) => {
    if (options.debug) terminal.err(browserText(press))
    return buildAll(jobs, press, { options, terminal, watch })
  })
}

/** What prints, and how far it is shut in. */
function browserText({ version, source, sandboxed }: Press): string {
  const sandbox = sandboxed
    ? "its sandbox on"
    : "its sandbox off (a browser has none as root or where the system forbids it)"
  return `browser: ${version}, ${source}, ${sandbox}; network shut`
}

interface Building {
  options: BuildOptions
  terminal: Terminal
  watch: ReturnType<typeof stopwatch>
}

async function buildAll(
  jobs: ReadJob[],
  press: Press | null,
  { options, terminal, watch }: Building,
): Promise<number> {
  const program = programHash()
  const staging = openStaging(options.outputDir)
  try {
    const built: BuiltJob[] = []
    let failed = false
    // Each job is let go of when it is built.
    for (let each = jobs.shift(); each; each = jobs.shift()) {
      if (failed) tell((await workOutJob(each)).findings, terminal)
      else {
        const came = await one(each, press, { program, staging, output: options.outputDir, terminal, watch })
        if (came) built.push(came)
        else failed = true
      }
    }
    if (failed) {
      dropStaging(staging)
      return nothingBuilt(terminal)
    }
    await writeLists(
      built.map(({ office }) => office),
      staging,
    )
    replaceOutput(options.outputDir, staging)
    watch.lap("lists and putting in place")
    summary(built, { terminal, seconds: watch.laps(), output: options.outputDir })
    return exitStatus.done
  } catch (error) {
    dropStaging(staging)
    throw error
  }
}

interface One {
  program: ProgramHash
  staging: string
  output: string
  terminal: Terminal
  watch: ReturnType<typeof stopwatch>
}

/** One job built into the staging folder, or null with an error among its findings. */
async function one(read: ReadJob, press: Press | null, task: One): Promise<BuiltJob | null> {
  const { staging, output, terminal, watch } = task
  const earlier = earlierManifest(output, read.ref)
  const kept = earlier ? takenOver(read, press, { ...task, earlier }) : null
  if (kept) {
    for (const { severity, text } of kept.findings) if (severity !== "note") terminal.err(text)
    watch.lap("taking over")
    return kept
  }
  const { job, findings } = await workOutJob(read)
  tell(findings, terminal)
  watch.lap("working out")
  if (!job) return null
  return buildJob(job, read, {
    press,
    program: task.program,
    earlier,
    staging,
    output,
    findings,
    terminal,
    watch,
  })
}

/** The pages that list jobs, or none: the site's first page and the office's list. */
async function writeLists(rows: readonly OfficeRow[], staging: string): Promise<void> {
  const lists = siteData([], rows)
  await writeSite({ site: async () => lists, staging })
  rmSync(join(staging, "press"), { recursive: true, force: true })
}

function tell(findings: readonly LocatedFinding[], terminal: Terminal): void {
  for (const finding of findings) if (finding.severity !== "note") terminal.err(findingText(finding))
}

function nothingBuilt(terminal: Terminal): number {
  terminal.err("Nothing was built: mend the errors above. The last output stands as it was.")
  return exitStatus.findings
}

function summary(
  built: readonly BuiltJob[],
  { terminal, seconds, output }: { terminal: Terminal; seconds: [string, number][]; output: string },
): void {
  terminal.progress("")
  for (const { ref, sheets, documents, boundPages, findings, asBefore } of built) {
    const count = (severity: string) => findings.filter((each) => each.severity === severity).length
    terminal.out(
      `${ref}: ${sheets} sheets, ${documents} documents, ${boundPages} pages bound; ` +
        `${count("warning")} warnings, ${count("note")} notes${asBefore ? "; unchanged, taken over" : ""}`,
    )
  }
  const times = seconds.map(([stage, took]) => `${stage} ${took.toFixed(1)} s`).join(", ")
  terminal.out(`${times}. Paper: ${join(output, "print", "index.html")}; to publish: ${join(output, "site")}`)
}
