import { PDFDocument, PDFName, PDFRawStream } from "pdf-lib"
import { beforeAll, describe, expect, it } from "vitest"

import type { Attachment } from "../../../src/press/pdf/attachments.ts"
import { attach, readAttachments } from "../../../src/press/pdf/attachments.ts"
import { dictsIn, look } from "../inspect/look.ts"
import { openPdf } from "../inspect/open.ts"

const files: Attachment[] = [
  {
    name: "rooms/a1.yaml",
    bytes: new TextEncoder().encode("name: <b>Küche</b>\n".repeat(400)),
    mime: "application/yaml",
    relationship: "Source",
    description: "Room A1 – as measured",
  },
  {
    name: "job.json",
    bytes: new Uint8Array(),
    mime: "application/json",
    relationship: "Data",
    description: "",
  },
]

async function carrying(attachments: readonly Attachment[]): Promise<Uint8Array> {
  const pdf = await PDFDocument.create()
  pdf.addPage()
  attach(pdf, attachments, "2027-02-08T09:00:00Z")
  return pdf.save()
}

async function tampered(change: (stream: PDFRawStream, pdf: PDFDocument) => void): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(await carrying(files))
  for (const file of dictsIn(look(pdf.catalog, "AF"))) {
    const stream = look(file, "EF", "UF")
    if (stream instanceof PDFRawStream && String(look(file, "UF")).length > 0) change(stream, pdf)
  }
  return pdf.save()
}

let bytes: Uint8Array

beforeAll(async () => {
  bytes = await carrying(files)
})

describe("attachments", () => {
  it("come back as they went in, in order of name", async () => {
    const read = await readAttachments(bytes)
    expect(read.map(({ name, intact }) => [name, intact])).toEqual([
      ["job.json", true],
      ["rooms/a1.yaml", true],
    ])
    expect(read[1]).toEqual({ ...files[0], intact: true })
  })

  it("are found by an independent reader", async () => {
    const open = await openPdf(bytes)
    const found: Record<string, { filename: string; content: Uint8Array }> = await open.getAttachments()
    const yaml = Object.values(found).find(({ filename }) => filename.endsWith("a1.yaml"))
    expect(Buffer.from(yaml?.content ?? []).toString("utf8")).toBe(
      Buffer.from(files[0]?.bytes ?? []).toString("utf8"),
    )
  })

  it("are none in a document that carries none", async () => {
    expect(await readAttachments(await carrying([]))).toEqual([])
  })

  it("are not intact once a byte is changed, though the size is the same", async () => {
    const changed = await tampered((stream, pdf) => {
      const params = look(stream.dict, "Params")
      const other = pdf.context.flateStream("name: <i>Küche</i>\n".repeat(400))
      stream.dict.delete(PDFName.of("Filter"))
      stream.dict.set(PDFName.of("Filter"), PDFName.of("FlateDecode"))
      if (params !== undefined) stream.dict.set(PDFName.of("Params"), params)
      Object.assign(stream, { contents: other.contents })
    })
    const read = await readAttachments(changed)
    expect(read.map(({ intact }) => intact)).toEqual([false, false])
    expect(Buffer.from(read[1]?.bytes ?? []).toString("utf8")).toContain("<i>")
  })

  it("are empty and not intact when they cannot be unpacked, and nothing is thrown", async () => {
    const damaged = await tampered((stream) => Object.assign(stream, { contents: new Uint8Array([1, 2, 3]) }))
    const read = await readAttachments(damaged)
    expect(read.map(({ bytes: content, intact }) => [content.length, intact])).toEqual([
      [0, false],
      [0, false],
    ])
  })

  it("cannot be read from what is no PDF", async () => {
    await expect(readAttachments(new TextEncoder().encode("name: A1"))).rejects.toThrow()
  })
})
