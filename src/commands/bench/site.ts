import { existsSync, readFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { gzipSync } from "node:zlib"
import type { Browser } from "puppeteer"
import { filesBelow } from "../../press/output-tree.ts"
import { WrongUsage } from "../arguments.ts"
import { siteBrowser, staticHost } from "./static-host.ts"

/** What is measured: a built site, and where to print. */
export interface SiteBench {
  /** Folder that is to be published. */
  folder: string
  print(line: string): void
}

/** What a phone on one bar of signal gets: 400 kilobits a second, and each answer 400 ms late. */
const oneBar = { offline: false, latency: 400, downloadThroughput: 50_000, uploadThroughput: 50_000 }

/** Weight of a page with all it asks for, compressed, bytes. */
export interface PageWeight {
  path: string
  bytes: number
}

/** What the measurement came to. */
export interface SiteFigures {
  /** Heaviest first. */
  weights: PageWeight[]
  /** First paint of one page of each kind with nothing kept, ms. */
  firstPaint: { path: string; ms: number }[]
}

/** The weights of a built site's pages, and the first paint of one of each kind on one bar of signal. */
export async function benchSite({ folder, print }: SiteBench): Promise<SiteFigures> {
  if (!existsSync(join(folder, "index.html")))
    throw new WrongUsage(`${folder} holds no site: build the jobs first`)
  const weights = pageWeights(folder)
  const heaviest = weights[0]!
  print(
    `${weights.length} pages, compressed with all they ask for: heaviest ${kb(heaviest.bytes)} (${heaviest.path}), median ${kb(weights[Math.floor(weights.length / 2)]!.bytes)}`,
  )
  const host = await staticHost(folder)
  const browser = await siteBrowser()
  try {
    const firstPaint: SiteFigures["firstPaint"] = []
    for (const path of oneOfEachKind(weights)) {
      const ms = await paint(browser, host.address + path)
      firstPaint.push({ path, ms })
      print(`first paint at 400 kb/s and 400 ms a request: ${(ms / 1000).toFixed(2)} s (${path})`)
    }
    return { weights, firstPaint }
  } finally {
    await browser.close()
    await host.stop()
  }
}

/** The pages below a folder with their style sheets and scripts, compressed, heaviest first. */
export function pageWeights(folder: string): PageWeight[] {
  const packed = new Map<string, number>()
  const weigh = (path: string) => {
    const known = packed.get(path) ?? gzipSync(readFileSync(join(folder, path))).length
    packed.set(path, known)
    return known
  }
  return filesBelow(folder)
    .filter(({ path }) => path.endsWith(".html"))
    .map(({ path, bytes }) => {
      const text = new TextDecoder().decode(bytes)
      const asked = [...text.matchAll(/ (?:href|src)="([^"]*assets\/[^"?]+)\?/g)].map(([, part = ""]) =>
        join(dirname(path), part),
      )
      return { path, bytes: [path, ...asked].reduce((sum, each) => sum + weigh(each), 0) }
    })
    .sort((a, b) => b.bytes - a.bytes || (a.path < b.path ? -1 : 1))
}

/** First page, hub, days, timer, the heaviest sheet, and the page of a paper: each the heaviest of its kind. */
function oneOfEachKind(weights: readonly PageWeight[]): string[] {
  const kinds = [
    /^index\.html$/,
    /^\w{8}\/index/,
    /\/days\//,
    /\/timer\//,
    /^\w{8}\/\w+-[^/]+\/index/,
    /-[^/]+\/\w+\/index/,
  ]
  return kinds.flatMap((kind) => weights.find(({ path }) => kind.test(path))?.path ?? [])
}

async function paint(browser: Browser, address: string): Promise<number> {
  const context = await browser.createBrowserContext()
  const page = await context.newPage()
  const session = await page.createCDPSession()
  await session.send("Network.enable")
  await session.send("Network.emulateNetworkConditions", oneBar)
  await page.goto(address)
  const ms = await page.evaluate(async () => {
    while (performance.getEntriesByName("first-contentful-paint").length === 0)
      await new Promise((done) => setTimeout(done, 20))
    return performance.getEntriesByName("first-contentful-paint")[0]!.startTime
  })
  await context.close()
  return ms
}

function kb(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`
}
