import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { copyAssets, templatesFolder } from "../../src/press/templates.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-assets-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe("what pages take besides their own text", () => {
  it("is copied beside office list and documents to print", () => {
    copyAssets(folder)
    for (const place of ["print", "press"]) {
      for (const name of ["paper.css", "screen.css", "fonts/IBMPlexSans-Regular.woff2"]) {
        const copy = readFileSync(join(folder, place, "assets", name))
        const original = join(templatesFolder, name.startsWith("fonts/") ? name : `assets/${name}`)
        expect(copy.equals(readFileSync(original)), `${place}/${name}`).toBe(true)
      }
    }
  })

  it("is all that its style sheets ask for, and nothing comes from elsewhere", () => {
    copyAssets(folder)
    for (const name of ["paper.css", "screen.css"]) {
      const css = readFileSync(join(folder, "print", "assets", name), "utf8")
      const asked = [...css.matchAll(/url\("?([^")]+)"?\)/g)].map(([, target = ""]) => target)
      for (const target of asked.filter((each) => !each.startsWith("data:")))
        expect(existsSync(join(folder, "print", "assets", target)), target).toBe(true)
      expect(css).not.toMatch(/https?:|@import/)
    }
  })
})
