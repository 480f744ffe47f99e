import { PDFDocument } from "pdf-lib"
import { expect, it } from "vitest"

import { destinationsOf } from "../../../src/press/pdf/destinations.ts"
import { taggedPrint } from "../inspect/tagged-print.ts"

it("names the page of each place that a link points to", async () => {
  const pdf = await PDFDocument.load(await taggedPrint(), { updateMetadata: false })
  expect([...destinationsOf(pdf)]).toEqual([["end", 2]])
})

it("is empty for a document without links", async () => {
  const pdf = await PDFDocument.create()
  pdf.addPage()
  expect(destinationsOf(pdf).size).toBe(0)
})
