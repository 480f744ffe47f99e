import { type Document, isAlias, isMap, isScalar, isSeq, type Node, type Pair } from "yaml"
import {
  aliasRefused,
  controlCharacter,
  duplicateKey,
  keyNotText,
  numberForm,
  type Saying,
  tagRefused,
  unknownKey,
} from "./messages.ts"
import { keyText } from "./place.ts"

/** Something said of an offset into the text, and of the path of keys there. */
export interface OffsetSaying {
  saying: Saying
  offset: number
  path: (string | number)[]
}

/** What is wrong with the nodes of a document, and whether plain data may be made of it. */
export interface NodeSayings {
  sayings: OffsetSaying[]
  readable: boolean
}

/**
 * Looks at every node of a document that parsed: duplicate keys, keys that are no text, the first anchor, alias or merge key,
 * foreign tags, invisible characters, and numbers in a form that misleads.
 */
export function nodeSayings(document: Document): NodeSayings {
  const seen: NodeSayings = { sayings: [], readable: true }
  visitNode(document.contents as Node | null, [], seen)
  const first = seen.sayings.findIndex(({ saying }) => saying.code === "alias-refused")
  seen.sayings = seen.sayings.filter(
    ({ saying }, index) => saying.code !== "alias-refused" || index === first,
  )
  return seen
}

/** Plain data of a document without aliases; keys such as `__proto__` are left out (they are findings). */
export function plainValue(document: Document): unknown {
  return plain(document.contents as Node | null)
}

type Path = (string | number)[]

function visitNode(node: Node | null, path: Path, seen: NodeSayings): void {
  if (!node) return
  const offset = node.range?.[0] ?? 0
  const say = (saying: Saying) => seen.sayings.push({ saying, offset, path })
  if (isAlias(node)) {
    say(aliasRefused(`*${node.source}`))
    seen.readable = false
    return
  }
  const { anchor, tag } = node as { anchor?: string; tag?: string }
  if (anchor) {
    say(aliasRefused(`&${anchor}`))
    seen.readable = false
  }
  if (tag && !plainTags.has(tag)) {
    say(tagRefused(tag))
    seen.readable = false
  }
  if (isScalar(node)) {
    const hidden = typeof node.value === "string" ? invisible.exec(node.value) : null
    if (hidden) say(controlCharacter(hidden[0]))
    if (typeof node.value === "number" && Number.isFinite(node.value) && !plainNumber.test(node.source ?? ""))
      say(numberForm(node.source ?? "", node.value))
  } else if (isSeq(node)) {
    node.items.forEach((item, index) => {
      visitNode(item as Node, [...path, index], seen)
    })
  } else if (isMap(node)) {
    visitPairs(node.items as Pair[], path, seen)
  }
}

function visitPairs(pairs: Pair[], path: Path, seen: NodeSayings): void {
  const written = new Set<string>()
  for (const pair of pairs) {
    const key = keyText(pair)
    const offset = (pair.key as Node | null)?.range?.[0] ?? 0
    const inside = key === null ? path : [...path, key]
    const say = (saying: Saying) => seen.sayings.push({ saying, offset, path: inside })
    if (key === null) {
      say(keyNotText())
      seen.readable = false
    } else if (key === "<<") {
      say(aliasRefused("<<"))
      seen.readable = false
    } else if (key === hidden) {
      say(unknownKey(key))
    } else if (written.has(key)) {
      say(duplicateKey(key))
    }
    if (key !== null) written.add(key)
    visitNode(pair.key as Node | null, inside, seen)
    visitNode(pair.value as Node | null, inside, seen)
  }
}

/** The one key that JavaScript would take for an object's ancestor. */
const hidden = "__proto__"

/** Types that plain YAML has; `!!str 010` is a fair way to say that text is meant. */
const plainTags = new Set(
  ["str", "int", "float", "bool", "null", "seq", "map"].map((name) => `tag:yaml.org,2002:${name}`),
)

/** Digits, a fraction, a minus: nothing that reads otherwise in another YAML or to a reader at night. */
const plainNumber = /^-?(0|[1-9]\d*)(\.\d+)?$/

/** Control characters but tab and line feed, half characters, marks that turn the direction of text, and stray order marks. */
const invisible =
  /(?![\t\n])[\p{Cc}\p{Cs}\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff\ufffe\uffff]/u

function plain(node: Node | null): unknown {
  if (isSeq(node)) return node.items.map((item) => plain(item as Node | null))
  if (!isMap(node)) return isScalar(node) ? node.value : null
  const entries = new Map<string, unknown>()
  for (const pair of node.items as Pair[]) {
    const key = keyText(pair) ?? ""
    // The first of two equal keys counts, as it is the one that `positionOf` finds.
    if (key !== hidden && !entries.has(key)) entries.set(key, plain(pair.value as Node | null))
  }
  return Object.fromEntries(entries)
}
