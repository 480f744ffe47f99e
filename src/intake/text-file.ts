import { lstatSync, readFileSync, realpathSync, statSync } from "node:fs"
import { sep } from "node:path"
import {
  binaryFile,
  fileTooBig,
  linkLeadsOut,
  missingFile,
  notAFile,
  type Saying,
  wrongEncoding,
} from "./messages.ts"

/** The text of a file, or why there is none; line and column where the place is known. */
export type ReadText = { text: string } | { refused: Saying; line: number; column: number }

/** Largest file that is read, bytes: a hundred times the largest room anyone would type. */
export const largestFile = 1_048_576

/**
 * The text of a file inside a folder that it must not lead out of.
 * Refused: missing, no plain file, a link out of the folder, larger than `largestFile`, other than UTF-8, not text.
 */
export function readText(path: string, folder: string): ReadText {
  try {
    if (leadsOut(path, folder)) return refuse(linkLeadsOut())
    const about = statSync(path)
    if (!about.isFile()) return refuse(notAFile("it is a folder or a device"))
    if (about.size > largestFile) return refuse(fileTooBig(about.size, largestFile))
    return textOf(readFileSync(path))
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "unknown"
    const name = path.slice(path.lastIndexOf(sep) + 1)
    return refuse(code === "ENOENT" ? missingFile(name) : notAFile(code))
  }
}

/** The text that the bytes hold in UTF-8 (a byte order mark in front is taken off), or why they are no such text. */
export function textOf(bytes: Uint8Array): ReadText {
  const foreign = foreignEncoding(bytes)
  if (foreign) return refuse(wrongEncoding(foreign))
  if (bytes.includes(0)) return refuse(binaryFile())
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) }
  } catch {
    return { refused: wrongEncoding("not UTF-8 here"), ...firstBadByte(bytes) }
  }
}

/** True if a path, all links followed, is not inside the folder. */
export function leadsOut(path: string, folder: string): boolean {
  // A link to nowhere must be refused as a link, not reported as a missing file.
  if (lstatSync(path).isSymbolicLink() && statSync(path, { throwIfNoEntry: false }) === undefined) return true
  return !`${realpathSync(path)}${sep}`.startsWith(`${realpathSync(folder)}${sep}`)
}

function refuse(refused: Saying): ReadText {
  return { refused, line: 1, column: 1 }
}

const lineFeed = 0x0a

/** Names UTF-16 and UTF-32 by their byte order mark, or UTF-16 without one by its regular noughts between Latin letters. */
function foreignEncoding(bytes: Uint8Array): string | undefined {
  const begins = (...mark: number[]) => mark.every((byte, index) => bytes[index] === byte)
  if (begins(0xff, 0xfe, 0, 0) || begins(0, 0, 0xfe, 0xff)) return "UTF-32"
  if (begins(0xff, 0xfe) || begins(0xfe, 0xff)) return "UTF-16"
  const few = 4
  const head = bytes.subarray(0, 2 * few)
  if (head.length < few) return undefined
  const noughts = (parity: number) =>
    head.every((byte, index) => (index % 2 === parity ? byte === 0 : byte !== 0))
  return noughts(0) || noughts(1) ? "UTF-16" : undefined
}

function firstBadByte(bytes: Uint8Array): { line: number; column: number } {
  let line = 1
  let start = 0
  for (;;) {
    const end = bytes.indexOf(lineFeed, start)
    const whole = bytes.subarray(start, end < 0 ? bytes.length : end)
    if (!isUtf8(whole) || end < 0) return { line, column: columnOfBadByte(whole) }
    start = end + 1
    line++
  }
}

function columnOfBadByte(line: Uint8Array): number {
  let good = 0
  let bad = line.length
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2)
    if (isUtf8(line.subarray(0, middle), true)) good = middle
    else bad = middle
  }
  return new TextDecoder().decode(line.subarray(0, good), { stream: true }).length + 1
}

function isUtf8(bytes: Uint8Array, mayBreakOff = false): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes, { stream: mayBreakOff })
    return true
  } catch {
    return false
  }
}
