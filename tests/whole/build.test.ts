import { execFile } from "node:child_process"
import { createHash } from "node:crypto"
import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { homedir, hostname, tmpdir, userInfo } from "node:os"
import { dirname, join } from "node:path"
import { promisify } from "node:util"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { filesBelow } from "../../src/press/output-tree.ts"
import { pageBoxes, pagesNotA4 } from "../press/inspect/boxes.ts"
import { coloursNotGrey } from "../press/inspect/colours.ts"
import { decodeQr } from "../press/inspect/decode-qr.ts"
import { fontsNotAllowed, fontsOf } from "../press/inspect/fonts.ts"
import { unpackedStreams } from "../press/inspect/look.ts"
import { openPdf } from "../press/inspect/open.ts"
import { allowedFonts } from "../press/inspect/press.ts"
import { pageRaster, worn } from "../press/inspect/raster.ts"
import { pagesOf, textItems, textOf } from "../press/inspect/text.ts"
import { contentLines, eventsOf, keysOutOfOrder, strictCsv } from "./formats.ts"
import { type BuildRun, build, copyOfJob, environmentSecret, ownFolder, ref, top } from "./job-copy.ts"
import { marked, secretFiles, secrets } from "./secrets.ts"

/** A room's name, a site and a product as someone with a bad mind would write them. */
const markup = "<b>x</b><script>"
const longerMarkup = `</style><script>alert(1)</script>"'&amp;{{ 7*7 }}`

const quoted = `'${longerMarkup.replaceAll("'", "''")}'`

const changes = [
  { file: `${ref}/rooms/g1.yaml`, find: /^name: .*$/m, put: `name: ${markup}` },
  { file: `${ref}/job.yaml`, find: /^site: .*$/m, put: `site: ${quoted}` },
  { file: "catalogue.yaml", find: "name: Foil-faced underlay", put: `name: ${quoted}` },
  { file: `${ref}/job.yaml`, find: /^client: .*$/m, put: `foldOuts: true\nclient: ${secrets.client}` },
]

const code = /^code: (\w{8})$/m.exec(readFileSync(join(top, "jobs", ref, "job.yaml"), "utf8"))?.[1] ?? ""
const folder = ownFolder()
const output = join(folder, "first", "output")
const inPrint = (name: string) => join(output, "print", ref, name)
let first: BuildRun
let manifest: Manifest

interface Manifest {
  browser: string
  files: { path: string; bytes: number; sha256: string }[]
  sheets: { id: string; title: string; pages: number; audience: string[]; hosted: boolean; url: string }[]
}

beforeAll(async () => {
  const jobs = copyOfJob(join(folder, "first"), {
    changes,
    files: secretFiles,
  })
  process.env.ACCESS_TOKEN = environmentSecret
  first = await build(jobs, output)
  delete process.env.ACCESS_TOKEN
  if (first.status !== 0) throw new Error(`${first.out}\n${first.err}`)
  manifest = JSON.parse(readFileSync(inPrint("manifest.json"), "utf8"))
}, 600_000)

afterAll(() => rmSync(folder, { recursive: true, force: true }))

const pathsBelow = (from: string) => filesBelow(from).map((file) => file.path)
const pdfs = (from: string) => pathsBelow(join(output, from)).filter((path) => path.endsWith(".pdf"))
const opened = (path: string) => openPdf(readFileSync(join(output, path)))

/** sha256 of bytes, by Node's own library. */
const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex")

/** The file a published address stands for. */
function published(address: string): string {
  const { pathname } = new URL(address)
  return join(output, "site", pathname.endsWith("/") ? `${pathname}index.html` : pathname)
}

