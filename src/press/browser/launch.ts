import type { Browser, LaunchOptions, Page } from "puppeteer"
import puppeteer, { ProtocolError, TimeoutError } from "puppeteer"

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
  /**
   * Lends a new tab to `use` and closes it. Where the browser crashes, or is not done within the time limit, it is started
   * again and `use` is tried once more.
   * @param what for the message, and the most milliseconds it may take
   * @throws Fault when it crashes or hangs a second time
   */
  withPage: <T>(what: { name: string; limit: number }, use: (page: Page) => Promise<T>) => Promise<T>
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
  let running = await start(found)
  let renewing: Promise<void> | null = null
  const blocked: string[] = []
  const renew = async (from: Started): Promise<void> => {
    // Two tabs share one browser: the first to find it dead starts the next one.
    if (running !== from) return
    renewing ??= (async () => {
      await stop(from.browser)
      running = await start(found)
    })().finally(() => {
      renewing = null
    })
    await renewing
  }
  try {
    const { source, sandboxed } = running
    return await use({
      version: await running.browser.version(),
      source,
      sandboxed,
      blocked,
      newPage: () => shutPage(running.browser, blocked),
      withPage: async (what, task) => {
        const first = running
        const came = await onPage(first.browser, { ...what, blocked }, task)
        if ("value" in came) return came.value
        await renew(first)
        const again = await onPage(running.browser, { ...what, blocked }, task)
        if ("value" in again) return again.value
        throw new Fault(
          `the browser ${came.failed} while printing ${what.name}, and when tried again it ${again.failed}`,
        )
      },
    })
  } finally {
    await stop(running.browser)
  }
}

interface Lent {
  name: string
  limit: number
  blocked: string[]
}

/** What came of one use of a tab: a value, or how the browser failed. What `use` itself throws is thrown on. */
async function onPage<T>(
  browser: Browser,
  { limit, blocked }: Lent,
  use: (page: Page) => Promise<T>,
): Promise<{ value: T } | { failed: string }> {
  let timer: NodeJS.Timeout | undefined
  let page: Page | undefined
  const late = new Promise<{ failed: string }>((told) => {
    timer = setTimeout(() => told({ failed: `was not done within ${limit / 1000} s` }), limit)
  })
  const done = (async (): Promise<{ value: T } | { failed: string }> => {
    let crashed = false
    try {
      page = await shutPage(browser, blocked)
      page.on("error", () => {
        crashed = true
      })
      return { value: await use(page) }
    } catch (error) {
      if (crashed || !browser.connected || isOfBrowser(error))
        return { failed: `crashed (${wordsOf(error)})` }
      throw error
    }
  })()
  try {
    const came = await Promise.race([done, late])
    if ("value" in came) await page?.close().catch(() => {})
    else done.catch(() => {})
    return came
  } catch (error) {
    await page?.close().catch(() => {})
    throw error
  } finally {
    clearTimeout(timer)
  }
}

/** True for what the connection to the browser throws, as against what a page or our own code does. */
function isOfBrowser(error: unknown): boolean {
  if (error instanceof ProtocolError || error instanceof TimeoutError) return true
  return /\b(?:Target|Session|Page|Connection) (?:closed|crashed)|detached Frame|frame was detached/i.test(
    wordsOf(error),
  )
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}

/** Closes a browser; one that does not answer is ended by the system. */
async function stop(browser: Browser): Promise<void> {
  const child = browser.process()
  let timer: NodeJS.Timeout | undefined
  const patience = new Promise<void>((over) => {
    timer = setTimeout(over, longestClosing)
  })
  await Promise.race([browser.close().catch(() => {}), patience])
  clearTimeout(timer)
  if (child && child.exitCode === null && child.signalCode === null) child.kill("SIGKILL")
}

/** Five seconds, in milliseconds. */
const longestClosing = 5000

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
        const browser = await puppeteer.launch({ ...options, ...connection })
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

/** Through a pipe, so that the browser ends when this process does, however it ends. Time limits are our own. */
const connection = { pipe: true, protocolTimeout: 0 } as const

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
