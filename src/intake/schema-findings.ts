import { isScalar } from "yaml"
import type { z } from "zod"
import {
  badForm,
  manyFindings,
  missingKey,
  negativeSize,
  notAllowed,
  outOfRange,
  type Saying,
  shown,
  unknownKey,
  wrongType,
  wrongValue,
} from "./messages.ts"
import { nearest } from "./nearest.ts"
import { keysOf, metaOf, schemaAt } from "./schema-walk.ts"
import { findingIn, type LocatedFinding, type YamlFile } from "./yaml-file.ts"

type Path = (string | number)[]
type Issue = z.core.$ZodIssue

/** A file's content as its schema reads it, with defaults; undefined where it does not fit. */
export interface Checked<T> {
  data: T | undefined
  findings: LocatedFinding[]
}

/**
 * Holds what stands at a path of a file against a schema. Every misfit is a finding at its own place; a misspelt key counts
 * once, not as an unknown key and a missing one.
 */
export function checkedBy<T>(yaml: YamlFile, schema: z.ZodType<T>, base: Path = []): Checked<T> {
  const value = valueAt(yaml.value, base)
  const result = schema.safeParse(value)
  if (result.success) return { data: result.data, findings: [] }
  const within: Within = { yaml, schema, value, base }
  const issues = withoutTypoTwins(result.error.issues, within)
  const findings = issues.slice(0, mostIssues).flatMap((issue) => findingsOf(issue, within))
  return { data: undefined, findings: [...findings, ...leftOut(yaml, base, issues.length - mostIssues)] }
}

/** Most misfits told of one file, and most unknown keys of one mapping: a file of any size is answered in short. */
const mostIssues = 300
const mostKeys = 40

function leftOut(yaml: YamlFile, at: Path, more: number): LocatedFinding[] {
  return more > 0 ? [findingIn(yaml, manyFindings(more), at)] : []
}

/** What stands at a path; undefined where nothing does. */
export function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, key) =>
      typeof inside === "object" && inside !== null && Object.hasOwn(inside, key)
        ? (inside as Record<PropertyKey, unknown>)[key]
        : undefined,
    value,
  )
}

interface Within {
  yaml: YamlFile
  schema: z.ZodType
  value: unknown
  base: Path
}

function findingsOf(issue: Issue, within: Within): LocatedFinding[] {
  const path = issue.path as Path
  const at = [...within.base, ...path]
  if (issue.code === "unrecognized_keys") {
    const known = keysOf(schemaAt(within.schema, within.value, path), valueAt(within.value, path))
    const open = unwritten(issue, within)
    const told = issue.keys.slice(0, mostKeys).map((key) => {
      const said = unknownKey(key, nearest(key, open) ?? nearest(key, known), known)
      return findingIn(within.yaml, said, [...at, key], "key")
    })
    return [...told, ...leftOut(within.yaml, at, issue.keys.length - mostKeys)]
  }
  if (issue.code === "invalid_key") {
    const [inner] = issue.issues
    const said = badForm(`key ${shown(path.at(-1))}`, inner ? inner.message : "another key")
    return [findingIn(within.yaml, said, at, "key")]
  }
  if (issue.code === "invalid_union" && issue.errors.length) {
    const deeper = deepestBranch(issue.errors)
    if (deeper)
      return deeper.flatMap((inner) => findingsOf({ ...inner, path: [...path, ...inner.path] }, within))
  }
  return [findingIn(within.yaml, sayingOf(issue, within), at)]
}

/** Missing keys less those that a misspelt key stands for. */
function withoutTypoTwins(issues: Issue[], within: Within): Issue[] {
  const meant = new Set(
    issues.slice(0, mostIssues).flatMap((issue) => {
      if (issue.code !== "unrecognized_keys") return []
      const open = unwritten(issue, within)
      return issue.keys.slice(0, mostKeys).map((key) => JSON.stringify([...issue.path, nearest(key, open)]))
    }),
  )
  return issues.filter((issue) => !(isMissing(issue, within.value) && meant.has(JSON.stringify(issue.path))))
}

function unwritten(issue: Issue, within: Within): string[] {
  const here = valueAt(within.value, issue.path)
  const known = keysOf(schemaAt(within.schema, within.value, issue.path), here)
  return known.filter((key) => !Object.hasOwn(here as object, key))
}

function isMissing(issue: Issue, value: unknown): boolean {
  return issue.path.length > 0 && valueAt(value, issue.path) === undefined
}

/** Of a union's branches, the issues of the one that fits best, where a branch at least took the value's own type. */
function deepestBranch(branches: Issue[][]): Issue[] | undefined {
  const entered = branches.filter((issues) => issues.every((issue) => issue.path.length > 0))
  return entered.toSorted((a, b) => a.length - b.length)[0]
}

