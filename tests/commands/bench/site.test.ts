import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import { afterAll, beforeAll, expect, it } from "vitest"
import { WrongUsage } from "../../../src/commands/arguments.ts"
import { benchSite, pageWeights } from "../../../src/commands/bench/site.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-bench-site-"))
const css = "p { color: #000 }"
const home = '<!doctype html><title>a</title><link rel="stylesheet" href="assets/a.css?1"><p>first'
const hub =
  '<!doctype html><title>b</title><link rel="stylesheet" href="../assets/a.css?1"><p>hub, more words'

beforeAll(() => {
  for (const below of ["assets", "7k3m9x2q"]) mkdirSync(join(folder, below))
  writeFileSync(join(folder, "assets", "a.css"), css)
  writeFileSync(join(folder, "index.html"), home)
  writeFileSync(join(folder, "7k3m9x2q", "index.html"), hub)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it("weighs each page with all it asks for, heaviest first", () => {
  const packed = (text: string) => gzipSync(text).length
  expect(pageWeights(folder)).toEqual([
    { path: "7k3m9x2q/index.html", bytes: packed(hub) + packed(css) },
    { path: "index.html", bytes: packed(home) + packed(css) },
  ])
})

it("tells when each kind of page is first painted; on one bar that takes at least the page's and its style sheet's way", async () => {
  const lines: string[] = []
  const { firstPaint } = await benchSite({ folder, print: (line) => lines.push(line) })
  expect(firstPaint.map(({ path }) => path)).toEqual(["index.html", "7k3m9x2q/index.html"])
  expect(lines).toHaveLength(3)
  for (const { ms } of firstPaint) expect(ms).toBeGreaterThan(400)
})

it("wants a built site", async () => {
  await expect(benchSite({ folder: join(folder, "assets"), print: () => {} })).rejects.toThrow(WrongUsage)
})
