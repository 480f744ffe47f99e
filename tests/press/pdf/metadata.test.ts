import { PDFDocument, PDFRawStream, PDFStream } from "pdf-lib"
import { expect, it } from "vitest"

import { describe as describeDocument } from "../../../src/press/pdf/metadata.ts"
import { look } from "../inspect/look.ts"
import { openPdf } from "../inspect/open.ts"

const description = { title: "Küche <A1> & hall", language: "en-GB", created: "2027-02-08T09:00:00Z" }

it("says the same to an independent reader in the information dictionary and in the packet", async () => {
  const pdf = await PDFDocument.create({ updateMetadata: false })
  pdf.addPage()
  pdf.setProducer("a printer & more")
  describeDocument(pdf, description)
  const { info, metadata } = await (await openPdf(await pdf.save())).getMetadata()
  expect(info).toMatchObject({
    Title: description.title,
    Language: "en-GB",
    CreationDate: "D:20270208090000Z",
  })
  expect(metadata?.get("dc:title")).toBe(description.title)
  expect(metadata?.get("xmp:createdate")).toBe(description.created)
  expect(metadata?.get("pdf:producer")).toBe("a printer & more")
  expect([metadata?.get("pdfaid:part"), metadata?.get("pdfaid:conformance")]).toEqual(["3", "A"])
})

it("keeps the packet readable in the file", async () => {
  const pdf = await PDFDocument.create({ updateMetadata: false })
  pdf.addPage()
  describeDocument(pdf, description)
  const stream = look(pdf.catalog, "Metadata")
  expect(stream).toBeInstanceOf(PDFStream)
  const file = Buffer.from(await pdf.save()).toString("utf8")
  expect(file).toContain(
    '<dc:title><rdf:Alt><rdf:li xml:lang="x-default">Küche &lt;A1&gt; &amp; hall</rdf:li>',
  )
  expect(look((await PDFDocument.load(await pdf.save())).catalog, "Metadata")).toBeInstanceOf(PDFRawStream)
})
