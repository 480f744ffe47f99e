import { createHash } from "node:crypto"
import { describe, expect, it } from "vitest"
import type { Attachment, ReadAttachment } from "../../../src/press/pdf/attachments.ts"
import { alteredFiles, archiveFiles, sumsName } from "../../../src/press/records/archive-files.ts"
import { recordFiles } from "../../../src/press/records/record-files.ts"
import { setJob } from "../../../src/press/set-job.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const job = setJob("tiny", await smallResult())
const source: Attachment = {
  name: "source/job.yaml",
  bytes: new TextEncoder().encode("ref: tiny\n"),
  mime: "application/yaml",
  relationship: "Source",
  description: "What the job was made from: job.yaml",
}
const files = archiveFiles(job, [source], recordFiles(job))
const read = (changed: readonly Attachment[]): ReadAttachment[] =>
  changed.map((file) => ({ ...file, intact: true }))

describe("what an archive pack carries", () => {
  it("is the job's own files, its results, the rulebook and the sums of these", () => {
    const names = files.map((file) => file.name)
    expect(names).toEqual(
      expect.arrayContaining([
        "source/job.yaml",
        "job.json",
        "orders.csv",
        "programme.ics",
        "rulebook.json",
        sumsName,
      ]),
    )
  })

  it("sums every other file by sha256, as Node's own library does", () => {
    const sums = JSON.parse(new TextDecoder().decode(files.at(-1)!.bytes)) as Record<string, string>
    for (const { name, bytes } of files.slice(0, -1)) {
      expect(sums[name]).toBe(createHash("sha256").update(bytes).digest("hex"))
    }
    expect(Object.keys(sums)).toHaveLength(files.length - 1)
  })
})

describe("altered files", () => {
  it("are none where nothing was touched", () => expect(alteredFiles(read(files))).toEqual([]))

  it("are named: changed, taken out, put in, damaged", () => {
    const changed = read(files)
      .filter((file) => file.name !== "orders.csv")
      .map((file) =>
        file.name === "source/job.yaml" ? { ...file, bytes: new TextEncoder().encode("ref: tinY\n") } : file,
      )
      .map((file) => (file.name === "rulebook.json" ? { ...file, intact: false } : file))
    expect(alteredFiles([...changed, { ...read([source])[0]!, name: "source/extra.yaml" }])).toEqual([
      "orders.csv",
      "rulebook.json",
      "source/extra.yaml",
      "source/job.yaml",
    ])
  })
})
