import { readdirSync, readFileSync } from "node:fs"
import { dirname, join } from "node:path"

/** The top of the project. */
export const top = new URL("../..", import.meta.url).pathname

/** One import or re-export of a file. */
export interface Import {
  /** As written: `../units.ts`, `node:fs`, `zod`. */
  written: string
  /** Path from the top of the project where it is a file of the project, else null. */
  file: string | null
  /** True if only types are taken. */
  typeOnly: boolean
}

/** One source file with what it imports; paths from the top of the project, with `/`. */
export interface SourceFile {
  path: string
  text: string
  imports: Import[]
}

/** Paths of all files below a folder, from the top of the project, in order. */
export function filesUnder(folder: string, ending: string): string[] {
  return readdirSync(join(top, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => join(entry.parentPath, entry.name).slice(top.length).replaceAll("\\", "/"))
    .sort()
}

/** Every source file of the project, declarations of types for others' packages left out. */
export function sourceFiles(): SourceFile[] {
  return filesUnder("src", ".ts")
    .filter((path) => !path.endsWith(".d.ts"))
    .map((path) => {
      const text = readFileSync(join(top, path), "utf8")
      return { path, text, imports: importsOf(path, text) }
    })
}

/** What a file imports, re-exports or loads while it runs. */
export function importsOf(path: string, text: string): Import[] {
  const code = withoutComments(text)
  const found: Import[] = []
  for (const [, what = "", written = ""] of code.matchAll(
    /^(?:import|export)\s+([^"'`;]*?)\s*from\s+"([^"]+)"/gm,
  ))
    found.push({ written, file: fileOf(path, written), typeOnly: onlyTypes(what) })
  for (const [, written = ""] of code.matchAll(/^import\s+"([^"]+)"/gm))
    found.push({ written, file: fileOf(path, written), typeOnly: false })
  for (const [, written = ""] of code.matchAll(/\bimport\("([^"]+)"\)/g))
    found.push({ written, file: fileOf(path, written), typeOnly: false })
  return found
}

/** A file's text without its comments; text inside strings that looks like one goes too, which no check here minds. */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "$1")
}

function onlyTypes(what: string): boolean {
  if (/^type\s/.test(what)) return true
  const names = /^\{([\s\S]*)\}$/.exec(what.trim())?.[1]
  if (names === undefined) return false
  return names
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "")
    .every((name) => name.startsWith("type "))
}

function fileOf(from: string, written: string): string | null {
  return written.startsWith(".") ? join(dirname(from), written).replaceAll("\\", "/") : null
}
