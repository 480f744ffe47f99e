import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs"
import { createRequire } from "node:module"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { gzipSync } from "node:zlib"
import type axe from "axe-core"
import { HtmlValidate } from "html-validate"
import type { Browser, Page } from "puppeteer"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type StaticHost, siteBrowser, staticHost } from "../../../src/commands/bench/static-host.ts"
import { filesBelow } from "../../../src/press/output-tree.ts"
import { issuedSheet } from "../../../src/press/revisions/record.ts"
import { type SetJob, setJob } from "../../../src/press/set-job.ts"
import { writeKeptCopy } from "../../../src/press/site/kept-copy.ts"
import { nextStep } from "../../../src/press/site/timer.ts"
import { siteData } from "../../../src/press/site-data.ts"
import { writeSite } from "../../../src/press/write-site.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const staging = mkdtempSync(join(tmpdir(), "storey-rod-hosted-"))
const site = join(staging, "site")
const code = "7k3m9x2q"
const sequence = "c2-02"
let job: SetJob
let host: StaticHost
let browser: Browser
let html: Map<string, string>
/** Every address any page asked for, and every breach of the policy, over the whole file. */
const asked: string[] = []
const breaches: string[] = []

/** The small job issued twice: one sheet has changed between A and B. */
async function issuedJob(): Promise<SetJob> {
  const result = await smallResult()
  const { sheets } = setJob("tiny", result)
  const record = (revision: string, on: string, old: string) => ({
    revision,
    on,
    by: "foreman",
    reason: "a reason",
    sheets: sheets.map(({ number, fingerprint: { title, hash, parts } }) =>
      issuedSheet.parse({
        number,
        title,
        hash: number === old ? "0".repeat(64) : hash,
        parts: number === old ? [] : parts,
      }),
    ),
  })
  return setJob("tiny", result, [record("A", "2027-02-01", "C2-01"), record("B", "2027-03-01", "")])
}

beforeAll(async () => {
  job = await issuedJob()
  const data = siteData([job])
  await writeSite({ site: async () => data, staging })
  html = new Map(
    filesBelow(site)
      .filter(({ path }) => path.endsWith(".html"))
      .map(({ path, bytes }) => [path, new TextDecoder().decode(bytes)]),
  )
  const lines = readFileSync(join(site, "_headers"), "utf8").split("\n").slice(1).filter(Boolean)
  const headers = Object.fromEntries(
    lines.map((line) =>
      line
        .trim()
        .split(/: (.*)/s)
        .slice(0, 2),
    ),
  )
  host = await staticHost(site, { under: "/packs/", headers })
  browser = await siteBrowser()
})

afterAll(async () => {
  await browser?.close()
  await host?.stop()
  rmSync(staging, { recursive: true, force: true })
})

/** A page of a phone 360 px wide, watched for what it asks and what it must not do. */
async function open(path: string, { script = true } = {}): Promise<Page> {
  const page = await browser.newPage()
  await page.setViewport({ width: 360, height: 740, deviceScaleFactor: 2, isMobile: true, hasTouch: true })
  await page.setJavaScriptEnabled(script)
  page.on("request", (request) => asked.push(request.url()))
  page.on("console", (message) => {
    if (/Content Security Policy/.test(message.text())) breaches.push(`${path}: ${message.text()}`)
  })
  page.on("pageerror", (error) => breaches.push(`${path}: ${error}`))
  await page.goto(host.address + path)
  return page
}

async function textOf(page: Page): Promise<string> {
  return page.$eval("main", (main) => (main.textContent ?? "").replace(/\s+/g, " "))
}

/** Every page of its own kind, the sheets of one room and the saw's, the papers of two: all of them with GENERATED. */
const isOneOfSome = (path: string) =>
  process.env.GENERATED !== undefined ||
  !/^\w{8}\/\w+-/.test(path) ||
  /\/(?:c2-\w+|j-53|c2-0[12]\/[ab])\/index/.test(path)

