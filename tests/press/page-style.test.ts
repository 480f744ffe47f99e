import { describe, expect, it } from "vitest"
import { revisionOf } from "../../src/press/addresses.ts"
import {
  contentsHead,
  cssText,
  type EdgeTab,
  type PageHead,
  pageName,
  pageStyle,
} from "../../src/press/page-style.ts"
import { printPdf } from "../../src/press/print.ts"
import { smallJob } from "../fixtures/small-job.ts"
import { pageBoxes } from "./inspect/boxes.ts"
import { openPdf } from "./inspect/open.ts"
import { contentWidth, htmlFile, withTestPress } from "./inspect/press.ts"
import { textItems } from "./inspect/text.ts"

/** Text as an author with a bad mind would write it: ends of strings, rules, comments and elements, and odd signs. */
const hostile = [
  `"; } @page { size: A5 } x { content: "`,
  "</style><script>alert(1)</script>",
  "back\\slash \\22 '`#{x}` /* comment */ <!-- -->",
  "{{ 7*7 }} @@pages:a1-04@@ %s",
  "line\nfeed\r\ttab",
  "é ü ß Ж 門 \u202e \u0000 🚪",
]

describe("text in a style sheet", () => {
  it.each(hostile)("%j cannot end its string, its rule or the element", (text) => {
    const written = cssText(text)
    expect(written).toMatch(/^"(?:[^"\\\n\r<>{}]|\\[0-9a-f]{1,6} )*"$/)
    expect(unescaped(written.slice(1, -1))).toBe(text)
  })

  it("is printed as it was written, in the margin of the page", async () => {
    const text = `"</style><b>x</b>\\ 'y' {z} & a`
    await withTestPress(async (press, folder) => {
      const html = htmlFile(
        folder,
        "<p>Body</p>",
        `@page{margin:30mm;@top-left{content:${cssText(text)};width:100%}}`,
      )
      const { pdf } = await printPdf(press, html, { contentWidth })
      const items = await textItems(await openPdf(pdf))
      expect(
        items
          .map((item) => item.text)
          .join("")
          .replace(/\s/g, ""),
      ).toContain(text.replace(/\s/g, ""))
    })
  })
})

/** Millimetres in points. */
const mm = (length: number) => (length / 25.4) * 72

/** Text of a CSS string by the rules for escapes (CSS Syntax Module Level 3, 4.3.7). */
function unescaped(css: string): string {
  return css.replace(/\\([0-9a-f]{1,6}) ?/g, (_, digits: string) =>
    String.fromCodePoint(Number.parseInt(digits, 16)),
  )
}

describe("the pages of a sheet", () => {
  const { job } = smallJob()
  const head: PageHead = {
    path: "a1-04",
    number: "A1-04",
    title: "Floor",
    orientation: "portrait",
    address: "https://packs.example/7k3m9x2q/a1-04/0/",
  }
  const block = {
    job,
    revision: revisionOf(job),
    pack: { title: "Room A1", bound: false },
    place: "A1 east room",
  }

  it("are A4, upright or lying", () => {
    expect(pageStyle(head, block)).toMatch(/size: A4;/)
    expect(pageStyle({ ...head, orientation: "landscape" }, block)).toMatch(/size: A4 landscape;/)
  })

  it("change the wide margin over on left pages where both sides are printed", () => {
    expect(pageStyle(head, block)).not.toContain(":left")
    expect(pageStyle(head, { ...block, pack: { title: "x", bound: true } })).toContain(
      `@page ${pageName(head)}:left`,
    )
  })

  it("carry place, sheet, job, revision, totals and the address to type", () => {
    const style = unescaped(pageStyle(head, block))
    for (const text of [
      "A1 east room",
      "A1-04",
      "One hall and one room",
      "Revision: draft, not issued",
      "the office, Mon 15 Feb 2027",
      "@@pages:a1-04@@",
      "packs.example/7k3m9x2q/a1-04/0/",
    ])
      expect(style).toContain(text)
    expect(style).not.toContain(job.client)
  })

  it("hand on the texts of their margins to be measured before printing", async () => {
    const faultsOf = (place: string) =>
      withTestPress(async (press, folder) => {
        const style = pageStyle(head, { ...block, place }).replaceAll("Rod", "Sheet")
        const html = htmlFile(
          folder,
          `<section class="p-${pageName(head)}" data-sheet="A1-04"><p>x</p></section>`,
          style,
        )
        return (await printPdf(press, html, { contentWidth })).layoutFaults
      })
    expect(await faultsOf('A "east" \\ <b>room</b>')).toEqual([])
    expect(await faultsOf("W".repeat(120))).toEqual([
      { kind: "cut-off", sheet: "A1-04", text: "W".repeat(80), by: expect.any(Number) },
    ])
  })

  it("bound, carry their room's mark on the outer edge, each room's lower than the one before", async () => {
    const mark = async (index: number) => {
      const tab = { room: `R${index}`, index, of: 3 }
      const { pdf, pages } = await boundPrint(head, tab)
      expect(pages).toBe(2)
      const items = await textItems(await openPdf(pdf))
      return [1, 2].map((page) => items.find((item) => item.page === page && item.text === tab.room)!.box)
    }
    const [first, third] = [await mark(0), await mark(2)]
    const [right, left] = first
    expect(right!.left).toBeGreaterThan(mm(200))
    expect(right!.right).toBeLessThan(mm(205))
    expect(left!.left).toBeGreaterThan(mm(5))
    expect(left!.right).toBeLessThan(mm(10))
    expect(first[0]!.bottom - third[0]!.bottom).toBeCloseTo(mm(32), 0)
  })

  it("bound and lying, are turned with their head to the left and their wide margin at the spine", async () => {
    const { pdf } = await boundPrint({ ...head, orientation: "landscape" })
    for (const box of await pageBoxes(pdf)) expect(box.width).toBeLessThan(box.height)
    const items = await textItems(await openPdf(pdf))
    const bodies = [1, 2].map(
      (page) => items.find((item) => item.page === page && item.text === `body ${page}`)!,
    )
    for (const { box } of bodies) expect(box.top - box.bottom).toBeGreaterThan(box.right - box.left)
    expect(bodies[0]!.box.left).toBeGreaterThan(mm(23))
    expect(bodies[1]!.box.left).toBeGreaterThan(mm(16))
    expect(bodies[1]!.box.left).toBeLessThan(mm(23))
  })

  it("folded out, are A3 lying", () => {
    const style = pageStyle({ ...head, orientation: "fold-out" }, block)
    expect(style).toMatch(/size: A3 landscape;/)
    const [first, second] = /fold (\d+) and (\d+) mm/.exec(style)!.slice(1).map(Number)
    expect(420 - second!, "folded, no leaf is wider than A4 less the margin to punch").toBe(190)
    expect(second! - first!).toBeLessThanOrEqual(190)
  })

  const boundPrint = (sheet: PageHead, tab?: EdgeTab) =>
    withTestPress(async (press, folder) => {
      const style = pageStyle(sheet, { ...block, pack: { title: "x", bound: true }, tab })
      const pages = `<section class="p-${pageName(sheet)}"><p>body 1</p><p style="break-before:page">body 2</p></section>`
      return printPdf(press, htmlFile(folder, pages, style.replaceAll("Rod", "Sheet")), { contentWidth })
    })

  it("of the contents lead to the job's own page", () => {
    expect(contentsHead(job)).toMatchObject({ number: "J-50", address: "https://packs.example/7k3m9x2q/" })
  })
})
