import { describe, expect, it } from "vitest"

import type { Machine } from "../../../src/press/browser/find.ts"
import { findBrowser } from "../../../src/press/browser/find.ts"

function machine(files: readonly string[], more: Partial<Machine> = {}): Machine {
  return {
    platform: "linux",
    arch: "x64",
    exists: (path) => files.includes(path),
    ownBrowser: () => null,
    ...more,
  }
}

describe("findBrowser", () => {
  it("takes the path that is set, and no other", () => {
    const search = findBrowser(
      { STOREY_ROD_BROWSER: "/opt/mine", PATH: "/usr/bin" },
      machine(["/opt/mine", "/usr/bin/chromium"]),
    )
    expect(search).toEqual({ found: [{ source: "set", path: "/opt/mine" }] })
  })

  it("says so when the path that is set leads nowhere, rather than take another", () => {
    const search = findBrowser(
      { STOREY_ROD_BROWSER: "/opt/gone", PATH: "/usr/bin" },
      machine(["/usr/bin/chromium"]),
    )
    expect(search).toEqual({ missing: expect.stringContaining("/opt/gone") })
  })

  it("prefers puppeteer's own browser, then the system's in order of the PATH, then the packaged one", () => {
    const files = ["/cache/chrome", "/usr/bin/chromium", "/usr/local/bin/google-chrome"]
    const search = findBrowser(
      { PATH: "/usr/local/bin:/usr/bin" },
      machine(files, { ownBrowser: () => "/cache/chrome" }),
    )
    expect(search).toEqual({
      found: [
        { source: "system", path: "/cache/chrome" },
        { source: "system", path: "/usr/local/bin/google-chrome" },
        { source: "system", path: "/usr/bin/chromium" },
        { source: "packaged" },
      ],
    })
  })

  it("leaves out a browser of puppeteer's that was never downloaded", () => {
    expect(findBrowser({}, machine([], { ownBrowser: () => "/cache/chrome" }))).toEqual({
      found: [{ source: "packaged" }],
    })
  })

  it("takes the packaged one alone when asked to", () => {
    const search = findBrowser(
      { STOREY_ROD_BROWSER: "packaged", PATH: "/usr/bin" },
      machine(["/usr/bin/chromium"]),
    )
    expect(search).toEqual({ found: [{ source: "packaged" }] })
  })

  it.each([
    ["darwin", "/Applications/Chromium.app/Contents/MacOS/Chromium"],
    ["win32", "C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe"],
  ] as const)("knows where %s keeps browsers", (platform, path) => {
    const search = findBrowser({ PROGRAMFILES: "C:\\Program Files" }, machine([path], { platform }))
    expect(search).toEqual({ found: [{ source: "system", path }] })
  })

  it.each([
    ["darwin", "x64"],
    ["win32", "x64"],
    ["linux", "arm64"],
  ] as const)("says what to do on a machine of %s %s without any", (platform, arch) => {
    const search = findBrowser({ PATH: "/usr/bin" }, machine([], { platform, arch }))
    expect(search).toEqual({ missing: expect.stringContaining("STOREY_ROD_BROWSER") })
  })
})