const sheetWithDrawing = () =>
  [...html].find(([path, text]) => /^\w{8}\/[^/]+\/index\.html$/.test(path) && text.includes("<svg"))![0]

describe("the files of a hosted copy", () => {
  it("are valid by the HTML standard, as a validator reads it", async () => {
    // Roles are named again since cards on a phone change how tables are displayed; the XHTML-minded rules are a matter of style.
    const validator = new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: {
        "no-redundant-role": "off",
        "doctype-style": "off",
        "no-trailing-whitespace": "off",
        "long-title": "off",
        "prefer-native-element": "off",
      },
    })
    const wrong: string[] = []
    // Many pages come of one template and hold the same kinds of blocks: some of each will do, all with GENERATED.
    for (const [path, text] of html) {
      if (!isOneOfSome(path)) continue
      const { results } = await validator.validateString(text)
      for (const { messages } of results)
        wrong.push(
          ...messages.map((each) => `${path}:${each.line}:${each.column} ${each.ruleId} ${each.message}`),
        )
    }
    expect([...new Set(wrong)]).toEqual([])
    const { valid } = await validator.validateString("<p><div></p><img>")
    expect(valid).toBe(false)
  })

  it("link only to files and places that are there", () => {
    const printed = new Set(siteData([job]).documents.map(({ path }) => `${path}.pdf`))
    const lost: string[] = []
    let links = 0
    for (const [path, text] of html) {
      if (path === "404.html") continue
      for (const [, target = ""] of text.matchAll(/ (?:href|src)="([^"]*)"/g)) {
        if (/^(https:|mailto:|data:)/.test(target)) continue
        links++
        const [file = "", place] = target.split("#")
        const full = file === "" ? path : join(dirname(path), file.replace(/\?.*/, ""))
        const there =
          printed.has(`site/${full}`) || (existsSync(join(site, full)) && statSync(join(site, full)).isFile())
        if (!there || (place && !html.get(full)?.includes(`id="${place}"`))) lost.push(`${path}: ${target}`)
      }
    }
    expect(links).toBeGreaterThan(200)
    expect(lost).toEqual([])
  })

  it("weigh less than 60 kB each with all they ask for, compressed", () => {
    const weight = (path: string) => gzipSync(readFileSync(join(site, path))).length
    for (const [path, text] of html) {
      const parts = [...text.matchAll(/ (?:href|src)="([^"]*assets\/[^"?]+)\?[^"]*"/g)].map(([, part = ""]) =>
        join(dirname(path), part),
      )
      expect(
        [path, ...parts].reduce((sum, each) => sum + weight(each), 0),
        path,
      ).toBeLessThan(60_000)
    }
  })

  it("hold no style or script of their own, name no other host to load from, and ask not to be listed", () => {
    for (const [path, text] of html) {
      if (path !== "404.html") {
        expect(text, path).not.toMatch(/<style|\sstyle=|<script(?! src="[./]*assets\/)|\son[a-z]+="/)
        expect(text, path).not.toMatch(/(?:src|srcset|<link[^>]*href)="https?:/)
      }
      expect(text, path).toContain('name="robots" content="noindex, nofollow"')
      expect(text, path).toContain("default-src &#39;none&#39;")
    }
  })

  it("list no job", () => {
    for (const path of ["index.html", "404.html", "published/index.html", "_headers", ".htaccess"])
      expect(readFileSync(join(site, path), "utf8"), path).not.toContain(code)
  })

  it("carry a report on the sheet that names sheet and revision and goes to nobody by itself", () => {
    const link = /href="(mailto:[^"]*)"/.exec(html.get(`${code}/${sequence}/index.html`)!)?.[1] ?? ""
    const report = new URL(link.replaceAll("&amp;", "&"))
    expect(report.pathname).toBe("")
    expect(report.searchParams.get("subject")).toBe("Problem with sheet C2-02, revision A")
    expect(report.searchParams.get("body")).toContain("Sheet C2-02 Order of work, revision A, Mon 1 Feb 2027")
  })
})

