import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, it } from "vitest"
import { staticHost } from "../../../src/commands/bench/static-host.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-host-"))
mkdirSync(join(folder, "a"))
writeFileSync(join(folder, "a", "index.html"), "<p>a")
writeFileSync(join(folder, "404.html"), "<p>lost")
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it("serves a folder below a path as a static host does, packed, with its headers, and nothing outside it", async () => {
  const host = await staticHost(folder, { under: "/packs/", headers: { "x-robots-tag": "noindex" } })
  const page = await fetch(`${host.address}a/`)
  expect([page.status, await page.text()]).toEqual([200, "<p>a"])
  expect(page.headers.get("content-encoding")).toBe("gzip")
  expect(page.headers.get("x-robots-tag")).toBe("noindex")
  for (const path of ["b/", "../a/", "..%2f..%2fetc%2fhostname"]) {
    const lost = await fetch(host.address + path)
    expect([lost.status, await lost.text()], path).toEqual([404, "<p>lost"])
  }
  expect(host.asked[0]).toBe("/packs/a/")
  await host.stop()
  await expect(fetch(`${host.address}a/`)).rejects.toThrow()
  await host.start()
  expect((await fetch(`${host.address}a/`)).status).toBe(200)
  await host.stop()
})
