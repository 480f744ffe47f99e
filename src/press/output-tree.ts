import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from "node:fs"
import { dirname, join, relative } from "node:path"
import { Fault } from "../kernels/fault.ts"
import { holdsLock, isHeldElsewhere, releaseLock, takeLock } from "./output-lock.ts"

/** The two halves of the output: what may be published whole, and what is private. */
const halves = ["site", "print"] as const

/** A build being written, and one that is whole and only has to be put in place. */
const building = ".building"
const ready = ".ready"

/**
 * An empty folder inside the output folder for a build to write into, so that nothing is written beside it. The output folder
 * is this process's own until the build is put in place or dropped; what an earlier build left half done is put right first.
 * @throws Fault when another build writes into the folder
 */
export function openStaging(output: string): string {
  takeLock(output)
  putInPlace(output)
  const staging = join(output, building)
  rmSync(staging, { recursive: true, force: true })
  mkdirSync(staging, { recursive: true })
  return staging
}

/**
 * Puts a finished build in place of the last one. The one renaming to `.ready` decides: killed before it, the last output stands;
 * after it, the new one does, and whatever of it is not yet in its place is put there by the next command that opens the folder.
 * No system call of Node exchanges two folders, so between two of the renamings that follow (some microseconds) a half may be missing.
 */
export function replaceOutput(output: string, staging: string): void {
  if (!holdsLock(output)) throw new Fault(`${output} was taken over by another build; this one is dropped`)
  for (const half of halves)
    if (!existsSync(join(staging, half))) throw new Fault(`the build made no ${half} folder`)
  clearOld(output)
  renameSync(staging, join(output, ready))
  putInPlace(output)
  releaseLock(output)
}

/** Puts right what a killed command left of an output folder: the tree is then the last good one or the new one, whole. */
export function healOutput(output: string): void {
  if (!existsSync(join(output, ready)) || isHeldElsewhere(output)) return
  takeLock(output)
  try {
    putInPlace(output)
  } finally {
    releaseLock(output)
  }
}

/** From wherever an earlier run of these steps was cut off: nothing between the renamings but the next renaming. */
function putInPlace(output: string): void {
  const whole = join(output, ready)
  if (existsSync(whole)) {
    for (const half of halves) {
      if (!existsSync(join(whole, half))) continue
      if (existsSync(join(output, half))) renameSync(join(output, half), freeName(output, half))
      renameSync(join(whole, half), join(output, half))
    }
    rmSync(whole, { recursive: true, force: true })
  }
  clearOld(output)
}

/** Where the half that is replaced goes until it is removed. */
function freeName(output: string, half: string): string {
  let count = 0
  while (existsSync(join(output, `.old-${half}-${count}`))) count += 1
  return join(output, `.old-${half}-${count}`)
}

function clearOld(output: string): void {
  for (const name of readdirSync(output))
    if (/^\.old-(site|print)/.test(name)) rmSync(join(output, name), { recursive: true, force: true })
}

/** Clears away a build that came to nothing; the last good output stays as it is. */
export function dropStaging(staging: string): void {
  rmSync(staging, { recursive: true, force: true })
  releaseLock(dirname(staging))
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