describe("a phone with script off", () => {
  it("reads on old paper of a changed sheet what is current, since when, what changed, and where it is", async () => {
    const page = await open(`${code}/c2-01/a/`, { script: false })
    const text = await textOf(page)
    expect(text).toContain(
      "Your paper is revision A of Mon 1 Feb 2027. It is out of date. Current is B, since Mon 1 Mar 2027.",
    )
    expect(text).toContain("Changed With B, Mon 1 Mar 2027:")
    await Promise.all([page.waitForNavigation(), page.click("text/Open current")])
    expect(await textOf(page)).toContain("Current revision: B, Mon 1 Mar 2027")
    await page.close()
  })

  it("reads on old paper of an unchanged sheet that it is current", async () => {
    const page = await open(`${code}/${sequence}/a/`, { script: false })
    expect(await textOf(page)).toContain("Your paper is revision A of Mon 1 Feb 2027. It is current.")
    await page.close()
  })
})

describe("pages for everybody", () => {
  const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8")

  it("show no fault to an accessibility checker, and nothing it could not decide; none is wider than a phone", async () => {
    const paths = [
      "",
      "published/",
      "missing/",
      `${code}/`,
      `${code}/days/`,
      `${code}/timer/`,
      `${code}/published/`,
      `${code}/${sequence}/`,
      sheetWithDrawing(),
      `${code}/c2-01/a/`,
      `${code}/${sequence}/a/`,
    ]
    const found: string[] = []
    for (const path of paths) {
      const page = await open(path)
      const wide = await page.evaluate(() => document.documentElement.scrollWidth)
      if (wide > 360) found.push(`${path}: ${wide} px wide`)
      await page.evaluate(source)
      const { violations, incomplete } = await page.evaluate(() =>
        (globalThis as unknown as { axe: typeof axe }).axe.run({
          runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        }),
      )
      const told = (kind: string, each: axe.Result) =>
        `${path}: ${kind} ${each.id} ${each.nodes[0]?.html.slice(0, 120)} ${each.nodes[0]?.any[0]?.message ?? ""}`
      found.push(...violations.map((each) => told("violation", each)))
      // Lettering in drawings lies on shapes, which the checker cannot see through: it is black, on white or pale grey.
      const lettering = await page.$$eval("svg text", (texts) =>
        texts.map((text) => getComputedStyle(text).fill),
      )
      expect([...new Set(lettering)].join()).toMatch(/^(?:rgb\(0, 0, 0\))?$/)
      const inDrawing = ({ id, nodes }: axe.Result) =>
        id === "color-contrast" && nodes.every((node) => /^<(?:tspan|text)/.test(node.html))
      found.push(...incomplete.filter((each) => !inDrawing(each)).map((each) => told("incomplete", each)))
      await page.close()
    }
    expect(found).toEqual([])
  })

  it("hold at text twice the size, and every control is reached by key", async () => {
    const page = await open(`${code}/${sequence}/`)
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"))
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
    await page.focus("#carry")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Space")
    expect(await page.$eval("input[data-tick]", (box) => (box as HTMLInputElement).checked)).toBe(true)
    await page.close()
  })
})

describe("a drawing", () => {
  it("fits the phone, is enlarged without script, and scrolls in its own frame", async () => {
    const page = await open(sheetWithDrawing(), { script: false })
    const width = () => page.$eval(".paper svg", (svg) => svg.getBoundingClientRect().width)
    expect(await width()).toBeLessThanOrEqual(360)
    await page.click(".enlarge input")
    expect(await width()).toBeGreaterThan(1400)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360)
    await page.close()
  })
})

