import { spawnSync } from "node:child_process"
import { createHash } from "node:crypto"
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream, PDFString } from "pdf-lib"
import { beforeAll, describe, expect, it } from "vitest"

import type { Attachment } from "../../../src/press/pdf/attachments.ts"
import { finishPdf } from "../../../src/press/pdf/finish.ts"
import type { Printed } from "../../../src/press/print.ts"
import { printPdf } from "../../../src/press/print.ts"
import { clauseFaults, clauses } from "../inspect/clauses.ts"
import { annotationsOf, dictsIn, look, unpackedStream } from "../inspect/look.ts"
import { contentWidth, htmlFile, trialBody, trialFinish, withTestPress } from "../inspect/press.ts"
import type { Tag } from "../inspect/tag-tree.ts"
import { allTags, tagTree } from "../inspect/tag-tree.ts"

const source: Attachment = {
  name: "rooms/a1.yaml",
  bytes: new TextEncoder().encode("room: A1\n"),
  mime: "application/yaml",
  relationship: "Source",
  description: "Room A1 as measured",
}
const options = { ...trialFinish, attachments: [source] }

let raw: Uint8Array
let finished: Uint8Array

beforeAll(async () => {
  raw = await withTestPress(async (press, folder) => {
    const printed = await printPdf(press, htmlFile(folder, trialBody), { contentWidth })
    expect(printed.layoutFaults).toEqual([])
    return printed.pdf
  })
  finished = await finishPdf(raw, options)
})

describe("the clauses", () => {
  it("hold for a finished document", async () => {
    expect(await clauseFaults(finished)).toEqual([])
  })

  it("do not hold for what the browser wrote", async () => {
    const broken = new Set((await clauseFaults(raw)).map((fault) => fault.split(":")[0]))
    const mended = [
      "A 6.1.3",
      "A 6.2.3",
      "A 6.6.2.1",
      "A 6.6.4",
      "A 6.7.3.4",
      "UA 7.1-3",
      "UA 7.2-20",
      "UA 7.18.5-2",
    ]
    expect([...broken]).toEqual(expect.arrayContaining(mended))
  })

  it.each(clauses.map(({ id, what }) => [id, what]))(
    "%s catches a document that spoils it: %s",
    async (id) => {
      const spoil = spoils[id]
      expect(spoil, `${id} has no spoilt document`).toBeDefined()
      const spoilt = await spoil?.(finished)
      const broken = new Set((await clauseFaults(spoilt ?? finished)).map((fault) => fault.split(":")[0]))
      expect([...broken]).toContain(id)
    },
  )
})

describe("the same bytes", () => {
  it("come from prints of different browser processes, tabs, folders, time zones and histories", async () => {
    const prints: string[] = []
    const zone = process.env.TZ
    for (const [index, tz] of ["UTC", "Pacific/Auckland"].entries()) {
      process.env.TZ = tz
      await withTestPress(async (press, folder) => {
        const inside = join(folder, `build ${index}`)
        mkdirSync(inside)
        if (index > 0) await printPdf(press, htmlFile(folder, "<h1>Another job first</h1>"), { contentWidth })
        const file = htmlFile(inside, trialBody)
        const print = (): Promise<Printed> => printPdf(press, file, { contentWidth })
        for (const { pdf } of [await print(), ...(await Promise.all([print(), print()]))]) {
          prints.push(sha256(await finishPdf(pdf, options)))
        }
      })
    }
    if (zone === undefined) delete process.env.TZ
    else process.env.TZ = zone
    expect(new Set([...prints, sha256(finished)]).size).toBe(1)
  })

  it("differ when the text, the date or an attachment does", async () => {
    const other = await Promise.all([
      finishPdf(raw, { ...options, created: "2027-02-09T09:00:00Z" }),
      finishPdf(raw, { ...options, attachments: [] }),
      finishPdf(raw, { ...options, documentKey: "trial/room-a1/b" }),
    ])
    expect(new Set([finished, ...other].map(sha256)).size).toBe(4)
  })
})

const qpdf = spawnSync("qpdf", ["--version"]).status === 0

it.skipIf(!qpdf)("passes a syntax check by an independent reader, where qpdf is installed", () => {
  const folder = mkdtempSync(join(tmpdir(), "storey-rod-press-test-"))
  const file = join(folder, "finished.pdf")
  writeFileSync(file, finished)
  const check = spawnSync("qpdf", ["--check", file], { encoding: "utf8" })
  rmSync(folder, { recursive: true })
  expect(`${check.status} ${check.stderr}`).toBe("0 ")
})

function sha256(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex")
}

type Spoil = (bytes: Uint8Array) => Promise<Uint8Array>

/** A document with one thing made wrong in it. */
function changed(change: (pdf: PDFDocument) => void): Spoil {
  return async (bytes) => {
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false })
    change(pdf)
    return pdf.save({ addDefaultPage: false, updateFieldAppearances: false })
  }
}

const name = PDFName.of

