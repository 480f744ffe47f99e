import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRef } from "pdf-lib"
import { beforeAll, describe, expect, it } from "vitest"

import { renumberElementIds, renumberObjects, setFileIdentifier } from "../../../src/press/pdf/ids.ts"
import { look, plain } from "../inspect/look.ts"
import type { Tag } from "../inspect/tag-tree.ts"
import { allTags, tagTree } from "../inspect/tag-tree.ts"
import { reworked, taggedPrint } from "../inspect/tagged-print.ts"

let raw: Uint8Array

beforeAll(async () => {
  raw = await taggedPrint()
})

describe("renumberElementIds", () => {
  const headersOf = (tags: readonly Tag[]): string[] =>
    tags.flatMap(({ attributes }) => {
      const headers = attributes.get("Headers")
      return headers instanceof PDFArray ? headers.asArray().map((header) => plain(header)) : []
    })

  it("numbers from one in reading order, and each cell still names the same headers", async () => {
    const before = allTags(tagTree(await PDFDocument.load(raw, { updateMetadata: false })))
    const renumbered = allTags(tagTree(await reworked(raw, renumberElementIds)))
    const ids = (tags: readonly Tag[]): string[] => tags.map(({ id }) => id).filter((id) => id !== "")
    expect(ids(before).length).toBeGreaterThan(0)
    expect(ids(renumbered)).toEqual(ids(before).map((_, index) => `e${String(index + 1).padStart(8, "0")}`))
    const renamed = new Map(ids(before).map((id, index) => [id, ids(renumbered)[index]]))
    expect(headersOf(renumbered)).toEqual(headersOf(before).map((id) => renamed.get(id)))
  })

  it("writes the index in the order of names that a reader searches by", async () => {
    const pdf = await reworked(raw, renumberElementIds)
    const index = look(pdf.catalog, "StructTreeRoot", "IDTree", "Names")
    const names =
      index instanceof PDFArray
        ? index
            .asArray()
            .filter((_, at) => at % 2 === 0)
            .map(plain)
        : []
    expect(names.length).toBeGreaterThan(0)
    expect(names).toEqual([...names].sort())
  })
})

describe("renumberObjects", () => {
  it("drops what nothing reaches and numbers the rest without a gap", async () => {
    const pdf = await PDFDocument.load(raw, { updateMetadata: false })
    const before = pdf.context.enumerateIndirectObjects().length
    const stray = pdf.context.register(pdf.context.obj({ Stray: true }))
    renumberObjects(pdf)
    const numbers = pdf.context.enumerateIndirectObjects().map(([ref]) => ref.objectNumber)
    expect(numbers).toEqual(numbers.map((_, index) => index + 1))
    expect(numbers.length).toBeLessThanOrEqual(before)
    expect(pdf.context.lookup(stray)?.toString() ?? "").not.toContain("Stray")
  })

  it("comes out equal whatever numbers the objects had", async () => {
    const shifted = await PDFDocument.load(raw, { updateMetadata: false })
    for (const [ref, object] of shifted.context.enumerateIndirectObjects()) {
      if (object instanceof PDFDict && object.lookup(PDFName.of("Type")) === PDFName.of("Catalog")) {
        shifted.context.delete(ref)
        const moved = PDFRef.of(ref.objectNumber + 1000)
        shifted.context.assign(moved, object)
        shifted.context.trailerInfo.Root = moved
      }
    }
    const plainOne = await PDFDocument.load(raw, { updateMetadata: false })
    const saved = await Promise.all(
      [shifted, plainOne].map((pdf) => {
        renumberObjects(pdf)
        return pdf.save({ addDefaultPage: false })
      }),
    )
    expect(Buffer.from(saved[0] ?? []).equals(Buffer.from(saved[1] ?? []))).toBe(true)
  })
})

it("the file identifier follows the document's key alone", async () => {
  const identifier = async (key: string): Promise<string> => {
    const pdf = await reworked(raw, (document) => setFileIdentifier(document, key))
    return String(pdf.context.trailerInfo.ID)
  }
  expect(await identifier("a")).toBe(await identifier("a"))
  expect(await identifier("a")).not.toBe(await identifier("b"))
})
