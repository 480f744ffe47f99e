import { type Document, isScalar, LineCounter, parseAllDocuments } from "yaml"
import type { Finding } from "../kernels/finding.ts"
import {
  directiveRefused,
  emptyFile,
  manyDocuments,
  manyFindings,
  type Saying,
  tooDeep,
  yamlSyntax,
} from "./messages.ts"
import { type Lines, type Place, positionAt, positionOf } from "./place.ts"
import { type ReadText, textOf } from "./text-file.ts"
import { nodeSayings, type OffsetSaying, plainValue } from "./yaml-nodes.ts"

/** A finding with its place in the author's files. */
export interface LocatedFinding extends Finding {
  place: Place
}

/** One YAML file as read: its text, what stands in it, and what is wrong with its form. */
export interface YamlFile extends Lines {
  /** Relative to the job's folder. */
  file: string
  /** Relative to the folder of all jobs. */
  shown: string
  text: string
  /** Plain data; undefined where the file cannot be read as one YAML document without aliases. */
  value: unknown
  /** True if `value` is there to be looked at. */
  readable: boolean
  findings: LocatedFinding[]
}

/** Deepest nesting of brackets, dashes or columns of indent taken; the format itself has fewer than 20 levels. */
export const deepestNesting = 200

/** Reads YAML text (or says why there is none). Everything wrong with its form is among the findings. */
export function yamlFile(file: string, shown: string, read: ReadText): YamlFile {
  const empty = { file, shown, text: "", value: undefined, readable: false, document: null }
  const begun: YamlFile = { ...empty, lines: new LineCounter(), findings: [] }
  if ("refused" in read) {
    const { refused, line, column } = read
    begun.findings.push({ ...refused, at: { file, path: [] }, place: { file: shown, line, column } })
    return begun
  }
  begun.text = read.text
  const deep = depthOffset(read.text)
  if (deep !== undefined) {
    begun.lines.lineStarts = lineStarts(read.text)
    return withFindings(begun, [{ saying: tooDeep(deepestNesting), offset: deep, path: [] }], false)
  }
  return parsed(begun)
}

/** The file that YAML text given directly would be; for templates and tests. */
export function yamlFromText(file: string, text: string): YamlFile {
  return yamlFile(file, file, textOf(new TextEncoder().encode(text)))
}

/** A finding about a place in a file. */
export function findingIn(
  yaml: YamlFile,
  saying: Saying,
  path: (string | number)[],
  on: "value" | "key" = "value",
): LocatedFinding {
  const place = { file: yaml.shown, ...positionOf(yaml, path, on) }
  return { ...saying, at: { file: yaml.file, path }, place }
}

function parsed(begun: YamlFile): YamlFile {
  const documents = parseAllDocuments(begun.text, {
    lineCounter: begun.lines,
    prettyErrors: false,
    // Looked for in yaml-nodes instead: the package compares every key with every other.
    uniqueKeys: false,
    logLevel: "silent",
    version: "1.2",
    merge: false,
  })
  const [document, second] = documents as Document[]
  const directive = directiveOffset(begun.text)
  if (directive !== undefined)
    return withFindings(begun, [{ saying: directiveRefused(), offset: directive, path: [] }], false)
  if (!document || (isEmpty(document) && !document.errors.length))
    return withFindings(begun, [{ saying: emptyFile(), offset: 0, path: [] }], false)
  const whole = { ...begun, document }
  const [error] = document.errors.toSorted((a, b) => a.pos[0] - b.pos[0])
  if (error)
    return withFindings(whole, [{ saying: yamlSyntax(error.message), offset: error.pos[0], path: [] }], false)
  if (second)
    return withFindings(whole, [{ saying: manyDocuments(), offset: second.range?.[0] ?? 0, path: [] }], false)
  const { sayings, readable } = nodeSayings(document)
  return { ...withFindings(whole, sayings, readable), value: readable ? plainValue(document) : undefined }
}

/** True for a document with nothing in it: no node, or one that is written with no letter. */
function isEmpty({ contents }: Document): boolean {
  return contents === null || (isScalar(contents) && contents.value === null && !contents.source)
}

function withFindings(yaml: YamlFile, sayings: OffsetSaying[], readable: boolean): YamlFile {
  const more = sayings.length - mostSayings
  const last = sayings[mostSayings]
  const told = sayings.slice(0, mostSayings)
  if (last) told.push({ ...last, saying: manyFindings(more) })
  const findings = told.map(({ saying, offset, path }) => ({
    ...saying,
    at: { file: yaml.file, path },
    place: { file: yaml.shown, ...positionAt(yaml.lines, offset) },
  }))
  return { ...yaml, findings, readable }
}

/** Most that is said of the form of one file. */
const mostSayings = 300

/** Where the text nests deeper than `deepestNesting`, which would exhaust the YAML package before it could complain. */
function depthOffset(text: string): number | undefined {
  const indented = text.search(new RegExp(`^ {${deepestNesting + 1}}`, "m"))
  if (indented >= 0) return indented
  const dashes = text.search(new RegExp(`(?:[-?:][ \\t]+){${deepestNesting + 1}}`))
  if (dashes >= 0) return dashes
  let open = 0
  for (let offset = 0; offset < text.length; offset++) {
    const character = text[offset]
    if (character === "[" || character === "{") open++
    else if (open > 0 && (character === "]" || character === "}")) open--
    if (open > deepestNesting) return offset
  }
  return undefined
}

/** A line beginning with % before any content. */
function directiveOffset(text: string): number | undefined {
  const found = /^(?:[ \t]*(?:#[^\n]*)?\r?\n)*%/.exec(text)
  return found ? found[0].length - 1 : undefined
}

function lineStarts(text: string): number[] {
  return [0, ...[...text.matchAll(/\n/g)].map((found) => found.index + 1)]
}
