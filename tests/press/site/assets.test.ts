import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, it } from "vitest"
import { assetAddress, siteAssets, workerSource, writeSiteAssets } from "../../../src/press/site/assets.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-site-assets-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it("puts style sheet, scripts and the bundled timer beside the site, and the worker not", () => {
  writeSiteAssets(folder)
  expect(siteAssets().map(({ name }) => name)).toEqual(["find.js", "site.css", "site.js", "timer.js"])
  for (const { name, bytes } of siteAssets())
    expect(readFileSync(join(folder, "site", "assets", name)).equals(bytes), name).toBe(true)
  expect(existsSync(workerSource)).toBe(true)
})

it("carries the version in the address: the same for all assets of a build", () => {
  expect(assetAddress("site.js")).toMatch(/^assets\/site\.js\?[0-9a-f]{8}$/)
  expect(assetAddress("site.css").split("?")[1]).toBe(assetAddress("site.js").split("?")[1])
})

it("bundles no path of this machine, and nothing that looks for another host", () => {
  const timer = new TextDecoder().decode(siteAssets().find(({ name }) => name === "timer.js")!.bytes)
  expect(timer).not.toContain(process.cwd())
  expect(timer).not.toMatch(/https?:\/\/|\bfetch\(|import\(|\beval\(/)
})
