import { spawnSync } from "node:child_process"
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { parseArgs } from "node:util"
import { Fault } from "../kernels/fault.ts"
import { exitStatus, WrongUsage } from "./arguments.ts"
import type { Terminal } from "./terminal.ts"

const usage = `usage: npm run add -- trade NAME    a trade: its folder, its tests, its place in the list, a number for its sheet
       npm run add -- sheet NAME    a sheet across trades: its file, its test, its call, its number
  NAME   small letters; a sheet's may have hyphens`

/** A file of the project as it will be. */
interface Written {
  path: string
  text: string
}

/**
 * `npm run add`: for contributors. Writes a template folder with its tests and lists it, so that types, structure and tests are
 * green at once; what it means is then written in its place. Nothing is written over.
 * @param top folder of the project
 */
export async function addCommand(args: readonly string[], terminal: Terminal, top = "."): Promise<number> {
  const { what, name } = told(args)
  const files = what === "trade" ? tradeFiles(name, top) : sheetFiles(name, top)
  for (const { path, text } of files) {
    mkdirSync(dirname(join(top, path)), { recursive: true })
    writeFileSync(join(top, path), text)
  }
  formatted(
    files.map(({ path }) => path),
    top,
  )
  if (what === "trade") schemasAgain(top)
  for (const { path } of files) terminal.out(path)
  terminal.out(
    what === "trade"
      ? `Write \`${name}: {}\` under a room's work and a crew for it in programme.yaml; then change the template's files, tests first.`
      : `It is bound with every job now; change what it shows, tests first.`,
  )
  return exitStatus.done
}

function told(args: readonly string[]): { what: "trade" | "sheet"; name: string } {
  try {
    const { positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { debug: { type: "boolean" } },
    })
    const [what, name = "", ...more] = positionals
    if (what !== "trade" && what !== "sheet") throw new Error("trade or sheet?")
    const form = what === "trade" ? /^[a-z]{3,20}$/ : /^[a-z][a-z-]{1,28}[a-z]$/
    if (!form.test(name) || more.length > 0) throw new Error(`'${name}' is no name for a ${what}`)
    return { what, name }
  } catch (error) {
    throw new WrongUsage(`${error instanceof Error ? error.message : error}\n${usage}`)
  }
}

function tradeFiles(name: string, top: string): Written[] {
  const folder = join("src/trades", name)
  refuseTaken(join(top, folder), name)
  const { index, letter } = listedTrade(readFileSync(join(top, listOfTrades), "utf8"), name, top)
  const words = { name, Name: capital(name), title: capital(name), letter }
  const own = templatesOf("new-trade", top).map(({ file, text }) => ({
    path: join(isTest(file) ? join("tests/trades", name) : folder, file),
    text: filled(text, words),
  }))
  return [...own, { path: listOfTrades, text: index }, numbersWith(name, roomBlock, top)]
}

const listOfTrades = "src/trades/index.ts"
const listOfSheets = "src/sheets/all-sheets.ts"
const numbers = "src/sheets/numbers.ts"

/** Files of a template that belong under `tests/`: tests, and the room they share. */
function isTest(file: string): boolean {
  return file.endsWith(".test.ts") || file === "room.ts"
}

function sheetFiles(name: string, top: string): Written[] {
  const path = join("src/sheets", `${name}.ts`)
  refuseTaken(join(top, path), name)
  const title = capital(name.replaceAll("-", " "))
  const words = { name, camel: camel(name), title }
  const own = templatesOf("new-sheet", top).map(({ file, text }) => ({
    path: file.endsWith(".test.ts") ? join("tests/sheets", `${name}.test.ts`) : path,
    text: filled(text, words),
  }))
  const sheet = `${camel(name)}Sheet`
  const before = readFileSync(join(top, listOfSheets), "utf8")
  const imported = withImport(before, `import { ${sheet} } from "./${name}.ts"`)
  const text = changed(
    imported,
    /^( *)(\]\.filter\(\(sheet\) => sheet !== null\))/m,
    `$1  ${sheet}(result),\n$1$2`,
  )
  return [...own, { path: listOfSheets, text }, numbersWith(name, jobBlock, top)]
}

