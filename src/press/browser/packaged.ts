import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs"
import { createRequire } from "node:module"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"

import { invariant } from "../../kernels/fault.ts"

/** The packaged browser, unpacked and ready to start. */
export interface UnpackedBrowser {
  path: string
  /** Version of the npm package, e.g. `147.0.0`; its first number is the browser's own. */
  packageVersion: string
  /** What the browser needs in its environment: its own fonts and, on a machine without them, its own libraries. */
  env: (withLibraries: boolean) => NodeJS.ProcessEnv
}

/**
 * Unpacks the browser that an npm package carries into a temporary folder named for its version and user,
 * or takes it from there if it was unpacked before. The package by itself would reuse a binary of any
 * version that lies in the temporary folder; two builds starting at once never see half a file, as the
 * folder appears whole by renaming.
 */
export async function unpackBrowser(): Promise<UnpackedBrowser> {
  const packageVersion = versionOfPackage()
  const folder = join(tmpdir(), `storey-rod-browser-${packageVersion}-${process.getuid?.() ?? "user"}`)
  inTurn = inTurn.then(() => (existsSync(folder) ? undefined : unpackInto(folder)))
  await inTurn
  const owner = lstatSync(folder)
  invariant(
    owner.isDirectory() && (process.getuid === undefined || owner.uid === process.getuid()),
    `${folder} was not made by this user; remove it`,
  )
  return {
    path: join(folder, "chromium"),
    packageVersion,
    env: (withLibraries) => envOf(folder, withLibraries),
  }
}

/** Unpacking borrows the environment of the whole process, so one waits for the other. */
let inTurn: Promise<void> = Promise.resolve()

async function unpackInto(folder: string): Promise<void> {
  mkdirSync(dirname(folder), { recursive: true })
  const draft = mkdtempSync(`${folder}-`)
  await withTemporaryFolder(draft, async () => {
    const { default: chromium } = await import("@sparticuz/chromium")
    await chromium.executablePath()
  })
  writeFileSync(join(draft, fontSettings), fontSettingsFor(folder))
  try {
    renameSync(draft, folder)
  } catch {
    rmSync(draft, { recursive: true, force: true })
  }
  invariant(existsSync(join(folder, "chromium")), `the packaged browser could not be unpacked into ${folder}`)
}

const fontSettings = "fonts.conf"

/**
 * The package's own settings look for its fonts in one fixed place. A browser that finds no font at all also
 * refuses the fonts that pages bring, so a bare machine needs these; and no font of the machine can slip in.
 */
function fontSettingsFor(folder: string): string {
  const inside = (name: string): string => join(folder, name).replace(/&/g, "&amp;").replace(/</g, "&lt;")
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${inside("fonts")}</dir>
  <cachedir>${inside("fonts-cache")}</cachedir>
</fontconfig>
`
}

/**
 * The package asks the process for its temporary folder and unpacks system libraries only where this
 * variable names a bare cloud machine; both are set for the time of unpacking, then put back.
 */
async function withTemporaryFolder(folder: string, unpack: () => Promise<void>): Promise<void> {
  const before = { TMPDIR: process.env.TMPDIR, AWS_LAMBDA_JS_RUNTIME: process.env.AWS_LAMBDA_JS_RUNTIME }
  const touched = {
    FONTCONFIG_PATH: process.env.FONTCONFIG_PATH,
    LD_LIBRARY_PATH: process.env.LD_LIBRARY_PATH,
  }
  process.env.TMPDIR = folder
  process.env.AWS_LAMBDA_JS_RUNTIME = "nodejs20.x"
  try {
    await unpack()
  } finally {
    for (const [name, value] of Object.entries({ ...before, ...touched })) {
      if (value === undefined) delete process.env[name]
      else process.env[name] = value
    }
  }
}

function envOf(folder: string, withLibraries: boolean): NodeJS.ProcessEnv {
  const libraries = join(folder, "al2023", "lib")
  const paths = [libraries, process.env.LD_LIBRARY_PATH].filter((path) => path)
  return {
    ...process.env,
    FONTCONFIG_PATH: folder,
    FONTCONFIG_FILE: join(folder, fontSettings),
    ...(withLibraries ? { LD_LIBRARY_PATH: paths.join(":") } : {}),
  }
}

function versionOfPackage(): string {
  const entry = createRequire(import.meta.url).resolve("@sparticuz/chromium")
  const packageFile = join(entry.slice(0, entry.lastIndexOf("chromium/build")), "chromium", "package.json")
  const { version }: { version?: unknown } = JSON.parse(readFileSync(packageFile, "utf8"))
  invariant(typeof version === "string", "the packaged browser's package states no version")
  return version
}
