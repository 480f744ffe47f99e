import { rmSync } from "node:fs"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { prepareJobs } from "../../src/commands/prepare.ts"
import { hasErrors } from "../../src/kernels/finding.ts"
import { copyOfJob, ownFolder, ref } from "../whole/job-copy.ts"

const folder = ownFolder()
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe("jobs made ready", () => {
  it("are read, worked out and set, with what they were written in kept for the archive", async () => {
    const jobsDir = copyOfJob(join(folder, "good"), {})
    const { jobs, findings, sources } = await prepareJobs({ jobsDir })
    expect(hasErrors(findings)).toBe(false)
    expect(jobs.map((job) => job.ref)).toEqual([ref])
    expect(jobs[0]?.sheets.length).toBeGreaterThan(10)
    const names = sources.get(ref)?.map((source) => source.name)
    for (const name of [
      "job.yaml",
      "house.yaml",
      "products.yaml",
      "programme.yaml",
      "rooms/g1.yaml",
      "catalogue.yaml",
    ])
      expect(names).toContain(`source/${name}`)
  })

  it("are left out where they are wrong, and the finding stands at its line and column", async () => {
    const change = {
      file: `${ref}/rooms/g1.yaml`,
      find: "from: 1, to: 3, length: 4500",
      put: "from: 1, to: 3, length: 5500",
    }
    const { jobs, findings } = await prepareJobs({
      jobsDir: copyOfJob(join(folder, "bad"), { changes: [change] }),
    })
    expect(jobs).toEqual([])
    const errors = findings.filter((finding) => finding.severity === "error")
    expect(errors.length).toBeGreaterThan(0)
    for (const { place } of errors) {
      expect(place.file).toBe(`${ref}/rooms/g1.yaml`)
      expect(place.line).toBeGreaterThan(1)
    }
  })

  it("are dealt out between shards, each job to one", async () => {
    const jobsDir = copyOfJob(join(folder, "shards"), {})
    const refsIn = async (part: number) =>
      (await prepareJobs({ jobsDir, shard: { part, of: 2 } })).jobs.map((job) => job.ref)
    expect([await refsIn(1), await refsIn(2)]).toEqual([[ref], []])
  })
})
