import { createHash } from "node:crypto"
import { describe, expect, it } from "vitest"
import { contentPolicy, headerFiles } from "../../../src/press/site/policy.ts"

const inline = { style: "p { margin: 0 }", script: "let a = 1" }

describe("the content security policy", () => {
  it("shuts everything that is not named, and lets nothing stand in the page unsummed", () => {
    expect(contentPolicy()).toMatch(/^default-src 'none'; /)
    for (const policy of [contentPolicy(), contentPolicy(inline)])
      expect(policy).not.toMatch(/unsafe|\*|https?:/)
  })

  it("names texts in a page by their sha256, as the standard on content security asks (CSP level 3, 2.3.1)", () => {
    const sum = createHash("sha256").update(inline.script).digest("base64")
    expect(contentPolicy(inline)).toContain(`script-src 'self' 'sha256-${sum}'`)
  })

  it("is sent by header too, with what only a header can say", () => {
    const files = headerFiles(inline)
    expect(Object.keys(files)).toEqual(["_headers", ".htaccess"])
    for (const text of Object.values(files)) {
      expect(text).toContain(`${contentPolicy(inline)}; frame-ancestors 'none'`)
      expect(text).toContain("noindex")
    }
    expect(files[".htaccess"]).not.toContain("\n\n")
  })
})