function refuseTaken(path: string, name: string): void {
  if (existsSync(path)) throw new WrongUsage(`${path} is there already; nothing was written for ${name}`)
}

function templatesOf(folder: string, top: string): { file: string; text: string }[] {
  const path = join(top, "templates", folder)
  return readdirSync(path)
    .filter((file) => file.endsWith(".txt"))
    .sort()
    .map((file) => ({ file: file.replace(/\.txt$/, ""), text: readFileSync(join(path, file), "utf8") }))
}

function filled(text: string, words: Readonly<Record<string, string>>): string {
  return text.replace(/\{\{(\w+)\}\}/g, (whole, key: string) => words[key] ?? whole)
}

/** The list of trades with one more, before the last: coats come after all else. And a letter no other trade marks pieces with. */
function listedTrade(text: string, name: string, top: string): { index: string; letter: string } {
  const folders = [...text.matchAll(/from "\.\/([a-z]+)\/index\.ts"/g)].map(([, folder]) => folder!)
  const letters = folders.flatMap((folder) => {
    const own = readFileSync(join(top, "src/trades", folder, "index.ts"), "utf8")
    return /^ {2}letter: "([A-Z])"/m.exec(own)?.[1] ?? []
  })
  const letter = [...name.toUpperCase(), ..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].find(
    (each) => !letters.includes(each),
  )
  if (!letter) throw new WrongUsage("every letter marks the pieces of some trade")
  const imported = withImport(text, `import { ${name} } from "./${name}/index.ts"`)
  return { index: changed(imported, /^( *)(\w+,\n\] as readonly Trade)/m, `$1${name},\n$1$2`), letter }
}

/** One import more; the formatter puts it in its place. */
function withImport(text: string, line: string): string {
  return `${line}\n${text}`
}

/** Blocks of numbers: of one room, of the job. */
const roomBlock = { from: 1, to: 49, after: "// one room" }
const jobBlock = { from: 50, to: 69, after: "// the job" }

function numbersWith(kind: string, block: typeof roomBlock, top: string): Written {
  const text = readFileSync(join(top, numbers), "utf8")
  const rows = [...text.matchAll(/^ {2}"?([a-z-]+)"?: (\d+),/gm)]
  if (rows.some(([, each]) => each === kind))
    throw new WrongUsage(`there is a kind of sheet called ${kind} already`)
  const used = rows
    .map(([, , number]) => Number(number))
    .filter((each) => each >= block.from && each <= block.to)
  const free = Math.max(block.from - 1, ...used) + 1
  if (free > block.to)
    throw new WrongUsage(`no number is free ${block.after.slice(3)}: widen its block in ${numbers}`)
  const key = kind.includes("-") ? `"${kind}"` : kind
  const last = Math.max(...used)
  return {
    path: numbers,
    text: changed(text, new RegExp(`^( *[^\\n]*: ${last},)$`, "m"), `$1\n  ${key}: ${free},`),
  }
}

function changed(text: string, pattern: RegExp, put: string): string {
  if (!pattern.test(text)) throw new Fault(`the list has another form than it had: ${pattern}`)
  return text.replace(pattern, put)
}

/** Imports in order and lines broken as everywhere in the project, whatever the length of the name. */
function formatted(paths: readonly string[], top: string): void {
  const formatter = join("node_modules", "@biomejs", "biome", "bin", "biome")
  runIn(
    top,
    [formatter, "check", "--write", ...paths],
    "the new files could not be put in the project's form",
  )
}

/** The editors' schemas with the new trade in them, by a process that reads the list anew. */
function schemasAgain(top: string): void {
  const entry = join("src", "commands", "run.ts")
  runIn(top, ["--import", "tsx", entry, "schemas"], "the schemas could not be written again")
}

function runIn(top: string, args: readonly string[], otherwise: string): void {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: top, encoding: "utf8" })
  if (status !== 0) throw new Fault(`${otherwise}:\n${stdout}${stderr}`)
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1)
}

function camel(name: string): string {
  return name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())
}
