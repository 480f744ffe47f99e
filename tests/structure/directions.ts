import type { SourceFile } from "./sources.ts"

/** The stages of a build in order: a file may import from its own stage and from earlier ones. */
const stages = ["intake", "survey", "trades", "programme", "orders", "sheets", "press", "commands"]

/** Files of `src/` itself that put the stages together; they stand after the sheets and before the press. */
const composers = ["src/build.ts", "src/rulebook-of.ts"]

/** Folders every stage may import from. */
const shared = ["kernels", "rulebook"]

/** Stages that may touch files, clock, environment and browser. */
const impure = ["intake", "press", "commands"]

/** The part of the project a file belongs to: a stage, `kernels`, `rulebook`, or `composer`. */
export function partOf(path: string): string {
  if (composers.includes(path)) return "composer"
  return path.split("/")[1] ?? ""
}

/** Imports that go against the direction, as `file -> file`. */
export function wrongDirections(files: readonly SourceFile[]): string[] {
  return edges(files)
    .filter(([from, to]) => !mayImport(partOf(from), partOf(to)))
    .map(([from, to]) => `${from} -> ${to}`)
}

/** Whether files of one part may import from another. */
export function mayImport(from: string, to: string): boolean {
  if (from === "kernels") return to === "kernels"
  if (from === "rulebook") return shared.includes(to)
  if (shared.includes(to)) return true
  if (to === "composer") return from === "composer" || from === "commands"
  return rankOf(to) <= rankOf(from)
}

function rankOf(part: string): number {
  return part === "composer" ? stages.indexOf("sheets") + 0.5 : stages.indexOf(part)
}

/** Files outside any known part. */
export function strays(files: readonly SourceFile[]): string[] {
  const parts = new Set([...stages, ...shared, "composer"])
  return files.map((file) => file.path).filter((path) => !parts.has(partOf(path)))
}

/** Imports from one trade's folder into another's, as `file -> file`. */
export function tradesInTrades(files: readonly SourceFile[]): string[] {
  const tradeOf = (path: string) => /^src\/trades\/([^/]+)\//.exec(path)?.[1]
  return edges(files)
    .filter(([from, to]) => {
      const target = tradeOf(to)
      if (!target || !from.startsWith("src/trades/") || from === "src/trades/index.ts") return false
      return tradeOf(from) !== target
    })
    .map(([from, to]) => `${from} -> ${to}`)
}

/** Rings of imports, types counted, each as `a -> b -> a`. */
export function rings(files: readonly SourceFile[]): string[] {
  const targets = new Map(files.map((file) => [file.path, file.imports.flatMap((each) => each.file ?? [])]))
  const done = new Set<string>()
  const found: string[] = []
  const visit = (path: string, trail: readonly string[]): void => {
    const before = trail.indexOf(path)
    if (before >= 0) {
      found.push([...trail.slice(before), path].join(" -> "))
      return
    }
    if (done.has(path)) return
    for (const next of targets.get(path) ?? []) visit(next, [...trail, path])
    done.add(path)
  }
  for (const { path } of files) visit(path, [])
  return found
}

/** What a calculation may not touch, by what it would be: the same job must give the same result. */
const outside: readonly [string, RegExp][] = [
  ["a module of Node", /from "node:|import\("node:/],
  [
    "the process",
    /\bprocess\.(?:env|argv|exit|exitCode|stdin|stdout|stderr|cwd|platform|hrtime|uptime|on)\b/,
  ],
  ["the clock", /\bDate\.now\(|\bnew Date\(\)|\bperformance\.now\(/],
  ["chance", /\bMath\.random\b|\brandomUUID\b/],
]

/** Files of the pure parts that touch what is outside, as `file: what`. */
export function impurities(files: readonly { path: string; code: string }[]): string[] {
  return files
    .filter(({ path }) => !impure.includes(partOf(path)))
    .flatMap(({ path, code }) =>
      outside.filter(([, pattern]) => pattern.test(code)).map(([what]) => `${path}: ${what}`),
    )
}

function edges(files: readonly SourceFile[]): [string, string][] {
  return files.flatMap((file) =>
    file.imports.flatMap((each): [string, string][] => (each.file ? [[file.path, each.file]] : [])),
  )
}
