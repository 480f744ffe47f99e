import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { filesInOrder, largestJob, readFolder } from "../../src/intake/folder.ts"
import { fileCases } from "../broken/cases/files.ts"
import { itFindsExactly } from "./broken-cases.ts"

describe("files and folders that are none", () => {
  itFindsExactly(fileCases)
})

describe("a job larger than any house", () => {
  it("is refused file by file once its files together are too large, and answered in short", () => {
    const folder = mkdtempSync(join(tmpdir(), "storey-rod-big-"))
    try {
      mkdirSync(join(folder, "rooms"))
      const text = Array.from({ length: 60_000 }, (_, index) => `k${index}: ${index}`).join("\n")
      for (const name of ["job", "house", "rooms/a1", "rooms/a2"])
        writeFileSync(join(folder, `${name}.yaml`), text)
      const codes = filesInOrder(readFolder(folder)).flatMap((file) => file.findings.map(({ code }) => code))
      expect(text.length * 3).toBeGreaterThan(largestJob)
      expect(codes.filter((code) => code === "job-too-big").length).toBeGreaterThan(0)
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