function sayingOf(issue: Issue, within: Within): Saying {
  const value = valueAt(within.value, issue.path)
  const found = foundText(issue, within, value)
  const described = descriptionOf(issue, within)
  if (isMissing(issue, within.value)) return missingKey(String(issue.path.at(-1)), described)
  switch (issue.code) {
    case "invalid_type":
      return wrongType(
        found,
        wanted(typeWord(issue.expected), described),
        typeMend(issue.expected, value, within, issue),
      )
    case "invalid_value":
      return choice(issue.values.map(String), found, value)
    case "invalid_union":
      return choice(unionWords(issue), found, value)
    case "invalid_format":
      return badForm(found, issue.message.replace(/^expected /, ""))
    case "too_small":
    case "too_big":
      return beyondLimit(issue, found, value)
    case "custom":
      return notAllowed(String(issue.params?.code ?? "not-allowed"), found, issue.message)
    default:
      return notAllowed("not-allowed", found, issue.message)
  }
}

function choice(words: string[], found: string, value: unknown): Saying {
  const near = typeof value === "string" ? nearest(value, words) : undefined
  return wrongValue(
    found,
    words.length > 1 ? `one of ${words.join(", ")}` : (words[0] ?? "another value"),
    near,
  )
}

function unionWords(issue: Extract<Issue, { code: "invalid_union" }>): string[] {
  const { options } = issue as { options?: unknown[] }
  if (options) return options.map(String)
  return issue.errors.flat().flatMap((inner) => {
    if (inner.code === "invalid_value") return inner.values.map(String)
    if (inner.code === "invalid_type") return [typeWord(inner.expected)]
    return [inner.message]
  })
}

function beyondLimit(
  issue: Extract<Issue, { code: "too_small" | "too_big" }>,
  found: string,
  value: unknown,
): Saying {
  const small = issue.code === "too_small"
  const limit = small ? issue.minimum : issue.maximum
  if (typeof value === "number") {
    if (small && value < 0 && Number(limit) >= 0) return negativeSize(value)
    const closeness = issue.inclusive ? (small ? "at least" : "at most") : small ? "more than" : "less than"
    return outOfRange(small ? "too-small" : "too-big", found, `${closeness} ${limit}`)
  }
  const least = small ? "at least" : "at most"
  if (Array.isArray(value))
    return outOfRange(
      small ? "too-few" : "too-many",
      `a list of ${value.length}`,
      `${least} ${limit} entries`,
    )
  const size = typeof value === "string" ? `text of ${value.length} characters` : found
  return outOfRange(small ? "too-short" : "too-long", size, `${least} ${limit} characters`)
}

function descriptionOf(issue: Issue, within: Within): string | undefined {
  const schema = schemaAt(within.schema, within.value, issue.path)
  const { description } = schema ? metaOf(schema) : {}
  return typeof description === "string" ? description : undefined
}

function wanted(word: string, described: string | undefined): string {
  return described ? `${word}: ${described.replace(/\.$/, "")}` : word
}

function typeWord(expected: string): string {
  return typeWords.get(expected) ?? expected
}

const typeWords = new Map([
  ["string", "text"],
  ["number", "a number"],
  ["int", "a whole number"],
  ["boolean", "true or false"],
  ["array", "a list"],
  ["tuple", "a list"],
  ["object", "keys with values"],
  ["record", "keys with values"],
])

/** The value as it was typed, so that 1.10 is not shown as 1.1. */
function foundText(issue: Issue, within: Within, value: unknown): string {
  const source = sourceOf(within, issue)
  return typeof value === "number" && source ? source : shown(value)
}

function sourceOf(within: Within, issue: Issue): string | undefined {
  const node = within.yaml.document?.getIn([...within.base, ...issue.path], true)
  return isScalar(node) ? node.source : undefined
}

function typeMend(expected: string, value: unknown, within: Within, issue: Issue): string | undefined {
  const source = sourceOf(within, issue) ?? ""
  if (expected === "string" && typeof value === "number") return `write "${source}" in quotes`
  if (typeof value !== "string") return undefined
  if (expected === "boolean" && /^(y|yes|on)$/i.test(value)) return "write true"
  if (expected === "boolean" && /^(n|no|off)$/i.test(value)) return "write false"
  const figure = /^(-?\d+(?:\.\d+)?) ?(?:mm)?$/.exec(value.replace(/(\d),(?=\d{3}\b)/g, "$1"))
  return expected === "number" && figure
    ? `write ${figure[1]} alone, without quotes, comma or unit`
    : undefined
}
