import { chmodSync, writeFileSync } from "node:fs"
import { createServer } from "node:http"
import { join } from "node:path"

import { describe, expect, it } from "vitest"

import { Fault } from "../../../src/kernels/fault.ts"
import type { FoundBrowser } from "../../../src/press/browser/find.ts"
import { findBrowser } from "../../../src/press/browser/find.ts"
import { withBrowser } from "../../../src/press/browser/launch.ts"
import { fileAddress, htmlFile, withTestPress } from "../inspect/press.ts"

describe("withBrowser", () => {
  it("states version, source and sandbox", async () => {
    await withTestPress(async (press) => {
      expect(press.version).toMatch(/^(Headless)?Chrome\/\d+\./)
      if (press.source === "packaged") expect(press.version).toMatch(/\/147\./)
      if (process.getuid?.() === 0) expect(press.sandboxed).toBe(false)
    })
  })

  it("keeps the network shut, even to this machine, and reports what was asked for", async () => {
    let visits = 0
    const server = createServer((_request, response) => {
      visits += 1
      response.end("seen")
    })
    await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready))
    const bound = server.address()
    const address = `http://127.0.0.1:${typeof bound === "object" ? bound?.port : ""}/pixel.png`
    try {
      await withTestPress(async (press, folder) => {
        const page = await press.newPage()
        const planted = [
          `<img src="${address}" alt="">`,
          `<p style="background:url(${address}?css)">Text</p>`,
          `<iframe src="${address}?frame"></iframe>`,
          `<script>fetch("${address}?fetch").catch(() => {})</script>`,
        ]
        await page.goto(fileAddress(htmlFile(folder, planted.join(""))))
        await page.evaluate(`fetch("${address}?later").catch(() => {})`)
        const asked = ["", "?css", "?frame", "?fetch", "?later"].map((kind) => `${address}${kind}`)
        expect([...press.blocked].sort()).toEqual(asked.sort())
      })
    } finally {
      server.close()
    }
    expect(visits).toBe(0)
  })

  it.skipIf(process.platform !== "linux")(
    "tries the next browser when the first does not start",
    async () => {
      await withTestPress(async (_press, folder) => {
        const stub = join(folder, "no-browser")
        writeFileSync(stub, "#!/bin/sh\nexit 1\n")
        chmodSync(stub, 0o755)
        const search = findBrowser({ ...process.env, STOREY_ROD_BROWSER: "packaged" })
        const next = "found" in search ? search.found : []
        const found: FoundBrowser[] = [{ source: "system", path: stub }, ...next]
        expect(await withBrowser(found, async (press) => press.source)).toBe("packaged")
      })
    },
  )

  it("is a fault naming each browser when none starts", async () => {
    const nowhere = [{ source: "set", path: "/nowhere/browser" }] as const
    const start = withBrowser(nowhere, async () => "started")
    await expect(start).rejects.toThrow(Fault)
    await expect(start).rejects.toThrow("/nowhere/browser")
  })

  it("closes the browser when its use fails", async () => {
    let closed = false
    const use = withTestPress(async (press) => {
      const page = await press.newPage()
      page.on("close", () => {
        closed = true
      })
      page.browser().on("disconnected", () => {
        closed = true
      })
      throw new Error("the use failed")
    })
    await expect(use).rejects.toThrow("the use failed")
    expect(closed).toBe(true)
  })

  it("starts the browser again when it crashes, once", async () => {
    await withTestPress(async (press) => {
      let tries = 0
      const title = await press.withPage({ name: "a page", limit: 60_000 }, async (page) => {
        tries += 1
        if (tries === 1) {
          page.browser().process()?.kill("SIGKILL")
          await page.evaluate("1 + 1")
        }
        return page.evaluate("1 + 1")
      })
      expect([title, tries]).toEqual([2, 2])
      const always = press.withPage({ name: "a page", limit: 60_000 }, async (page) => {
        page.browser().process()?.kill("SIGKILL")
        return page.evaluate("1 + 1")
      })
      await expect(always).rejects.toThrow(/crashed .* a page, and when tried again it crashed/)
    })
  })

  it("gives up a page that hangs, after trying it once more", async () => {
    await withTestPress(async (press, folder) => {
      const hanging = fileAddress(htmlFile(folder, "<script>for (;;);</script>"))
      let tries = 0
      const print = press.withPage({ name: "a page", limit: 1500 }, async (page) => {
        tries += 1
        await page.goto(hanging, { timeout: 0 })
      })
      await expect(print).rejects.toThrow(/not done within 1.5 s while printing a page/)
      expect(tries).toBe(2)
    })
  })

  it("throws on what its user throws, without trying again", async () => {
    await withTestPress(async (press) => {
      let tries = 0
      const use = press.withPage({ name: "a page", limit: 60_000 }, async () => {
        tries += 1
        throw new Fault("does not fit")
      })
      await expect(use).rejects.toThrow("does not fit")
      expect(tries).toBe(1)
    })
  })
})
