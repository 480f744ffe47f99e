import type { Browser, LaunchOptions, Page } from "puppeteer"
import puppeteer from "puppeteer"

import { Fault } from "../../kernels/fault.ts"
import type { BrowserSource, FoundBrowser } from "./find.ts"
import { unpackBrowser } from "./packaged.ts"

/** One running browser, for a whole build. */
export interface Press {
  /** Product and version as the browser states them, e.g. `HeadlessChrome/147.0.7727.0`. */
  version: string
  source: BrowserSource
  /** False where the browser runs without its sandbox: as root, or where the system forbids one. */
  sandboxed: boolean
  /** Addresses that pages asked for and were refused, in order: anything but local files and data. */
  blocked: string[]
  /** A new tab with the network shut. */
  newPage: () => Promise<Page>
}

/**
 * Starts one browser, lends it to `use`, and closes it whatever happens.
 * Candidates are tried in turn, each with its sandbox where the system allows one.
 * @throws Fault when none of them starts, with what each said
 */
export async function withBrowser<T>(
  found: readonly FoundBrowser[],
  use: (press: Press) => Promise<T>,
): Promise<T> {
  const { browser, source, sandboxed } = await start(found)
  try {
    const blocked: string[] = []
    const version = await browser.version()
    return await use({ version, source, sandboxed, blocked, newPage: () => shutPage(browser, blocked) })
  } finally {
    await browser.close()
  }
}

interface Started {
  browser: Browser
  source: BrowserSource
  sandboxed: boolean
}

async function start(found: readonly FoundBrowser[]): Promise<Started> {
  const refusals: string[] = []
  const refused = (who: string, error: unknown): void => {
    refusals.push(`${who}: ${error instanceof Error ? error.message : error}`)
  }
  for (const candidate of found) {
    const attempts = await attemptsFor(candidate).catch((error: unknown) => {
      refused(candidate.source, error)
      return []
    })
    for (const { options, expected, sandboxed } of attempts) {
      try {
        const browser = await puppeteer.launch(options)
        await assertVersion(browser, expected)
        return { browser, source: candidate.source, sandboxed }
      } catch (error) {
        refused(options.executablePath ?? candidate.source, error)
      }
    }
  }
  throw new Fault(`no browser could be started\n${refusals.join("\n")}`)
}

interface Attempt {
  options: LaunchOptions
  sandboxed: boolean
  /** First number of the version that must answer; null where any may. */
  expected: string | null
}

/** Ways to start one candidate, best first: with sandbox before without, the system's libraries before its own. */
async function attemptsFor(candidate: FoundBrowser): Promise<Attempt[]> {
  const sandboxes = process.getuid?.() === 0 ? [false] : [true, false]
  if (candidate.source !== "packaged") {
    return sandboxes.map((sandboxed) => ({
      options: { executablePath: candidate.path, headless: true, args: flags(sandboxed) },
      sandboxed,
      expected: null,
    }))
  }
  const unpacked = await unpackBrowser()
  const expected = unpacked.packageVersion.split(".")[0] ?? null
  return sandboxes.flatMap((sandboxed) =>
    [false, true].map((withLibraries) => ({
      options: {
        executablePath: unpacked.path,
        headless: "shell" as const,
        args: flags(sandboxed),
        env: unpacked.env(withLibraries),
      },
      sandboxed,
      expected,
    })),
  )
}

/** Hinting off makes every version lay text out alike; the name rule keeps even the browser's own services off the network. */
function flags(sandboxed: boolean): string[] {
  return [
    ...(sandboxed ? [] : ["--no-sandbox"]),
    "--disable-gpu",
    "--font-render-hinting=none",
    "--disable-background-networking",
    "--no-first-run",
    "--host-resolver-rules=MAP * ~NOTFOUND",
  ]
}

async function assertVersion(browser: Browser, expected: string | null): Promise<void> {
  const version = await browser.version()
  if (expected === null || version.split("/")[1]?.split(".")[0] === expected) return
  await browser.close()
  throw new Fault(`the packaged browser is ${version}, not version ${expected}`)
}

/**
 * Requests that would leave the machine are stopped; local ones are not even looked at, as the browser refuses
 * a page from a file its own fonts once its requests are intercepted.
 */
async function shutPage(browser: Browser, blocked: string[]): Promise<Page> {
  const page = await browser.newPage()
  const session = await page.createCDPSession()
  await session.send("Fetch.enable", { patterns: outside.map((urlPattern) => ({ urlPattern })) })
  session.on("Fetch.requestPaused", ({ requestId, request }) => {
    blocked.push(request.url)
    void session.send("Fetch.failRequest", { requestId, errorReason: "BlockedByClient" }).catch(() => {})
  })
  return page
}

const outside = ["http:*", "https:*", "ws:*", "wss:*", "ftp:*"]
