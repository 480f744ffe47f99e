import { mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { describe, expect, it } from "vitest"
import { Fault } from "../../src/kernels/fault.ts"
import type { MadeDocument } from "../../src/press/earlier.ts"
import { type Printing, pageLabels, printDocuments } from "../../src/press/print-documents.ts"
import type { PrintDocument } from "../../src/press/site-data.ts"
import { pageBoxes } from "./inspect/boxes.ts"
import { htmlFile, withTestPress } from "./inspect/press.ts"

/** A document without sheets, by where it goes. */
const document = (path: string): PrintDocument => ({
  ref: "tiny",
  path,
  pack: { id: path, title: path, bound: false },
  jobTitle: "Trial",
  pages: [],
  styles: "",
})

/** Prints bodies, each under the name it is given; with the PDFs of those that came out. */
async function printed(
  bodies: Record<string, string>,
): Promise<Printing & { pdfs: Uint8Array[]; done: string[] }> {
  return withTestPress(async (press, staging) => {
    for (const [path, body] of Object.entries(bodies)) {
      const target = join(staging, "press", `${path}.html`)
      mkdirSync(dirname(target), { recursive: true })
      writeFileSync(target, readFileSync(htmlFile(staging, body)))
    }
    const done: string[] = []
    const printing = await printDocuments(press, Object.keys(bodies).map(document), {
      staging,
      attachments: new Map(),
      pressHash: "press",
      progress: (count, of) => done.push(`${count} of ${of}`),
    })
    return { ...printing, done, pdfs: printing.printed.map(({ file }) => readFileSync(join(staging, file))) }
  })
}

describe("printing documents", () => {
  it("gives a PDF for each, in the order given, and tells how far it is", async () => {
    const came = await printed({ "print/b": "<p>b</p>", "print/a": "<p>a</p><section>more</section>" })
    expect(came.printed.map(({ file, pages }) => [file, pages])).toEqual([
      ["print/b.pdf", 1],
      ["print/a.pdf", 2],
    ])
    expect(came.done).toEqual(["1 of 2", "2 of 2"])
    expect(await pageBoxes(came.pdfs[1]!)).toHaveLength(2)
    expect(came.warnings).toEqual([])
  })

  it("warns of a character that no typeface has, and prints on: the author wrote it", async () => {
    const { warnings, pdfs } = await printed({ "print/a": "<p>plain</p><section>門</section>" })
    expect(pdfs).toHaveLength(1)
    expect(warnings).toEqual([
      "print/a.pdf, page 2: a character that the typeface does not have is printed as an empty box",
    ])
  })

  it("throws for what does not fit, naming every document", async () => {
    const wide = `<p data-sheet="A1-04">${"W".repeat(90)}</p>`
    const printing = printed({ "print/a": wide, "print/b": wide, "print/c": "<p>門</p>" })
    const fault = await printing.catch((thrown: unknown) => thrown)
    expect(fault).toBeInstanceOf(Fault)
    const { message } = fault as Fault
    for (const name of ["a", "b"])
      expect(message).toMatch(new RegExp(`print/${name}: past-width on A1-04 by [\\d.]+ mm: W+`))
    expect(message).not.toContain("print/c")
  })
})

describe("a document printed before", () => {
  /** Prints one document, then again with what the first print left. */
  async function twice(second: string, fetched: boolean) {
    return withTestPress(async (press, staging) => {
      const write = (body: string) => {
        mkdirSync(join(staging, "press", "print"), { recursive: true })
        writeFileSync(join(staging, "press", "print", "a.html"), readFileSync(htmlFile(staging, body)))
      }
      const asked: string[] = []
      const print = async (made?: MadeDocument) => {
        const earlier = {
          made: () => made,
          fetch: (file: string) => asked.push(file) > 0 && fetched,
          measures: new Map(),
        }
        const task = { staging, attachments: new Map(), pressHash: "press", earlier, progress: () => {} }
        return (await printDocuments(press, [document("print/a")], task)).printed[0]!
      }
      write("<p>a</p>")
      const first = await print()
      write(second)
      const again = await print(first.made!)
      return { first, again, asked }
    })
  }

  it("is taken over where it is made of the same", async () => {
    const { first, again, asked } = await twice("<p>a</p>", true)
    expect(asked).toEqual(["print/a.pdf"])
    expect(again).toEqual(first)
  })

  it("is printed where it is made of other HTML, or its PDF is no longer there", async () => {
    const changed = await twice("<p>b</p>", true)
    expect(changed.asked).toEqual([])
    expect(changed.again.made!.madeOf).not.toBe(changed.first.made!.madeOf)
    const lost = await twice("<p>a</p>", false)
    expect(lost.again).toEqual(lost.first)
  })
})

describe("labels of pages", () => {
  const page = (number: string) => ({ sheet: { number, path: number.toLowerCase() } })
  const pages = ["J-53", "A1-01"].map(page) as PrintDocument["pages"]

  it("say sheet and page of the sheet, contents and blanks by name", () => {
    const starts = new Map([
      ["j-53", 2],
      ["a1-01", 5],
    ])
    expect(pageLabels({ pages }, { pages: 6, starts, blanksBefore: new Set(["a1-01"]) })).toEqual([
      { page: 1, prefix: "contents, ", style: "decimal", first: 1 },
      { page: 2, prefix: "J-53, ", style: "decimal", first: 1 },
      { page: 4, prefix: "blank", style: "none", first: 1 },
      { page: 5, prefix: "A1-01, ", style: "decimal", first: 1 },
    ])
  })

  it("of a sheet alone start with it", () => {
    const plan = { pages: 2, starts: new Map(), blanksBefore: new Set<string>() }
    expect(pageLabels({ pages: pages.slice(1) }, plan)).toEqual([
      { page: 1, prefix: "A1-01, ", style: "decimal", first: 1 },
    ])
  })
})
