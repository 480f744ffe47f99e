import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { Fault } from "../../kernels/fault.ts"
import { findBrowser } from "../../press/browser/find.ts"
import { type Press, withBrowser } from "../../press/browser/launch.ts"
import { textArea } from "../../press/drawn.ts"
import { finishPdf } from "../../press/pdf/finish.ts"
import { printPdf } from "../../press/print.ts"
import { printDocuments } from "../../press/print-documents.ts"
import { siteData } from "../../press/site-data.ts"
import { writeSite } from "../../press/write-site.ts"
import { exitStatus } from "../arguments.ts"
import { buildCommand } from "../build.ts"
import { prepareJobs } from "../prepare.ts"

/** What is measured, and where to print. */
export interface BuildBench {
  /** Ref of a demo job, the room's file of it that is changed, and the change. */
  ref: string
  changed: { file: string; find: string; put: string }
  env: NodeJS.ProcessEnv
  print(line: string): void
}

/** Seconds of each build, and of the floor below the first. */
export interface BuildFigures {
  cold: number
  /** The finished HTML of all documents printed and finished by the same browser, and nothing else. */
  floor: number
  oneRoom: number
  same: number
}

/** Documents printed side by side, as in a build. */
const tabs = 2

/**
 * Builds a demo job from nothing, after a change to one room, and after no change, and prints the first build's finished HTML alone for
 * a floor, all in one run; told as ratios.
 * @throws Fault where there is no browser, nothing to change, or a build ends with anything but 0
 */
export async function benchBuild({ ref, changed, env, print }: BuildBench): Promise<BuildFigures> {
  const folder = mkdtempSync(join(tmpdir(), "storey-rod-bench-"))
  try {
    const jobsDir = join(folder, "jobs")
    for (const name of ["catalogue.yaml", ref])
      cpSync(join(demoJobs, name), join(jobsDir, name), { recursive: true })
    const file = join(jobsDir, ref, changed.file)
    const after = readFileSync(file, "utf8").replace(changed.find, changed.put)
    if (after === readFileSync(file, "utf8")) throw new Fault(`${changed.file} holds nothing to change`)
    const floor = await floorOf(jobsDir, ref, { staging: join(folder, "finished"), env })
    const build = () => seconds(() => built(jobsDir, join(folder, "output"), env))
    const cold = await build()
    writeFileSync(file, after)
    const oneRoom = await build()
    const same = await build()
    const figures = { cold, floor, oneRoom, same }
    print(
      `${ref}: built from nothing in ${cold.toFixed(1)} s, ${(cold / floor).toFixed(2)} of its finished HTML printed alone; after a change to one room ${(oneRoom / cold).toFixed(2)} of that, after none ${(same / cold).toFixed(3)}`,
    )
    return figures
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const demoJobs = fileURLToPath(new URL("../../../jobs", import.meta.url))

async function seconds(work: () => Promise<void>): Promise<number> {
  const begun = performance.now()
  await work()
  return (performance.now() - begun) / 1000
}

async function built(jobsDir: string, outputDir: string, env: NodeJS.ProcessEnv): Promise<void> {
  const said: string[] = []
  const write = (text: string) => void said.push(text)
  const status = await buildCommand(
    { jobsDir, outputDir, shard: { part: 1, of: 1 }, debug: false },
    { terminal: { out: write, err: write, progress: () => {} }, env },
  )
  if (status !== exitStatus.done) throw new Fault(`the build ended with ${status}:\n${said.join("\n")}`)
}

/** Seconds that the browser takes, started for it, to print the finished HTML of every document, and we to finish the PDFs. */
async function floorOf(
  jobsDir: string,
  only: string,
  { staging, env }: { staging: string; env: NodeJS.ProcessEnv },
): Promise<number> {
  const search = findBrowser(env)
  if ("missing" in search) throw new Fault(search.missing)
  const { jobs } = await prepareJobs({ jobsDir, only })
  const site = siteData(jobs)
  await writeSite({ site: async () => site, staging })
  const none = { attachments: new Map(), pressHash: "bench", progress: () => {} }
  await withBrowser(search.found, (press) => printDocuments(press, site.documents, { staging, ...none }))
  const files = site.documents
    .toSorted((a, b) => b.pages.length - a.pages.length)
    .map(({ path }) => join(staging, "press", `${path}.planned.html`))
  return seconds(() => withBrowser(search.found, (press) => printAll(press, files)))
}

async function printAll(press: Press, files: readonly string[]): Promise<void> {
  const waiting = [...files]
  const tab = async (): Promise<void> => {
    for (let file = waiting.shift(); file; file = waiting.shift()) {
      const { pdf } = await printPdf(press, file, { contentWidth: textArea.portrait.width })
      await finishPdf(pdf, {
        title: file,
        language: "en-GB",
        created: anyDay,
        documentKey: file,
        attachments: [],
        pageLabels: [],
      })
    }
  }
  await Promise.all(Array.from({ length: tabs }, tab))
}

const anyDay = "2027-01-01T00:00:00.000Z"
