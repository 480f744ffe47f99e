import { resourceUsage } from "node:process"
import { buildCommand } from "../build.ts"

/** One build in a process of its own, so that its memory is its own: site and data without paper; says its time and peak memory. */
const [jobsDir = "jobs", outputDir = "output"] = process.argv.slice(2)
const quiet = {
  out: () => {},
  err: (text: string) => void process.stderr.write(`${text}\n`),
  progress: () => {},
}
const begun = performance.now()
await buildCommand(
  { jobsDir, outputDir, shard: { part: 1, of: 1 }, debug: false },
  { terminal: quiet, env: { STOREY_ROD_BROWSER: "/no browser, so no paper" } },
)
const seconds = (performance.now() - begun) / 1000
process.stdout.write(`${JSON.stringify({ seconds, peak: resourceUsage().maxRSS * 1024 })}\n`)
