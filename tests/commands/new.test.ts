import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { workOut } from "../../src/build.ts"
import { newCode, newCommand } from "../../src/commands/new.ts"
import { findingText } from "../../src/intake/finding-text.ts"
import { readJobs } from "../../src/intake/read-jobs.ts"
import { jobFile } from "../../src/intake/schema/job.ts"
import { trades } from "../../src/trades/index.ts"

let jobsDir = ""
beforeEach(() => {
  jobsDir = mkdtempSync(join(tmpdir(), "new-"))
})
afterEach(() => rmSync(jobsDir, { recursive: true, force: true }))

async function made(...args: string[]) {
  const err: string[] = []
  const status = await newCommand([...args, "--jobs", jobsDir], {
    out: () => undefined,
    err: (text) => err.push(text),
    today: "2027-01-31",
  })
  return { status, err }
}

describe("newCommand", () => {
  it("writes a job in which nothing is wrong", async () => {
    expect(await made("my-loft")).toEqual({ status: 0, err: [] })
    const { jobs, findings } = readJobs({ jobsDir, trades })
    expect([...findings, ...jobs.flatMap((job) => job.findings)].map(findingText)).toEqual([])
    const job = jobs[0]?.job
    expect(job?.ref).toBe("my-loft")
    expect([...(job?.works.get("G1")?.keys() ?? [])]).toEqual([
      "floors",
      "joinery",
      "electrics",
      "decorating",
    ])
    // 28 days after 31 January 2027.
    expect([job?.job.prepared.on, job?.programme.start]).toEqual(["2027-01-31", "2027-02-28"])
  })

  it("writes a job that every stage takes as it stands, with nothing but notes", async () => {
    await made("my-loft")
    const [read] = readJobs({ jobsDir, trades }).jobs
    const { findings } = await workOut(read!.job!, trades)
    expect(
      findings.filter((finding) => finding.severity !== "note").map((finding) => finding.message),
    ).toEqual([])
  })

  it("names in every file the schema that its editor reads", async () => {
    await made("my-loft")
    const files = readdirSync(join(jobsDir, "my-loft"), { recursive: true, encoding: "utf8" }).filter(
      (file) => file.endsWith(".yaml"),
    )
    expect(files.length).toBe(7)
    for (const file of files) {
      const [first] = readFileSync(join(jobsDir, "my-loft", file), "utf8").split("\n")
      const kind = file.startsWith("rooms") ? "../../.schema/room" : `../.schema/${file.replace(".yaml", "")}`
      expect(first).toBe(`# yaml-language-server: $schema=${kind}.schema.json`)
      expect(readFileSync(join(jobsDir, "my-loft", file), "utf8")).not.toContain("{{")
    }
  })

  it("never touches what is there", async () => {
    await made("my-loft")
    const path = join(jobsDir, "my-loft", "job.yaml")
    const before = readFileSync(path, "utf8")
    expect((await made("my-loft")).status).toBe(2)
    expect(readFileSync(path, "utf8")).toBe(before)
  })

  it.each(["../outside", "My Loft", "x", "", "-loft", "a".repeat(33)])(
    "does not take the ref '%s'",
    async (ref) => {
      expect((await made(ref)).status).toBe(2)
      expect(readdirSync(jobsDir)).toEqual([])
      expect(existsSync(join(jobsDir, "../outside"))).toBe(false)
    },
  )
})

describe("newCode", () => {
  it("is in the form of job.yaml, and another every time", () => {
    const codes = Array.from({ length: 200 }, newCode)
    for (const code of codes) expect(jobFile.shape.code.safeParse(code).success).toBe(true)
    expect(new Set(codes).size).toBe(200)
  })
})