describe("helpers that need no server", () => {
  it("keep ticks through a reload and carry them out as text", async () => {
    const page = await open(`${code}/${sequence}/`)
    await page.evaluate(() => localStorage.clear())
    await page.reload()
    await page.click("input[data-tick]")
    await page.reload()
    const ticked = await page.$$eval("input[data-tick]", (boxes) =>
      boxes.map((box) => (box as HTMLInputElement).checked),
    )
    expect(ticked[0]).toBe(true)
    expect(ticked.filter(Boolean)).toHaveLength(1)
    await page.click("#carry")
    const text = await page.$eval("#as-text", (area) => (area as HTMLTextAreaElement).value)
    expect(text).toMatch(/^C2-02 Order of work, revision A\ndone .*: Steps in order: 1, Lay/)
    expect(text.split("\n").filter((line) => line.startsWith("not done: "))).toHaveLength(ticked.length - 1)
    await page.goto(`${host.address}${code}/`)
    expect(await page.$eval("#ticked", (said) => said.textContent)).toContain("C2-02")
    await page.close()
  })

  it("tell the earliest next step as the build works it out, over a change of the clock, and where not to", async () => {
    const page = await open(`${code}/timer/`)
    const answer = async (process: string, start: string, temperature: string, humidity: string) => {
      await page.select("[name=process]", process)
      await page.evaluate(
        (values) => {
          for (const [name, value] of Object.entries(values))
            document.querySelector<HTMLInputElement>(`[name=${name}]`)!.value = value
        },
        { start, temperature, humidity },
      )
      await page.click("form button")
      return page.$eval("#answer", (said) => said.textContent ?? "")
    }
    const { rules } = job.result
    const built = (temperature: number, humidity: number) =>
      nextStep(
        {
          process: "trim-solvent",
          temperature,
          humidity,
          start: { date: "2027-03-27", time: "16:00" },
          zone: "Europe/London",
        },
        rules,
      )
    // The clocks of London go forward on the last Sunday of March (Summer Time Act 1972, as amended 2002): 28 March 2027.
    const over = await answer("trim-solvent", "2027-03-27T16:00", "20", "60")
    expect(built(20, 60)).toMatchObject({ hours: 24, at: { date: "2027-03-28", time: "17:00" } })
    expect(over).toContain("not before Sun 28 Mar 17:00, 24 h")
    const cold = built(11, 70)
    if ("doNot" in cold) throw new Error(cold.doNot)
    expect(await answer("trim-solvent", "2027-03-27T16:00", "11", "70")).toContain(
      `not before ${cold.text}, ${cold.hours} h`,
    )
    expect(await answer("trim-solvent", "2027-03-27T16:00", "4", "60")).toMatch(/^Do not: colder than 5 °C/)
    expect(await answer("emulsion", "2027-03-27T16:00", "20", "95")).toMatch(/^Do not: damper than 80 %/)
    expect(await answer("emulsion", "2027-03-27T16:00", "warm", "60")).toMatch(/^Do not/)
    await page.close()
  })

  it("help a mistyped code, sheet or revision, and the first page takes what was typed", async () => {
    const lost = async (path: string) => {
      const page = await open(path)
      await page.waitForFunction(() => document.getElementById("said")?.textContent !== "")
      const said = await page.$eval("#said", (each) => [each.textContent, each.querySelector("a")?.href])
      await page.close()
      return said
    }
    expect(await lost(`${code.toUpperCase()}/C2-O2/`)).toEqual([
      "You probably meant: Open sheet C2-02",
      `${host.address}${code}/${sequence}/index.html`,
    ])
    expect((await lost(`${code}/c202/A/`))[1]).toBe(`${host.address}${code}/${sequence}/a/index.html`)
    expect(await lost(`${code}/z9-99/`)).toEqual([
      "There is no sheet “z9-99” in this job. Open the list of this job’s sheets",
      `${host.address}${code}/index.html`,
    ])
    const page = await open("")
    await page.type("[name=job]", ` ${code.toUpperCase()}`)
    await page.type("[name=sheet]", "C2 o2")
    await Promise.all([page.waitForNavigation(), page.click("button")])
    expect(page.url()).toBe(`${host.address}${code}/${sequence}/index.html`)
    await page.close()
  })
})

