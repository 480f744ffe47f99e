import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { buildSync } from "esbuild"
import { sha256 } from "../revisions/fingerprint.ts"

/** Folder of the hosted copy's style sheet and scripts. */
const hostedFolder = join("templates", "hosted")

/** The worker is written once a job, with what it keeps; it is no asset of the site. */
export const workerSource = join(hostedFolder, "worker.js")

/** A file that hosted pages take besides their own text. */
export interface SiteAsset {
  name: string
  bytes: Uint8Array
}

let made: { assets: SiteAsset[]; version: string } | undefined

/**
 * The style sheet and the scripts of the hosted copy, in order of name: the drying timer is the build's own calculation,
 * bundled. The same sources give the same bytes.
 */
export function siteAssets(): SiteAsset[] {
  return prepared().assets
}

/** The address of an asset below the site's own folder: its version in it, so that a page never meets another build's script. */
export function assetAddress(name: string): string {
  return `assets/${name}?${prepared().version}`
}

/** Writes the assets beside the site. */
export function writeSiteAssets(staging: string): void {
  const folder = join(staging, "site", "assets")
  mkdirSync(folder, { recursive: true })
  for (const { name, bytes } of siteAssets()) writeFileSync(join(folder, name), bytes)
}

function prepared() {
  made ??= make()
  return made
}

function make() {
  const written = readdirSync(hostedFolder)
    .filter((name) => name !== "worker.js")
    .map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(hostedFolder, name))) }))
  const assets = [...written, { name: "timer.js", bytes: timerBundle() }].sort((a, b) =>
    a.name < b.name ? -1 : 1,
  )
  const version = sha256(assets.map(({ name, bytes }) => `${name} ${sha256(bytes)}`).join("\n")).slice(0, 8)
  return { assets, version }
}

/** The drying timer for a browser, with the modules the build itself works with. */
function timerBundle(): Uint8Array {
  const { outputFiles } = buildSync({
    entryPoints: [join("src", "press", "site", "timer-page.ts")],
    bundle: true,
    minify: true,
    format: "iife",
    globalName: "timerPage",
    footer: { js: "timerPage.startTimer();" },
    target: "es2022",
    charset: "utf8",
    legalComments: "none",
    write: false,
  })
  return outputFiles[0]!.contents
}
