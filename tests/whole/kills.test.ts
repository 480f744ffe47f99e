import { type ChildProcess, spawn } from "node:child_process"
import { createHash } from "node:crypto"
import { once } from "node:events"
import { readFileSync, rmSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { filesBelow, healOutput } from "../../src/press/output-tree.ts"
import { copyOfJob, ownFolder, ref, top } from "./job-copy.ts"

/**
 * Real builds killed at random moments, on request as each takes seconds: `KILLS=200 npm test -- tests/whole/kills.test.ts`; the
 * swap of the trees alone is killed in `tests/press/output-tree.test.ts` always. Most build the site and the records
 * alone (no browser is named that is there); one in `printedOneIn` prints.
 */
const kills = Number(process.env.KILLS ?? 0)
const printedOneIn = 20

const folder = ownFolder()
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const output = join(folder, "output")
const jobs = copyOfJob(folder, {})
const room = join(jobs, ref, "rooms", "g1.yaml")
const asMeasured = readFileSync(room, "utf8")
const texts = { old: asMeasured, new: asMeasured.replace("heights: [2400]", "heights: [2410]") }

function started(into: string, printed: boolean): ChildProcess {
  const entry = join(top, "src/commands/run.ts")
  return spawn(process.execPath, ["--import", "tsx", entry, "build", "--jobs", jobs, "--output", into], {
    cwd: top,
    stdio: "ignore",
    detached: true,
    env: { ...process.env, STOREY_ROD_BROWSER: printed ? "packaged" : "/no/browser" },
  })
}

async function built(text: string, into: string, printed: boolean): Promise<{ sum: string; took: number }> {
  writeFileSync(room, text)
  const begun = performance.now()
  const child = started(into, printed)
  const [status] = await once(child, "exit")
  expect(status).toBe(printed ? 0 : 3)
  return { sum: sumOf(into), took: performance.now() - begun }
}

/** One sum over every file that a reader of the output sees, and its path. */
function sumOf(into: string): string {
  const sum = createHash("sha256")
  for (const half of ["site", "print"])
    for (const { path, bytes } of filesBelow(join(into, half))) sum.update(`${half}/${path}\n`).update(bytes)
  return sum.digest("hex")
}

describe.skipIf(kills === 0)("a build that is killed", () => {
  it("leaves the last good tree or the new one, whole", { timeout: 0 }, async () => {
    expect(texts.new).not.toBe(texts.old)
    const lost: string[] = []
    const seen = { old: 0, new: 0, wholeBeforeHealing: 0 }
    for (const printed of kills >= printedOneIn ? [false, true] : [false]) {
      rmSync(output, { recursive: true, force: true })
      const good = new Map<string, "old" | "new">()
      const { sum: next } = await built(texts.new, output, printed)
      good.set(next, "new")
      const { sum, took } = await built(texts.old, output, printed)
      good.set(sum, "old")
      expect(good.size).toBe(2)
      const share = kills >= printedOneIn ? (printed ? 1 / printedOneIn : 1 - 1 / printedOneIn) : 1
      for (let kill = 0; kill < Math.round(kills * share); kill++) {
        writeFileSync(room, kill % 2 === 0 ? texts.new : texts.old)
        const child = started(output, printed)
        const gone = once(child, "exit")
        // Half of them anywhere, half near the end, where the trees change places.
        const at = took * (Math.random() < 0.5 ? Math.random() : 0.8 + 0.3 * Math.random())
        await Promise.race([gone, new Promise((over) => setTimeout(over, at))])
        if (child.exitCode === null) process.kill(-child.pid!, "SIGKILL")
        await gone
        if (good.has(sumOf(output))) seen.wholeBeforeHealing += 1
        healOutput(output)
        const came = good.get(sumOf(output))
        if (came) seen[came] += 1
        else lost.push(`kill ${kill} after ${at.toFixed(0)} ms${printed ? ", printing" : ""}`)
      }
    }
    expect(lost).toEqual([])
    if (process.env.KILLS) console.info(`${kills} kills, trees lost: ${lost.length}; ${JSON.stringify(seen)}`)
  })
})
