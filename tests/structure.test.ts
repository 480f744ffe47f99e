import { existsSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { allRules } from "../src/rulebook-of.ts"
import { trades } from "../src/trades/index.ts"
import {
  impurities,
  mayImport,
  rings,
  strays,
  tradesInTrades,
  wrongDirections,
} from "./structure/directions.ts"
import { filesUnder, importsOf, sourceFiles, top, withoutComments } from "./structure/sources.ts"
import { calculations, expressionsOf, unescaped } from "./structure/templates.ts"
import { coveredElsewhere, typesOnly } from "./structure/without-own-test.ts"

const files = sourceFiles()
const pathsUnder = (folder: string) => files.filter((file) => file.path.startsWith(folder))

describe("imports", () => {
  it("are read from every way of writing them", () => {
    const text = `import { a } from "./a.ts"
import {
  type B,
  type C,
} from "../b.ts"
import type { D } from "node:fs"
import "zod"
export { e } from "./e.ts"
const late = await import("./late.ts")`
    expect(importsOf("src/survey/x.ts", text)).toEqual([
      { written: "./a.ts", file: "src/survey/a.ts", typeOnly: false },
      { written: "../b.ts", file: "src/b.ts", typeOnly: true },
      { written: "node:fs", file: null, typeOnly: true },
      { written: "./e.ts", file: "src/survey/e.ts", typeOnly: false },
      { written: "zod", file: null, typeOnly: false },
      { written: "./late.ts", file: "src/survey/late.ts", typeOnly: false },
    ])
  })

  it("are found in the sources at all", () => {
    expect(files.length).toBeGreaterThan(200)
    expect(files.flatMap((file) => file.imports).length).toBeGreaterThan(files.length)
  })

  it("lead to files that are there", () => {
    const lost = files.flatMap((file) =>
      file.imports
        .filter((each) => each.file !== null && !existsSync(join(top, each.file)))
        .map((each) => `${file.path} -> ${each.written}`),
    )
    expect(lost).toEqual([])
  })

  it("have no ring", () => {
    expect(rings(files)).toEqual([])
  })

  it("would show a ring", () => {
    const ring = [
      { path: "src/a.ts", text: "", imports: importsOf("src/a.ts", `import { b } from "./b.ts"`) },
      { path: "src/b.ts", text: "", imports: importsOf("src/b.ts", `import { a } from "./a.ts"`) },
    ]
    expect(rings(ring)).toEqual(["src/a.ts -> src/b.ts -> src/a.ts"])
  })

  it("go one way", () => {
    expect(strays(files)).toEqual([])
    expect(wrongDirections(files)).toEqual([])
  })

  it.each([
    ["survey", "intake", true],
    ["intake", "survey", false],
    ["kernels", "rulebook", false],
    ["rulebook", "kernels", true],
    ["rulebook", "survey", false],
    ["sheets", "orders", true],
    ["orders", "sheets", false],
    ["press", "composer", false],
    ["commands", "press", true],
    ["composer", "press", false],
  ])("%s may import %s: %s", (from, to, may) => {
    expect(mayImport(from, to)).toBe(may)
  })

  it("never lead from one trade into another", () => {
    expect(tradesInTrades(files)).toEqual([])
  })

  it("are all by name, and nothing is exported without one", () => {
    const nameless = files.filter((file) => /^export default\b|\bas default\b/m.test(file.text))
    expect(nameless.map((file) => file.path)).toEqual([])
  })
})

describe("calculations", () => {
  it("touch no files, no process, no clock and no chance", () => {
    const read = files.map(({ path, text }) => ({ path, code: withoutComments(text) }))
    expect(impurities(read)).toEqual([])
  })

  it("would be caught at it", () => {
    const code = `import { readFileSync } from "node:fs"\nconst now = new Date()\nprocess.env.X`
    expect(impurities([{ path: "src/survey/x.ts", code }])).toEqual([
      "src/survey/x.ts: a module of Node",
      "src/survey/x.ts: the process",
      "src/survey/x.ts: the clock",
    ])
    expect(impurities([{ path: "src/press/x.ts", code }])).toEqual([])
    expect(impurities([{ path: "src/survey/x.ts", code: "new Date(instant)" }])).toEqual([])
  })
})

describe("a file's test", () => {
  const testOf = (path: string) => path.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts")
  const excused = new Set([...typesOnly, ...Object.keys(coveredElsewhere)])

  it("stands at the same path, but for the files listed", () => {
    const missing = files
      .map((file) => file.path)
      .filter((path) => !excused.has(path) && !existsSync(join(top, testOf(path))))
    expect(missing).toEqual([])
  })

  it("is listed as left out only where the file is there and has none", () => {
    const paths = new Set(files.map((file) => file.path))
    const stale = [...excused].filter((path) => !paths.has(path) || existsSync(join(top, testOf(path))))
    expect(stale).toEqual([])
  })

  it("is left out only for files that do nothing", () => {
    const doing = files
      .filter((file) => typesOnly.includes(file.path))
      .filter(({ text }) => /^(export )?(const|let|function|async function|class)\b/m.test(text))
    expect(doing.map((file) => file.path)).toEqual([])
  })

  it("stands elsewhere only where that test imports the file", () => {
    const idle = Object.entries(coveredElsewhere).filter(([path, test]) => {
      if (!existsSync(join(top, test))) return true
      const imports = importsOf(test, readFileSync(join(top, test), "utf8"))
      return !imports.some((each) => each.file === path && !each.typeOnly)
    })
    expect(idle).toEqual([])
  })
})

describe("the rulebook", () => {
  const rules = allRules(trades)

  it("names each entry once, with a source exactly where one is published", () => {
    expect(new Set(rules.map((rule) => rule.id)).size).toBe(rules.length)
    const unsound = rules.filter(({ status, source }) =>
      status === "published"
        ? !source?.trim()
        : status === "common practice"
          ? source !== null
          : !source?.trim(),
    )
    expect(unsound.map((rule) => `${rule.id}: ${rule.status}, ${rule.source}`)).toEqual([])
  })

  it("has no entry that nothing uses", () => {
    const code = files.map(({ text }) => withoutComments(text).replace(definition, "")).join("\n")
    const made = idsMadeIn(code)
    const idle = rules.filter(({ id }) => !code.includes(`"${id}"`) && !made.some((form) => form.test(id)))
    expect(idle.map((rule) => rule.id)).toEqual([])
  })

  it("sees an id that is put together where it is used", () => {
    const code = "rules.value(`paint-#{face.on}-rate`) + rules.value(`#{any}`)".replaceAll("#", "$")
    const forms = idsMadeIn(code)
    expect(forms.map((form) => form.test("paint-wall-rate"))).toEqual([true])
  })
})

/** Where an entry is written down: its id is followed by what it is. */
const definition = /\bid: "[^"]*",(?=\s*what:)/g

