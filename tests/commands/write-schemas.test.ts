import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { writeSchemas } from "../../src/commands/write-schemas.ts"
import { smallTrades } from "../intake/broken-jobs.ts"

describe("writeSchemas", () => {
  it("writes one JSON file for each kind of job file", () => {
    const dir = mkdtempSync(join(tmpdir(), "schemas-"))
    try {
      const paths = writeSchemas(dir, smallTrades)
      expect(readdirSync(join(dir, ".schema")).length).toBe(8)
      for (const path of paths) expect(JSON.parse(readFileSync(path, "utf8"))).toHaveProperty("properties")
    } finally {
      rmSync(dir, { recursive: true })
    }
  })
})
