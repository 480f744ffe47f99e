import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"

import { expect, it } from "vitest"

import { unpackBrowser } from "../../../src/press/browser/packaged.ts"

const canUnpack = process.platform === "linux" && process.arch === "x64"

it.skipIf(!canUnpack)(
  "unpacks beside a binary left there by another version, and leaves it alone",
  async () => {
    const before = process.env.TMPDIR
    const folder = mkdtempSync(join(tmpdir(), "storey-rod-press-test-"))
    process.env.TMPDIR = folder
    try {
      writeFileSync(join(folder, "chromium"), "a stale binary")
      const both = await Promise.all([unpackBrowser(), unpackBrowser()])
      const [first, second] = both
      expect(first?.path).toBe(second?.path)
      expect(first?.packageVersion).toMatch(/^\d+\.\d+\.\d+$/)
      expect(first?.path).toContain(first?.packageVersion)
      expect(dirname(first?.path ?? "")).not.toBe(folder)
      expect(statSync(first?.path ?? "").size).toBeGreaterThan(100_000_000)
      expect(existsSync(first?.env(false).FONTCONFIG_FILE ?? "")).toBe(true)
      expect(process.env.TMPDIR).toBe(folder)
      expect(process.env.AWS_LAMBDA_JS_RUNTIME).toBeUndefined()
    } finally {
      if (before === undefined) delete process.env.TMPDIR
      else process.env.TMPDIR = before
      rmSync(folder, { recursive: true, force: true })
    }
  },
)
