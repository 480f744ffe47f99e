import { PDFArray, PDFDict, PDFDocument } from "pdf-lib"
import { beforeAll, describe, expect, it } from "vitest"

import { elementsOf, mendStructure } from "../../../src/press/pdf/structure.ts"
import { look, plain } from "../inspect/look.ts"
import { allTags, tagTree } from "../inspect/tag-tree.ts"
import { reworked, taggedPrint } from "../inspect/tagged-print.ts"

let raw: Uint8Array

beforeAll(async () => {
  raw = await taggedPrint()
})

describe("mendStructure", () => {
  it("finds the elements in reading order", async () => {
    const pdf = await PDFDocument.load(raw, { updateMetadata: false })
    expect(elementsOf(pdf).map(({ type }) => type)).toEqual(allTags(tagTree(pdf)).map(({ type }) => type))
  })

  it("gives newer types the role of a standard one", async () => {
    const tags = allTags(tagTree(await reworked(raw, mendStructure)))
    const roleOf = (type: string): string | undefined => tags.find((tag) => tag.type === type)?.role
    expect(["Strong", "Em", "Aside"].map(roleOf)).toEqual(["Span", "Span", "Sect"])
  })

  it("gives each list item a body that keeps all it held", async () => {
    const before = allTags(tagTree(await PDFDocument.load(raw, { updateMetadata: false })))
    const pdf = await reworked(raw, mendStructure)
    const tags = allTags(tagTree(pdf))
    const items = tags.filter(({ role }) => role === "LI")
    expect(items.length).toBe(4)
    for (const item of items) expect(item.kids.map(({ role }) => role)).toEqual(["Lbl", "LBody"])
    expect(tags.length).toBe(before.length + items.length)
  })

  it("keeps the way back from each mark to an element that holds it", async () => {
    const pdf = await reworked(raw, mendStructure)
    expect(marksWithoutWayBack(pdf)).toEqual([])
  })
})

/** Marks in the parent tree whose element does not list them among its kids. */
function marksWithoutWayBack(pdf: PDFDocument): string[] {
  const numbers = look(pdf.catalog, "StructTreeRoot", "ParentTree", "Nums")
  if (!(numbers instanceof PDFArray)) return ["no parent tree"]
  const lost: string[] = []
  for (let at = 0; at < numbers.size(); at += 2) {
    const owners = numbers.lookup(at + 1)
    if (!(owners instanceof PDFArray)) continue
    for (let mark = 0; mark < owners.size(); mark += 1) {
      const owner = owners.lookup(mark, PDFDict)
      const kids = look(owner, "K")
      const listed = kids instanceof PDFArray ? kids.asArray().map(String) : [String(kids)]
      if (!listed.includes(String(mark))) lost.push(`${plain(look(owner, "S"))} ${mark}`)
    }
  }
  return lost
}
