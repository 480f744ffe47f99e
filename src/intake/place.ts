import { type Document, isMap, isNode, isScalar, isSeq, type LineCounter, type Node, type Pair } from "yaml"

/** A place in a file as an editor shows it: line and column from 1. */
export interface Place {
  /** Relative to the jobs folder, e.g. `loft/rooms/a1.yaml`. */
  file: string
  line: number
  column: number
}

/** The document and the line starts of one file. */
export interface Lines {
  document: Document | null
  lines: LineCounter
}

/**
 * Where a path of keys stands in a file.
 * The whole path there: the start of its value, or of its key where `on` asks for the key or nothing is written behind it.
 * A part missing: the key (or list item) of the deepest part that is there; the first line of the content if none is.
 */
export function positionOf(
  { document, lines }: Lines,
  path: readonly (string | number)[],
  on: "value" | "key" = "value",
): { line: number; column: number } {
  const { node, key, whole } = deepest(document, path)
  const wantsKey = on === "key" || !whole || !hasText(node)
  const marked = (wantsKey && key) || node || key
  return positionAt(lines, marked?.range?.[0] ?? 0)
}

/** Line and column, from 1, of an offset into the text. */
export function positionAt(lines: LineCounter, offset: number): { line: number; column: number } {
  const { line, col } = lines.linePos(offset)
  return line > 0 ? { line, column: col } : { line: 1, column: 1 }
}

interface Reached {
  node: Node | null
  key: Node | null
  whole: boolean
}

function deepest(document: Document | null, path: readonly (string | number)[]): Reached {
  let reached: Reached = { node: document?.contents ?? null, key: null, whole: true }
  for (const part of path) {
    const next = childOf(reached.node, part)
    if (!next) return { ...reached, whole: false }
    reached = next
  }
  return reached
}

function childOf(node: Node | null, part: string | number): Reached | undefined {
  if (isSeq(node)) {
    const item = node.items[Number(part)]
    return isNode(item) ? { node: item, key: null, whole: true } : undefined
  }
  if (!isMap(node)) return undefined
  const pair = node.items.find((each) => keyText(each) === String(part))
  return pair && { node: nodeOrNull(pair.value), key: nodeOrNull(pair.key), whole: true }
}

/** The text of a mapping's key, or null where it is no plain key. */
export function keyText(pair: Pair): string | null {
  return isScalar(pair.key) ? String(pair.key.value ?? "") : null
}

function nodeOrNull(value: unknown): Node | null {
  return isNode(value) ? value : null
}

function hasText(node: Node | null): boolean {
  return Boolean(node?.range && node.range[1] > node.range[0])
}
