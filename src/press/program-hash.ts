import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { sha256 } from "./revisions/fingerprint.ts"

/** What a job's figures and pages are made with. */
const whole = ["src", "templates", "package-lock.json"]

/** What turns a finished HTML document into its PDF. */
const pressAlone = ["src/press", "templates/assets", "templates/fonts", "package-lock.json"]

/** Hashes of the program itself: what an earlier output was made with, so that it is used again only by the same. */
export interface ProgramHash {
  whole: string
  press: string
}

/**
 * The hashes of the program as it stands on the disk.
 * @param top the project's own folder
 */
export function programHash(top = "."): ProgramHash {
  return { whole: hashOf(top, whole), press: hashOf(top, pressAlone) }
}

function hashOf(top: string, parts: readonly string[]): string {
  const files = parts.flatMap((part) => filesIn(top, part)).sort()
  return sha256(files.map((file) => `${file} ${sha256(readFileSync(join(top, file)))}`).join("\n"))
}

function filesIn(top: string, part: string): string[] {
  if (part.includes(".")) return [part]
  return readdirSync(join(top, part), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => path.slice(join(top, part).length - part.length).replaceAll("\\", "/"))
}