function eachTag(role: string, change: (dict: PDFDict, tag: Tag) => void): Spoil {
  return changed((pdf) => {
    for (const tag of allTags(tagTree(pdf))) if (tag.role === role) change(tag.dict, tag)
  })
}

function inPacket(from: string | RegExp, to: string): Spoil {
  return changed((pdf) => {
    const stream = look(pdf.catalog, "Metadata")
    if (!(stream instanceof PDFRawStream)) throw new Error("no packet to spoil")
    const text = Buffer.from(stream.contents).toString("utf8").replace(from, to)
    pdf.catalog.set(name("Metadata"), pdf.context.register(pdf.context.stream(text)))
  })
}

function eachObject(type: string, change: (dict: PDFDict) => void): Spoil {
  return changed((pdf) => {
    for (const [, object] of pdf.context.enumerateIndirectObjects()) {
      if (object instanceof PDFDict && object.lookup(name("Type")) === name(type)) change(object)
    }
  })
}

const spoils: Record<string, Spoil> = {
  "A 6.1.2": async (bytes) => {
    const spoilt = Uint8Array.from(bytes)
    spoilt.set(new TextEncoder().encode("%PDF-2.0"))
    return spoilt
  },
  "A 6.1.3": changed((pdf) => {
    delete pdf.context.trailerInfo.ID
  }),
  "A 6.2.3": changed((pdf) => pdf.catalog.delete(name("OutputIntents"))),
  "A 6.2.11.4.1": eachObject("FontDescriptor", (dict) => dict.delete(name("FontFile2"))),
  "A 6.2.11.7": eachObject("Font", (dict) => dict.delete(name("ToUnicode"))),
  "A 6.3.2": changed((pdf) => {
    for (const annotation of annotationsOf(pdf)) annotation.set(name("F"), pdf.context.obj(2))
  }),
  "A 6.6.2.1": changed((pdf) => pdf.catalog.delete(name("Metadata"))),
  "A 6.6.2.3": inPacket(/<rdf:Description [^>]*pdfaExtension[\s\S]*<\/rdf:Description>/, ""),
  "A 6.6.3": inPacket("Trial pack", "Another pack"),
  "A 6.6.4": inPacket("<pdfaid:part>3", "<pdfaid:part>2"),
  "A 6.7.2.2": changed((pdf) => pdf.catalog.delete(name("MarkInfo"))),
  "A 6.7.3.3": changed((pdf) => pdf.catalog.delete(name("StructTreeRoot"))),
  "A 6.7.3.4": changed((pdf) => pdf.catalog.lookup(name("StructTreeRoot"), PDFDict).delete(name("RoleMap"))),
  "A 6.7.4": changed((pdf) => pdf.catalog.delete(name("Lang"))),
  "A 6.8": changed((pdf) => {
    for (const file of dictsIn(look(pdf.catalog, "AF"))) file.delete(name("AFRelationship"))
  }),
  "UA 5": inPacket("<pdfuaid:part>1", "<pdfuaid:part>"),
  "UA 7.1-3": changed((pdf) => {
    const page = pdf.getPage(0)
    const stream = page.node.lookup(name("Contents"))
    if (!(stream instanceof PDFRawStream)) throw new Error("no content to spoil")
    const content = Buffer.from(unpackedStream(stream)).toString("latin1")
    const unmarked = content.replace("/Artifact BMC\n", "").replace(/EMC\n/, "")
    page.node.set(
      name("Contents"),
      pdf.context.register(pdf.context.flateStream(Buffer.from(unmarked, "latin1"))),
    )
  }),
  "UA 7.1-9": changed((pdf) => pdf.catalog.delete(name("ViewerPreferences"))),
  "UA 7.2-tables": eachTag("TR", (dict, { kids }) => {
    if (kids.some(({ role }) => role === "TD")) dict.set(name("K"), dict.context.obj([]))
  }),
  "UA 7.2-19": eachTag("LI", (dict) => dict.set(name("S"), name("P"))),
  "UA 7.2-20": eachTag("LBody", (dict) => dict.set(name("S"), name("Span"))),
  "UA 7.3": eachTag("Figure", (dict) => dict.delete(name("Alt"))),
  "UA 7.4.2": eachTag("H2", (dict) => dict.set(name("S"), name("H4"))),
  "UA 7.5": eachTag("TH", (dict) => dict.set(name("ID"), PDFString.of("elsewhere"))),
  "UA 7.17": changed((pdf) => pdf.catalog.delete(name("Outlines"))),
  "UA 7.18.3": changed((pdf) => pdf.getPage(0).node.delete(name("Tabs"))),
  "UA 7.18.5-1": eachTag("Link", (dict) => {
    const kids = dict.lookup(name("K"), PDFArray)
    dict.set(name("K"), dict.context.obj(kids.asArray().slice(0, 1)))
  }),
  "UA 7.18.5-2": changed((pdf) => {
    for (const annotation of annotationsOf(pdf)) annotation.delete(name("Contents"))
  }),
}
