import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from "node:fs"
import { join, relative } from "node:path"

/** The two halves of the output: what may be published whole, and what is private. */
const halves = ["site", "print"] as const

/** An empty folder inside the output folder for a build to write into, so that nothing is written beside it. */
export function openStaging(output: string): string {
  const staging = join(output, ".building")
  rmSync(staging, { recursive: true, force: true })
  mkdirSync(staging, { recursive: true })
  return staging
}

/** Puts a finished build in place of the last one, and clears away what it was built in. */
export function replaceOutput(output: string, staging: string): void {
  for (const half of halves) {
    const old = join(output, `.old-${half}`)
    rmSync(old, { recursive: true, force: true })
    if (existsSync(join(output, half))) renameSync(join(output, half), old)
    renameSync(join(staging, half), join(output, half))
    rmSync(old, { recursive: true, force: true })
  }
  rmSync(staging, { recursive: true, force: true })
}

/** Clears away a build that came to nothing; the last good output stays as it is. */
export function dropStaging(staging: string): void {
  rmSync(staging, { recursive: true, force: true })
}

/** Every file below a folder with its bytes, paths relative to it with `/`, in order of path. */
export function filesBelow(folder: string): { path: string; bytes: Uint8Array }[] {
  if (!existsSync(folder)) return []
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ path: relative(folder, path).replaceAll("\\", "/"), bytes: readFileSync(path) }))
    .sort((a, b) => (a.path < b.path ? -1 : 1))
}