/** Forms of the ids that code puts together, each with a fixed beginning. */
function idsMadeIn(code: string): RegExp[] {
  const texts = [...code.matchAll(/`([a-z]+-[a-z-]*)((?:\$\{[^`}]+\}[a-z0-9-]*)+)`/g)]
  return texts.map(([, start = "", rest = ""]) => {
    const pattern = rest.replace(/\$\{[^}]+\}/g, "[a-z0-9-]+")
    return new RegExp(`^${start}${pattern}$`)
  })
}

describe("templates", () => {
  const templates = filesUnder("templates", ".njk").map((path) => ({
    path,
    text: readFileSync(join(top, path), "utf8"),
  }))

  it("calculate nothing from written figures", () => {
    expect(templates.length).toBeGreaterThan(5)
    expect(
      templates.flatMap(({ path, text }) => calculations(text).map((each) => `${path}: ${each}`)),
    ).toEqual([])
  })

  it.each(["{{ width * 2 }}", "{{ 10 - x }}", "{% set a = b.c+1 %}", "{{ x / 25.4 }}", "{% if a[0] - 1 %}"])(
    "would be caught at %s",
    (template) => {
      expect(calculations(template)).toHaveLength(1)
    },
  )

  it.each(["{{ sheet.number }}", "{%- if a == 1 -%}", '{{ "a-1" }}', "{{ column.share }}%", "{{ a[0] }}"])(
    "may write %s",
    (template) => {
      expect(expressionsOf(template)).toHaveLength(1)
      expect(calculations(template)).toEqual([])
    },
  )

  it("write nothing out unescaped but drawings and style sheets of our own making", () => {
    const found = templates.flatMap(({ text }) => unescaped(text))
    expect([...new Set(found)].sort()).toEqual(["doc.styles", "drawn.svg"])
    expect(templates.filter(({ text }) => /autoescape/.test(text)).map(({ path }) => path)).toEqual([])
  })
})

describe("files", () => {
  it("stay under 500 lines", () => {
    const long = files.filter((file) => file.text.split("\n").length > 500)
    expect(long.map((file) => file.path)).toEqual([])
    expect(pathsUnder("src/trades/").length).toBeGreaterThan(50)
  })
})
