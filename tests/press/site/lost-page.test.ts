import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { Fault } from "../../../src/kernels/fault.ts"
import { standingAlone, writeLostPage } from "../../../src/press/site/lost-page.ts"
import { contentPolicy } from "../../../src/press/site/policy.ts"

const staging = mkdtempSync(join(tmpdir(), "storey-rod-lost-"))
afterAll(() => rmSync(staging, { recursive: true, force: true }))
const written = `<head><meta content="${contentPolicy().replaceAll("'", "&#39;")}">
<link rel="stylesheet" href="assets/site.css?1"><script src="assets/find.js?1" defer></script></head><body></body>`

describe("the page for an address that leads nowhere", () => {
  it("asks for no file, so that it holds at any depth", () => {
    const html = standingAlone(written, { style: "p { color: #000 }", script: "'$&'" })
    expect(html).not.toContain("assets/")
    expect(html).toContain("<style>p { color: #000 }</style>")
    expect(html).toContain("<script>'$&'</script>\n</body>")
    expect(html.match(/&#39;sha256-/g)).toHaveLength(2)
  })

  it("is a fault of ours where the template has another form", () => {
    expect(() => standingAlone("<head></head>", { style: "", script: "" })).toThrow(Fault)
  })

  it("has the files of headers beside it, with its sums", () => {
    mkdirSync(join(staging, "site"))
    writeFileSync(join(staging, "site", "404.html"), written)
    writeLostPage(staging)
    const sums = readFileSync(join(staging, "site", "404.html"), "utf8").match(/sha256-[^&]+/g)!
    for (const name of ["_headers", ".htaccess"])
      for (const sum of sums) expect(readFileSync(join(staging, "site", name), "utf8")).toContain(sum)
  })
})
