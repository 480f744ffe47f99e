import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { WrongUsage } from "../../src/commands/arguments.ts"
import { issueCommand } from "../../src/commands/issue.ts"
import { prepareJobs } from "../../src/commands/prepare.ts"

const top = new URL("../..", import.meta.url).pathname
const folder = mkdtempSync(join(tmpdir(), "issue-test-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function ownJobs(): string {
  const jobs = mkdtempSync(join(folder, "jobs-"))
  for (const name of ["catalogue.yaml", "garden-room"])
    cpSync(join(top, "jobs", name), join(jobs, name), { recursive: true })
  return jobs
}

async function issue(jobs: string, ...args: string[]): Promise<{ status: number; said: string }> {
  const said: string[] = []
  const write = (text: string) => void said.push(text)
  const terminal = { out: write, err: write, progress: () => {} }
  const status = await issueCommand(["garden-room", "--jobs", jobs, ...args], {
    terminal,
    today: "2027-03-02",
  })
  return { status, said: said.join("\n") }
}

describe("issuing a job", () => {
  it("writes a record once, none where nothing changed, and keeps the letter of unchanged sheets", {
    timeout: 120_000,
  }, async () => {
    const jobs = ownJobs()
    expect((await issue(jobs, "--reason", "first issue")).status).toBe(0)
    const first = readFileSync(join(jobs, "garden-room/issues/a.yaml"), "utf8")
    expect(first).toContain("revision: A")
    expect(first).toContain("on: 2027-03-02")

    const again = await issue(jobs, "--reason", "nothing changed")
    expect(again.said).toContain("no sheet has changed since revision A")
    expect(readdirSync(join(jobs, "garden-room/issues"))).toEqual(["a.yaml"])

    const room = join(jobs, "garden-room/rooms/g1.yaml")
    writeFileSync(room, readFileSync(room, "utf8").replace("heights: [2400]", "heights: [2410]"))
    expect((await issue(jobs, "--reason", "ceiling taped again", "--on", "2027-03-09")).status).toBe(0)
    expect(readFileSync(join(jobs, "garden-room/issues/a.yaml"), "utf8")).toBe(first)

    const { jobs: set } = await prepareJobs({ jobsDir: jobs })
    const letters = new Map(set[0]!.sheets.map((sheet) => [sheet.kind, sheet.revision.letter]))
    expect(letters.get("glance")).toBe("B")
    expect(letters.get("floor")).toBe("A")
    expect(set[0]!.packs.find((pack) => pack.id === "reprint")?.sheets.map((sheet) => sheet.kind)).toContain(
      "revision-log",
    )
  })

  it("never writes over a record, not even one that came while it was working", async () => {
    const jobs = ownJobs()
    const folder = join(jobs, "garden-room/issues")
    const working = issue(jobs, "--reason", "first")
    mkdirSync(folder)
    writeFileSync(join(folder, "a.yaml"), "another's\n")
    const { status, said } = await working
    expect(status).toBe(1)
    expect(said).toContain("never changed")
    expect(readFileSync(join(folder, "a.yaml"), "utf8")).toBe("another's\n")
    expect(readdirSync(folder)).toEqual(["a.yaml"])
  })

  it("issues nothing from a job with an error", async () => {
    const jobs = ownJobs()
    const room = join(jobs, "garden-room/rooms/g1.yaml")
    writeFileSync(room, readFileSync(room, "utf8").replace("length: 3600", "length: -3600"))
    expect((await issue(jobs, "--reason", "first")).status).toBe(1)
    expect(existsSync(join(jobs, "garden-room/issues"))).toBe(false)
  })

  it.each([[[]], [["--reason", " "]], [["--reason", "x", "--on", "2027-02-30"]]])(
    "is refused with %j",
    async (args) => {
      await expect(issue(ownJobs(), ...args)).rejects.toBeInstanceOf(WrongUsage)
    },
  )
})
