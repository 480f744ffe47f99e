import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { PDFDocument } from "pdf-lib"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { prepareJobs } from "../../src/commands/prepare.ts"
import { reopenCommand } from "../../src/commands/reopen.ts"
import { type Attachment, attach } from "../../src/press/pdf/attachments.ts"
import { archiveFiles } from "../../src/press/records/archive-files.ts"
import { recordFiles } from "../../src/press/records/record-files.ts"

const top = new URL("../..", import.meta.url).pathname
const folder = mkdtempSync(join(tmpdir(), "reopen-test-"))
let files: Attachment[] = []

beforeAll(async () => {
  const jobs = join(folder, "jobs")
  for (const name of ["catalogue.yaml", "garden-room"])
    cpSync(join(top, "jobs", name), join(jobs, name), { recursive: true })
  const prepared = await prepareJobs({ jobsDir: jobs })
  const job = prepared.jobs[0]!
  files = archiveFiles(job, prepared.sources.get("garden-room")!, recordFiles(job))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** A PDF that carries these files, and what the command says of it. */
async function reopened(carried: readonly Attachment[]): Promise<{ status: number; said: string }> {
  const pdf = await PDFDocument.create()
  pdf.addPage()
  attach(pdf, carried, "2027-03-01T00:00:00Z")
  const path = join(mkdtempSync(join(folder, "pdf-")), "archive.pdf")
  writeFileSync(path, await pdf.save())
  const said: string[] = []
  const write = (text: string) => void said.push(text)
  const status = await reopenCommand([path], { out: write, err: write, progress: () => {} })
  return { status, said: said.join("\n") }
}

describe("reopening an archive pack", () => {
  it("gives the same results from the PDF alone", async () => {
    const { status, said } = await reopened(files)
    expect(said).toContain("every result the same")
    expect(said).toContain("No embedded file was altered.")
    expect(status).toBe(0)
  })

  it("names the file in which one digit was changed, and that the results differ", async () => {
    const room = files.find((file) => file.name === "source/rooms/g1.yaml")!
    const text = new TextDecoder().decode(room.bytes)
    const changed = text.replace("heights: [2400]", "heights: [2401]")
    expect(changed).not.toBe(text)
    const bytes = new TextEncoder().encode(changed)
    const { status, said } = await reopened(files.map((file) => (file === room ? { ...file, bytes } : file)))
    expect(said).toContain("source/rooms/g1.yaml: altered")
    expect(said).toContain("the results differ")
    expect(status).toBe(1)
  })

  it("names a file that was taken out and one that was put in", async () => {
    const without = files.filter((file) => file.name !== "orders.csv")
    const added: Attachment = { ...files[0]!, name: "source/rooms/g2.yaml" }
    const { status, said } = await reopened([...without, added])
    expect(said).toContain("orders.csv: altered")
    expect(said).toContain("source/rooms/g2.yaml: altered")
    expect(status).toBe(1)
  })

  it("writes no embedded file outside its own folder", async () => {
    const escaping: Attachment = { ...files[0]!, name: "source/../../../escaped.yaml" }
    const { status } = await reopened([...files, escaping])
    expect(status).toBe(1)
  })

  it("says of a PDF without a job that it is none", async () => {
    const { status, said } = await reopened([])
    expect(said).toContain("holds no job")
    expect(status).toBe(1)
  })
})
