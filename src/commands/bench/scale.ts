import { execFile } from "node:child_process"
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { promisify } from "node:util"
import { Fault } from "../../kernels/fault.ts"
import { archiveOfJobs } from "./archive-of-jobs.ts"

/** What is measured, and where to print. */
export interface ScaleBench {
  /** Numbers of jobs, rising; each is built on its own. */
  sizes: readonly number[]
  /** Rooms of each job. */
  rooms: number
  print(line: string): void
}

/** One archive as it was built. */
export interface ScaleFigures {
  jobs: number
  sheets: number
  seconds: number
  /** Peak memory of the building process, bytes. */
  peak: number
}

/**
 * Builds archives of several sizes, site and data without paper, each in a process of its own: time, peak memory, cost a sheet, and
 * the exponent with which time grows.
 */
export async function benchScale({
  sizes,
  rooms,
  print,
}: ScaleBench): Promise<{ archives: ScaleFigures[]; exponent: number }> {
  const archives: ScaleFigures[] = []
  for (const jobs of sizes) {
    const figures = await built(jobs, rooms)
    archives.push(figures)
    print(
      `${jobs} jobs of ${rooms} rooms: ${figures.seconds.toFixed(1)} s, ${figures.sheets} sheets, ${((1000 * figures.seconds) / figures.sheets).toFixed(1)} ms a sheet, peak memory ${Math.round(figures.peak / megabyte)} MB`,
    )
  }
  const exponent = growth(archives)
  print(`time grows with the number of jobs to the power of ${exponent.toFixed(2)}`)
  return { archives, exponent }
}

const megabyte = 1_000_000

/** The exponent of a power law through the figures, by least squares of the logarithms. */
export function growth(archives: readonly Pick<ScaleFigures, "jobs" | "seconds">[]): number {
  const points = archives.map(({ jobs, seconds }) => ({ x: Math.log(jobs), y: Math.log(seconds) }))
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const x = mean(points.map((point) => point.x))
  const y = mean(points.map((point) => point.y))
  const across = points.reduce((sum, point) => sum + (point.x - x) * (point.y - y), 0)
  return across / points.reduce((sum, point) => sum + (point.x - x) ** 2, 0)
}

async function built(jobs: number, rooms: number): Promise<ScaleFigures> {
  const folder = mkdtempSync(join(tmpdir(), "storey-rod-scale-"))
  try {
    const jobsDir = join(folder, "jobs")
    archiveOfJobs({ from: demoJobs, ref: "garden-room", to: jobsDir, jobs, rooms })
    const output = join(folder, "output")
    const { seconds, peak } = await inItsOwnProcess(jobsDir, output)
    return { jobs, sheets: sheetsOf(output), seconds, peak }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const demoJobs = fileURLToPath(new URL("../../../jobs", import.meta.url))
const program = fileURLToPath(new URL("./scale-build.ts", import.meta.url))

async function inItsOwnProcess(jobsDir: string, output: string): Promise<{ seconds: number; peak: number }> {
  const { stdout, stderr } = await promisify(execFile)(process.execPath, [
    "--import",
    "tsx",
    program,
    jobsDir,
    output,
  ])
  const line = stdout.trim().split("\n").at(-1) ?? ""
  if (!line.startsWith("{")) throw new Fault(`the build said nothing of its time: ${stderr}`)
  return JSON.parse(line)
}

/** Sheets of all jobs, by their manifests. */
function sheetsOf(output: string): number {
  const print = join(output, "print")
  return readdirSync(print, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== "assets")
    .reduce((sum, { name }) => sum + manifestSheets(join(print, name)), 0)
}

function manifestSheets(folder: string): number {
  return JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8")).sheets.length
}