describe("a phone without signal", () => {
  const paths = () => [...html.keys()].filter((path) => path.startsWith(`${code}/`))

  it("has the whole job after one visit to its hub, and never says current of what it cannot ask", async () => {
    const page = await open(`${code}/`)
    await page.waitForFunction(() =>
      document.getElementById("kept")?.textContent?.includes("keeps the whole job"),
    )
    await host.stop()
    const keeps = await page.evaluate(
      async (addresses) => {
        const found = await Promise.all(addresses.map((each) => caches.match(each)))
        return found.filter(Boolean).length
      },
      paths().map((path) => host.address + path.replace("index.html", "")),
    )
    expect(keeps).toBe(paths().length)
    for (const path of paths().filter(isOneOfSome)) {
      const before = await page.goto(`${host.address}${path.replace("index.html", "")}`)
      expect(before?.status(), path).toBe(200)
      const text = await page.evaluate(() => document.querySelector("main")!.textContent!)
      expect(text, path).toMatch(/No signal\. This is the copy fetched [A-Z]/)
      if (!path.includes("published"))
        expect(text, path).not.toMatch(/is current\.|[Cc]urrent is|Current revision|Open current/)
    }
    await page.goto(`${host.address}${code}/${sequence}/a/`)
    expect(await textOf(page)).toMatch(/It was current when last fetched, \w{3},? \d+ \w{3} \d{4}/)
    await page.goto(`${host.address}${code}/nowhere/`)
    expect(await textOf(page)).toContain("not kept on this phone")
    await host.start()
    await page.close()
  })

  it("takes a new build whole when there is signal again, and a broken one not at all", async () => {
    const place = join(site, code, sequence, "index.html")
    const before = readFileSync(place, "utf8")
    const worker = join(site, code, "worker.js")
    const old = readFileSync(worker, "utf8")
    const page = await open(`${code}/`)
    await page.waitForFunction(() =>
      document.getElementById("kept")?.textContent?.includes("keeps the whole job"),
    )
    const names = () =>
      page.evaluate(async () => (await caches.keys()).filter((name) => name.startsWith("job ")))
    const [kept] = await names()
    // The list names a page that the host does not have as the build made it: the copy held before stays.
    writeFileSync(
      worker,
      old
        .replace(/"hash":"\w+"/, '"hash":"1111111111111111"')
        .replace(/(\["c2-02\/",)"\w+"/, '$1"0000000000000000"'),
    )
    const states = await page.evaluate(async () => {
      const registration = (await navigator.serviceWorker.getRegistration())!
      await registration.update()
      const coming = registration.installing
      if (coming)
        await new Promise<void>((done) => {
          const look = () => coming.state === "redundant" && done()
          coming.addEventListener("statechange", look)
          look()
        })
      return [coming?.state, registration.active?.state]
    })
    expect(states).toEqual(["redundant", "activated"])
    expect(await names()).toContain(kept)
    // A sound new build: one page says something else, and the list goes with it.
    writeFileSync(place, before.replaceAll("Order of work", "Order of the work"))
    writeKeptCopy(staging, siteData([job]).jobs[0]!)
    await page.reload()
    await page.waitForFunction(
      async (old) => {
        const now = (await caches.keys()).filter((name) => name.startsWith("job "))
        return now.length === 1 && now[0] !== old
      },
      { polling: 100 },
      kept,
    )
    await host.stop()
    await page.goto(`${host.address}${code}/${sequence}/`)
    expect(await textOf(page)).toContain("Order of the work")
    await host.start()
    await page.close()
  })
})

describe("all of it", () => {
  it("asked no other host for anything, and broke no rule of the policy", () => {
    expect(asked.length).toBeGreaterThan(50)
    const { origin } = new URL(host.address)
    expect(asked.filter((each) => !each.startsWith(origin) && !each.startsWith("data:"))).toEqual([])
    expect(breaches).toEqual([])
  })
})