describe("the output tree", () => {
  it("has a public and a private half and nothing beside them", () => {
    expect(readdirSync(output).sort()).toEqual(["print", "site"])
    expect(readdirSync(join(folder, "first")).sort()).toEqual(["jobs", "output"])
  })

  it("holds the packs and the records of the job", () => {
    const names = readdirSync(join(output, "print", ref)).sort()
    expect(names.filter((name) => !name.endsWith(".pdf"))).toEqual([
      "aftercare.ics",
      "cut-list.csv",
      "door-schedule.csv",
      "job.json",
      "manifest.json",
      "orders.csv",
      "programme.csv",
      "programme.ics",
    ])
    expect(names.filter((name) => name.endsWith(".pdf"))).toEqual([
      "archive.pdf",
      "client.pdf",
      "day-by-day.pdf",
      "fold-outs.pdf",
      "job.pdf",
      "room-g1.pdf",
      "survey-forms.pdf",
      "trade-decorating.pdf",
      "trade-electrics.pdf",
      "trade-floors.pdf",
      "trade-joinery.pdf",
    ])
    expect(existsSync(join(output, "print", "index.html"))).toBe(true)
  })

  it("holds for each sheet what its paper leads to, and no more", () => {
    const wanted = manifest.sheets.flatMap(({ id, hosted }) => {
      const own = `${code}/${id.toLowerCase()}`
      return [`${own}/0/index.html`, ...(hosted ? [`${own}/index.html`, `${own}/sheet.pdf`] : [])]
    })
    const written = pathsBelow(join(output, "site")).filter((path) => !path.startsWith("assets/"))
    const ofTheJob = ["index.html", "days/index.html", "timer/index.html", "published/index.html"]
    const besides = ["worker.js", "copy.json"]
    const ofTheSite = ["index.html", "published/index.html", "404.html", "_headers", ".htaccess"]
    const round = [...ofTheJob, ...besides].map((path) => `${code}/${path}`)
    expect(written.sort()).toEqual([...ofTheSite, ...round, ...wanted].sort())
    expect(manifest.sheets.some((sheet) => sheet.hosted)).toBe(true)
    expect(manifest.sheets.some((sheet) => !sheet.hosted)).toBe(true)
  })

  it("lists no job on its first page", () => {
    const page = readFileSync(join(output, "site", "index.html"), "utf8")
    expect(page).not.toContain(code)
    expect(page).not.toContain("Garden room")
  })

  it("has no link that leads nowhere", () => {
    const pages = pathsBelow(output).filter((path) => path.endsWith(".html"))
    const dead = pages.flatMap((path) => {
      const html = readFileSync(join(output, path), "utf8")
      const targets = [...html.matchAll(/(?:href|src)="([^"#?]+)[^"]*"/g)].map(([, target = ""]) => target)
      return targets
        .filter((target) => !/^(?:mailto:|data:|\/$)/.test(target))
        .map((target) =>
          target.startsWith("https:") ? published(target) : join(output, dirname(path), target),
        )
        .filter(
          (target) => !existsSync(target) || (target.endsWith("/") && !existsSync(`${target}index.html`)),
        )
        .map((target) => `${path} -> ${target}`)
    })
    expect(dead).toEqual([])
  })
})

describe("built again in another folder, zone and language", () => {
  it("every file has the same bytes", async () => {
    const jobs = copyOfJob(join(folder, "second place"), { changes, files: secretFiles })
    const again = join(folder, "second place", "out")
    const args = ["src/commands/run.ts", "build", "--jobs", jobs, "--output", again, "--only", ref]
    await promisify(execFile)(process.execPath, ["node_modules/tsx/dist/cli.mjs", ...args], {
      cwd: top,
      env: { ...process.env, STOREY_ROD_BROWSER: "packaged", TZ: "Pacific/Auckland", LC_ALL: "de_DE.UTF-8" },
    })
    const hashes = (from: string) => filesBelow(from).map(({ path, bytes }) => `${path} ${sha256(bytes)}`)
    expect(hashes(again)).toEqual(hashes(output))
    expect(hashes(output).length).toBeGreaterThan(60)
  }, 600_000)
})

describe("every page of the paper", () => {
  it("carries, on each sheet's first, a code that decodes to its own sheet's page even off a worn copy, and that page is there", async () => {
    const archive = await opened(`print/${ref}/archive.pdf`)
    const pages = await pagesOf(archive)
    const addresses = new Map(manifest.sheets.map((sheet) => [sheet.id, sheet.url]))
    addresses.set(contents, `https://packs.example/${code}/`)
    const seen = new Set<string>()
    for (const [index, text] of pages.entries()) {
      const id = /Sheet (\S+), page \d/.exec(text)?.[1]
      if (id && seen.has(id)) continue
      const codes = await decodeQr(worn(await pageRaster(archive, index + 1, 150), wear))
      if (id) seen.add(id)
      expect(codes, `page ${index + 1}`).toEqual(id ? [addresses.get(id)] : [])
      if (!id) expect(text, `page ${index + 1}`).toContain("left blank")
    }
    expect([...seen].sort()).toEqual([...addresses.keys()].sort())
    for (const address of addresses.values()) expect(existsSync(published(address)), address).toBe(true)
  }, 300_000)

  it("decodes on the first sheet of every other document too", async () => {
    const known = new Set(manifest.sheets.map((sheet) => sheet.url))
    for (const path of pdfs("print").filter((each) => !/archive|job\.pdf/.test(each))) {
      const [decoded = ""] = await decodeQr(await pageRaster(await opened(join("print", path)), 1, 110))
      expect(known.has(decoded), path).toBe(true)
    }
  }, 300_000)

  it("is A4, the fold-outs A3", async () => {
    const folded = `print/${ref}/fold-outs.pdf`
    const all = pdfs(".").filter((path) => path !== folded)
    for (const { width, height } of await pageBoxes(readFileSync(join(output, folded)))) {
      expect(Math.abs(width - a3.width), folded).toBeLessThan(1)
      expect(Math.abs(height - a3.height), folded).toBeLessThan(1)
    }
    expect(all.length).toBeGreaterThan(20)
    for (const path of all) {
      const bytes = readFileSync(join(output, path))
      expect(await pagesNotA4(bytes), path).toEqual([])
      expect((await pageBoxes(bytes)).length, path).toBeGreaterThan(0)
    }
  })

  it("is set in the sheets' own embedded typeface, in black, white and grey", async () => {
    for (const path of pdfs(".")) {
      const bytes = readFileSync(join(output, path))
      expect(await fontsNotAllowed(bytes, allowedFonts), path).toEqual([])
      expect((await fontsOf(bytes)).length, path).toBeGreaterThan(0)
      expect(await coloursNotGrey(bytes), path).toEqual([])
    }
  }, 120_000)

  it("keeps its text on the paper, 5 mm and more from the edge, at 9 points and more", async () => {
    for (const path of pdfs(".").filter((each) => !each.endsWith("archive.pdf"))) {
      const pdf = await opened(path)
      const boxes = await pageBoxes(readFileSync(join(output, path)))
      const items = await textItems(pdf)
      expect(items.length, path).toBeGreaterThan(10)
      const bad = items.filter(({ page, box, size }) => {
        const { width = 0, height = 0 } = boxes[page - 1] ?? {}
        const inside =
          box.left >= edge && box.bottom >= edge && box.right <= width - edge && box.top <= height - edge
        return !inside || size < leastSize
      })
      expect(bad, path).toEqual([])
    }
  }, 120_000)
})

/** What a copier, a printer that fits to its margins and a hand-held camera do to a sheet: grey, 95 %, 3° askew, blurred. */
const wear = { scale: 0.95, degrees: 3, blur: 1 }

/** 420 x 297 mm, lying, in points (ISO 216:2007). */
const a3 = { width: (420 / 25.4) * 72, height: (297 / 25.4) * 72 }

/** Number of the contents page, which leads to the job's own page and is no sheet of the manifest. */
const contents = "J-50"

/** 5 mm in points: what office printers leave white (common practice). */
const edge = (5 / 25.4) * 72

/** 9 points, less what rounding of the page's own units takes. */
const leastSize = 8.95

describe("the foot of each sheet", () => {
  it("says job, sheet, revision and address in the sheet itself, where a screen reader finds it", () => {
    for (const sheet of manifest.sheets.filter((each) => each.hosted)) {
      const path = new URL(sheet.url).pathname.split("/").slice(1, 3)
      const html = readFileSync(join(output, "site", ...path, "index.html"), "utf8")
      const foot = /<footer class="foot">([\s\S]*?)<\/footer>/.exec(html)?.[1] ?? ""
      expect(foot, sheet.id).toContain(`sheet ${sheet.id}, revision draft, not issued`)
      expect(foot, sheet.id).toContain(`<a href="${sheet.url}">${sheet.url}</a>`)
    }
  })

  it("names the rulebook entries a sheet rests on", () => {
    const path = manifest.sheets.find((each) => each.id === "J-53")!.url
    const html = readFileSync(
      join(output, "site", ...new URL(path).pathname.split("/").slice(1, 3), "index.html"),
      "utf8",
    )
    expect(html).toMatch(/Rests on the rulebook entries: [^<]*saw-kerf/)
  })
})

describe("markup in a file's text", () => {
  it("stands in the site's pages as text", () => {
    const pages = pathsBelow(join(output, "site")).filter(
      (path) => path.endsWith(".html") && path !== "404.html",
    )
    const html = pages.map((path) => readFileSync(join(output, "site", path), "utf8"))
    const escaped = "&lt;/style&gt;&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;&amp;amp;{{ 7*7 }}"
    expect(html.filter((each) => each.includes("&lt;b&gt;x&lt;/b&gt;&lt;script&gt;")).length).toBeGreaterThan(
      3,
    )
    expect(html.filter((each) => each.includes(escaped)).length).toBeGreaterThan(1)
    expect(html.filter((each) => /<b>x|<script>|<\/style><script/.test(each))).toEqual([])
  })

  it("stands on the paper as text, in the margin too", async () => {
    const items = await textItems(await opened(`print/${ref}/room-g1.pdf`))
    const joined = (from: typeof items) =>
      from
        .map((item) => item.text)
        .join("")
        .replace(/\s+/g, "")
    const top = items.filter((item) => item.page === 2 && item.y > 780)
    const foot = items.filter((item) => item.page === 2 && item.y < 110 && item.x < 190)
    expect(joined(top)).toContain(markup)
    expect(joined(foot)).toContain(longerMarkup.replace(/\s+/g, ""))
    const bought = await textItems(await opened(`print/${ref}/trade-floors.pdf`))
    expect(joined(items) + joined(bought)).toContain(markup)
  })
})

describe("what must stay in the office", () => {
  const thousands = (price: string) => price.replace(/\B(?=(\d{3})+\.)/g, ",")
  const prices = [...marked, secrets.provisionalAmount, secrets.plantAmount, secrets.changeAmount]
  const words = [...Object.values(secrets), ...prices, ...prices.map(thousands)]

  it("is on the office's and the client's paper, so it could be found elsewhere", async () => {
    const archive = await textOf(await opened(`print/${ref}/archive.pdf`))
    expect(archive).toContain("71.37")
    for (const amount of ["8,765.43", "4,321.98", "6,543.21", "72.41"]) expect(archive).toContain(amount)
    for (const text of [secrets.because, secrets.plant, secrets.changeWhy]) expect(archive).toContain(text)
    const client = await textOf(await opened(`print/${ref}/client.pdf`))
    for (const own of [
      "client",
      "decision",
      "note",
      "assumption",
      "exclusion",
      "sample",
      "payment",
      "change",
    ] as const)
      expect(client, own).toContain(secrets[own])
    for (const inner of [
      secrets.rate,
      secrets.decoratorRate,
      secrets.overhead,
      secrets.contingency,
      ...marked,
    ])
      expect(client, inner).not.toContain(inner)
    expect(client).toContain("8,765.43")
  })

  it("is in no byte of the site and no text of its PDFs", async () => {
    const totals = pricesIn(JSON.parse(readFileSync(inPrint("job.json"), "utf8")).price)
    expect(totals.length).toBeGreaterThan(5)
    for (const { path, bytes } of filesBelow(join(output, "site"))) {
      const text = path.endsWith(".pdf") ? await textOf(await openPdf(bytes)) : ""
      const all = `${Buffer.from(bytes).toString("latin1")}\n${text}`
      for (const word of [...words, ...totals]) expect(all.includes(word), `${path}: ${word}`).toBe(false)
      if (/html$|pdf$/.test(path))
        expect(text || Buffer.from(bytes).toString("utf8"), path).not.toContain("£")
    }
  }, 120_000)

  it("no file holds a path, a name or a value of the machine that built it, not even packed in a PDF", async () => {
    const told = [environmentSecret, folder, top, tmpdir(), homedir(), hostname(), userInfo().username]
    // A user called root is no more than a word.
    const words = told.filter((word) => word.length > 4)
    expect(words).toContain(environmentSecret)
    for (const { path, bytes } of filesBelow(output)) {
      const texts = [bytes, ...(path.endsWith(".pdf") ? await unpackedStreams(bytes) : [])]
      for (const text of texts) {
        const found = words.filter((word) => Buffer.from(text).includes(word))
        expect(found, path).toEqual([])
      }
    }
  })

  it("is on no paper for a room or a trade, nor in what such paper carries", async () => {
    for (const path of pdfs("print").filter((each) => /\/(room|trade)-|\/job\.pdf/.test(each))) {
      const pdf = await opened(join("print", path))
      const text = await textOf(pdf)
      for (const word of [...words, "£", "8,765"]) expect(text.includes(word), `${path}: ${word}`).toBe(false)
      expect(await pdf.getAttachments(), path).toBeNull()
    }
  }, 120_000)

  it("and the site's PDFs carry no files", async () => {
    for (const path of pdfs("site"))
      expect(await (await opened(join("site", path))).getAttachments()).toBeNull()
  })
})

/** Amounts of four figures and more in a price, in both ways of writing them: they cannot be mistaken for a length. */
function pricesIn(price: unknown): string[] {
  const written = JSON.stringify(price).match(/"\d{3,}\.\d{1,2}"/g) ?? []
  const amounts = written.map((each) => Number(each.replaceAll('"', "")).toFixed(2))
  return amounts.flatMap((each) => [each, each.replace(/\B(?=(\d{3})+\.)/g, ",")])
}

describe("the records", () => {
  it.each(["orders.csv", "cut-list.csv", "door-schedule.csv", "programme.csv"])(
    "%s keeps to RFC 4180",
    (name) => {
      const [head = [], ...rows] = strictCsv(readFileSync(inPrint(name), "utf8"))
      expect(head.length).toBeGreaterThan(0)
      expect(rows.filter((row) => row.length !== head.length)).toEqual([])
      if (name !== "door-schedule.csv") expect(rows.length).toBeGreaterThan(3)
    },
  )

  it("the orders add up to the materials of the price", () => {
    const [head = [], ...rows] = strictCsv(readFileSync(inPrint("orders.csv"), "utf8"))
    const pence = rows.reduce((sum, row) => sum + Math.round(Number(row[head.indexOf("price")]) * 100), 0)
    const { price } = JSON.parse(readFileSync(inPrint("job.json"), "utf8"))
    expect(pence).toBe(Math.round(Number(price.materialsTotal) * 100))
  })

  it("job.json has its keys in order at every level", () => {
    const text = readFileSync(inPrint("job.json"), "utf8")
    const job = JSON.parse(text)
    expect(keysOutOfOrder(job)).toEqual([])
    expect(text).toBe(`${JSON.stringify(job, null, 2)}\n`)
    expect(job.rooms[0].name).toBe(markup)
  })

  it("the calendar file keeps to RFC 5545", () => {
    const text = readFileSync(inPrint("programme.ics"), "utf8")
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/)
    expect(text.split("\r\n").filter((line) => Buffer.byteLength(line) > 75)).toEqual([])
    const lines = contentLines(text)
    expect([lines[0], lines[lines.length - 1]]).toEqual(["BEGIN:VCALENDAR", "END:VCALENDAR"])
    expect(lines).toContain("VERSION:2.0")
    expect(lines.filter((line) => line.startsWith("PRODID:"))).toHaveLength(1)
    const events = eventsOf(text)
    const { programme } = JSON.parse(readFileSync(inPrint("job.json"), "utf8"))
    const milestones = programme.firstNight ? 2 : 1
    expect(events).toHaveLength(programme.steps.length + milestones)
    expect(new Set(events.map((event) => event.get("UID"))).size).toBe(events.length)
    for (const event of events.slice(programme.steps.length))
      expect(event.get("DTSTART;VALUE=DATE") ?? event.get("DTSTART")).toMatch(/^\d{8}$/)
    for (const event of events.slice(0, programme.steps.length)) {
      for (const name of ["DTSTAMP", "DTSTART", "DTEND"]) expect(event.get(name)).toMatch(/^\d{8}T\d{6}Z$/)
      expect(event.get("DTEND")! >= event.get("DTSTART")!).toBe(true)
      expect(event.get("DTSTAMP")).toBe("20270301T000000Z")
    }
  })

  it("the manifest names every file with its true size and sha256", () => {
    const own = filesBelow(join(output, "print", ref)).filter((file) => file.path !== "manifest.json")
    const hosted = filesBelow(join(output, "site", code)).map((file) => ({
      ...file,
      path: `site/${code}/${file.path}`,
    }))
    const found = [...own, ...hosted].map(({ path, bytes }) => ({
      path,
      bytes: bytes.length,
      sha256: sha256(bytes),
    }))
    expect(manifest.files).toEqual(found.sort((a, b) => (a.path < b.path ? -1 : 1)))
    expect(manifest.browser).toMatch(/Chrome\/\d+/)
  })

  it("the manifest's pages are those of the archive", async () => {
    const pages = await pagesOf(await opened(`print/${ref}/archive.pdf`))
    const counted = manifest.sheets.map(({ id }) => [
      id,
      pages.filter((text) => text.includes(`Sheet ${id}, page `)).length,
    ])
    expect(manifest.sheets.map(({ id, pages: said }) => [id, said])).toEqual(counted)
    for (const text of pages) {
      const [, id = "", page = "", of = ""] = /Sheet (\S+), page (\d+) of (\d+)/.exec(text) ?? []
      if (id && id !== contents)
        expect([id, Number(of)]).toEqual([id, manifest.sheets.find((sheet) => sheet.id === id)?.pages])
      if (id) expect(Number(page)).toBeLessThanOrEqual(Number(of))
    }
  })
})

describe("a job that is wrong", () => {
  it("ends with 1, says where, and leaves the last good output as it was", async () => {
    const before = filesBelow(output).map(({ path, bytes }) => `${path} ${sha256(bytes)}`)
    const wrong = copyOfJob(join(folder, "wrong"), {
      changes: [
        { file: `${ref}/rooms/g1.yaml`, find: "length: 3600", put: "length: -3600" },
        { file: `${ref}/rooms/g1.yaml`, find: "use: living", put: "use: lving" },
      ],
    })
    const run = await build(wrong, output)
    expect(run.status).toBe(1)
    expect(run.err).toMatch(/garden-room\/rooms\/g1\.yaml:\d+:\d+: /)
    expect(run.err).toContain("Nothing was built")
    expect(filesBelow(output).map(({ path, bytes }) => `${path} ${sha256(bytes)}`)).toEqual(before)
    expect(readdirSync(output).sort()).toEqual(["print", "site"])
    expect(readdirSync(join(folder, "first")).sort()).toEqual(["jobs", "output"])
  })

  it("writes nothing at all where there was no output", async () => {
    const wrong = copyOfJob(join(folder, "wrong alone"), {
      files: { [`${ref}/house.yaml`]: "storeys: [" },
    })
    const run = await build(wrong, join(folder, "wrong alone", "output"))
    expect(run.status).toBe(1)
    expect(readdirSync(join(folder, "wrong alone"))).toEqual(["jobs"])
  })
})

describe("without a browser", () => {
  it("the site is written, the end is 3, and the message says what to do", async () => {
    const jobs = copyOfJob(join(folder, "no browser"), {})
    const without = join(folder, "no browser", "output")
    const run = await build(jobs, without, "/nonexistent")
    expect(run.status).toBe(3)
    expect(run.err).toContain("STOREY_ROD_BROWSER is /nonexistent, but there is no such file")
    expect(run.err).toContain("no paper was printed")
    expect(existsSync(join(without, "site", code, "index.html"))).toBe(true)
    expect(existsSync(join(without, "print", ref, "job.json"))).toBe(true)
    expect(pathsBelow(without).filter((path) => path.endsWith(".pdf"))).toEqual([])
  }, 120_000)
})
