import { existsSync } from "node:fs"
import { delimiter, join } from "node:path"

import puppeteer from "puppeteer"

/** Where a browser came from: a path the user sets, one already on the machine, or the one an npm package carries. */
export type BrowserSource = "set" | "system" | "packaged"

/** A browser that may print; the packaged one has no path until it is unpacked at launch. */
export type FoundBrowser = { source: "set" | "system"; path: string } | { source: "packaged" }

/** All browsers that may be tried, the preferred one first, or one plain sentence saying why there is none. */
export type BrowserSearch = { found: FoundBrowser[] } | { missing: string }

/** What of the machine decides the search; given so that a test can set up any machine. */
export interface Machine {
  platform: NodeJS.Platform
  arch: string
  exists: (path: string) => boolean
  /** The browser puppeteer itself keeps or was told of, or null. */
  ownBrowser: () => string | null
}

/**
 * The browsers that may print, in order: the path in `STOREY_ROD_BROWSER`, and then no other; else the one
 * puppeteer keeps and the Chrome, Chromium or Edge of the system; else the one packaged in npm.
 * `STOREY_ROD_BROWSER=packaged` asks for the packaged one alone, whose version is fixed by the lock file.
 * @returns the candidates, first choice first, or `missing`: what to tell the user; nothing is started here
 */
export function findBrowser(env: NodeJS.ProcessEnv, machine: Machine = thisMachine): BrowserSearch {
  const set = env.STOREY_ROD_BROWSER?.trim()
  if (set && set !== "packaged") {
    if (machine.exists(set)) return { found: [{ source: "set", path: set }] }
    return { missing: `STOREY_ROD_BROWSER is ${set}, but there is no such file. ${mend}` }
  }
  const system = set === "packaged" ? [] : systemBrowsers(env, machine)
  const packaged: FoundBrowser[] = hasPackaged(machine) ? [{ source: "packaged" }] : []
  const found = [...system, ...packaged]
  if (found.length > 0) return { found }
  return { missing: `No browser to print with was found on this machine. ${mend}` }
}

const thisMachine: Machine = {
  platform: process.platform,
  arch: process.arch,
  exists: existsSync,
  ownBrowser: () => {
    try {
      return puppeteer.executablePath()
    } catch {
      return null
    }
  },
}

const mend =
  "Install Chrome, Chromium or Edge, or set STOREY_ROD_BROWSER to the path of one; the site is built without it, the PDFs are not."

/** Names by which a browser answers on the PATH of Linux and other Unix systems. */
const commandNames = [
  "google-chrome-stable",
  "google-chrome",
  "chrome",
  "chromium",
  "chromium-browser",
  "microsoft-edge-stable",
  "microsoft-edge",
]

function systemBrowsers(env: NodeJS.ProcessEnv, machine: Machine): FoundBrowser[] {
  const own = machine.ownBrowser()
  const paths = [...(own === null ? [] : [own]), ...usualPaths(env, machine.platform)]
  const present = [...new Set(paths)].filter((path) => machine.exists(path))
  return present.map((path) => ({ source: "system", path }))
}

function usualPaths(env: NodeJS.ProcessEnv, platform: NodeJS.Platform): string[] {
  if (platform === "win32") return windowsPaths(env)
  const folders = (env.PATH ?? "").split(delimiter).filter((folder) => folder !== "")
  const onPath = folders.flatMap((folder) => commandNames.map((name) => join(folder, name)))
  if (platform === "darwin") return [...macPaths, ...onPath]
  return [...onPath, "/opt/google/chrome/chrome", "/opt/microsoft/msedge/msedge", "/snap/bin/chromium"]
}

const macPaths = ["Google Chrome", "Chromium", "Microsoft Edge"].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
)

function windowsPaths(env: NodeJS.ProcessEnv): string[] {
  const roots = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA]
  const inside = [
    "Google\\Chrome\\Application\\chrome.exe",
    "Chromium\\Application\\chrome.exe",
    "Microsoft\\Edge\\Application\\msedge.exe",
  ]
  return roots.flatMap((root) => (root ? inside.map((path) => `${root}\\${path}`) : []))
}

/** The package carries one build, for 64-bit Linux on Intel and AMD machines. */
function hasPackaged(machine: Machine): boolean {
  return machine.platform === "linux" && machine.arch === "x64"
}
