import { PDFDocument } from "pdf-lib"
import { expect, it } from "vitest"

import type { PageLabel } from "../../../src/press/pdf/page-labels.ts"
import { labelPages } from "../../../src/press/pdf/page-labels.ts"
import { openPdf } from "../inspect/open.ts"

async function labelsOf(pages: number, labels: readonly PageLabel[]): Promise<string[] | null> {
  const pdf = await PDFDocument.create()
  for (let page = 0; page < pages; page += 1) pdf.addPage()
  labelPages(pdf, labels)
  return (await openPdf(await pdf.save())).getPageLabels()
}

it("numbers all pages from 1 when no run is given", async () => {
  expect(await labelsOf(3, [])).toEqual(["1", "2", "3"])
})

it("shows each run as an independent reader would, in whatever order they are given", async () => {
  const labels: PageLabel[] = [
    { page: 4, prefix: "A1-", style: "decimal", first: 1 },
    { page: 1, prefix: "", style: "roman", first: 1 },
    { page: 6, prefix: "blank", style: "none", first: 1 },
  ]
  expect(await labelsOf(6, labels)).toEqual(["i", "ii", "iii", "A1-1", "A1-2", "blank"])
})

it("numbers the pages before the first run", async () => {
  expect(await labelsOf(3, [{ page: 3, prefix: "B2-", style: "decimal", first: 7 }])).toEqual([
    "1",
    "2",
    "B2-7",
  ])
})
