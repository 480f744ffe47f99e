import type { Random } from "./random.ts"

/** Changes the bytes of one file as a bad disk, a bad editor or a bad wish might. */
export function mutateBytes(bytes: Uint8Array, random: Random): Uint8Array {
  return random.of(changes)(bytes, random)
}

type Change = (bytes: Uint8Array, random: Random) => Uint8Array

const changes: Change[] = [
  flipped,
  flipped,
  (bytes, random) => bytes.slice(0, random.whole(bytes.length + 1)),
  (bytes, random) => spliced(bytes, random, new Uint8Array()),
  (bytes, random) => spliced(bytes, random, random.of(badUtf8)),
  (bytes, random) => spliced(bytes, random, text(random.of(snippets))),
  (bytes, random) => spliced(bytes, random, text(random.of(snippets))),
  (bytes, random) => asText(bytes, (read) => read.replaceAll("  ", random.of(["\t", " ", "   "]))),
  (bytes) => asText(bytes, (read) => read.replaceAll("\n", "\r\n")),
  (bytes, random) => asText(bytes, (read) => `${read}\n${random.of(bombs)}`),
  (_, random) => text(random.of(bombs)),
  (bytes) => asText(bytes, (read) => `\ufeff${read}`),
  (bytes, random) => asText(bytes, (read) => linesMoved(read, random)),
  (bytes, random) => asText(bytes, (read) => read.replace(/\d/g, (digit) => digitFor(digit, random))),
]

const badUtf8 = [[0xff], [0xc3], [0xed, 0xa0, 0x80], [0xf5, 0x80, 0x80, 0x80], [0x00], [0xc0, 0xaf]].map(
  (bytes) => new Uint8Array(bytes),
)

const snippets = [
  "&a ",
  "*a",
  "<<: *a",
  "!!js/function 'f'",
  "!!binary aGk=",
  "!include /etc/passwd",
  "---\n",
  "...\n",
  "%YAML 1.1\n",
  "? ",
  ": ",
  "- ",
  "{",
  "[",
  "]",
  '"',
  "'",
  "|\n",
  ">-\n",
  "#",
  "\t",
  "\u0085",
  "\u2028",
  ".inf",
  "-.inf",
  ".nan",
  "1e999",
  "0o17",
  "0x1F",
  "1_000",
  "__proto__: { polluted: 1 }\n",
]

/** Ten names each ten times the one before; the last stands for a thousand million items. */
function aliasBomb(): string {
  const names = "abcdefghij"
  const lists = [...names]
    .slice(1)
    .map((name, index) => `${name}: &${name} [${`*${names[index]},`.repeat(10)}]`)
  return ["a: &a [x]", ...lists].join("\n")
}

const bombs = [
  aliasBomb(),
  "[".repeat(5000),
  "{a: ".repeat(3000),
  "- ".repeat(5000),
  `key: ${"x".repeat(300_000)}`,
  `${"? ".repeat(1000)}x`,
  `a: |\n${" line\n".repeat(20_000)}`,
  Array.from({ length: 5000 }, (_, index) => `k${index}: ${index}`).join("\n"),
]

function flipped(bytes: Uint8Array, random: Random): Uint8Array {
  const copy = bytes.slice()
  for (let count = 1 + random.whole(3); count > 0 && copy.length > 0; count--) {
    const index = random.whole(copy.length)
    copy[index] = copy[index]! ^ (1 << random.whole(8))
  }
  return copy
}

/** A stretch of some bytes taken out and others put in its place. */
function spliced(bytes: Uint8Array, random: Random, put: Uint8Array): Uint8Array {
  const from = random.whole(bytes.length + 1)
  const to = Math.min(bytes.length, from + random.whole(12))
  return new Uint8Array([...bytes.slice(0, from), ...put, ...bytes.slice(to)])
}

function linesMoved(read: string, random: Random): string {
  const lines = read.split("\n")
  const [line = ""] = lines.splice(random.whole(lines.length), 1)
  lines.splice(random.whole(lines.length + 1), 0, line)
  return lines.join("\n")
}

function digitFor(digit: string, random: Random): string {
  return random.chance(0.05) ? String(random.whole(10)) : digit
}

function asText(bytes: Uint8Array, change: (read: string) => string): Uint8Array {
  return text(change(new TextDecoder().decode(bytes)))
}

function text(written: string): Uint8Array {
  return new TextEncoder().encode(written)
}
