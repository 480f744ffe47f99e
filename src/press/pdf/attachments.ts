import { createHash } from "node:crypto"
import { inflateSync } from "node:zlib"
import type { PDFContext, PDFRef } from "pdf-lib"
import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  PDFRawStream,
  PDFString,
} from "pdf-lib"

import { pdfDate } from "./dates.ts"

/** What an attached file is to the document: what it was made from, data that belongs to it, or something added. */
export type Relationship = "Source" | "Data" | "Supplement"

/** A file carried inside a PDF. */
export interface Attachment {
  /** File name, with `/` between folders. */
  name: string
  bytes: Uint8Array
  /** Media type, e.g. `application/yaml`. */
  mime: string
  relationship: Relationship
  /** One line for the reader. */
  description: string
}

/** A file taken out of a PDF again. Its name is as written there: a caller that writes it must keep it in its folder. */
export interface ReadAttachment extends Attachment {
  /** False where size or checksum differ from those stated beside it, or it cannot be unpacked. */
  intact: boolean
}

/**
 * Puts files into a document as associated files of the whole (ISO 19005-3:2012, 6.8 and annex E), in order of name.
 * @param created instant stated as their date of change
 */
export function attach(pdf: PDFDocument, attachments: readonly Attachment[], created: string): void {
  if (attachments.length === 0) return
  const { context } = pdf
  const sorted = [...attachments].sort((a, b) => (a.name < b.name ? -1 : 1))
  const files = sorted.map((attachment) => ({
    name: PDFHexString.fromText(attachment.name),
    ref: fileSpecification(context, attachment, created),
  }))
  const names = context.obj({ Names: context.obj(files.flatMap(({ name, ref }) => [name, ref])) })
  const catalogNames = pdf.catalog.lookupMaybe(PDFName.of("Names"), PDFDict) ?? context.obj({})
  catalogNames.set(PDFName.of("EmbeddedFiles"), names)
  pdf.catalog.set(PDFName.of("Names"), catalogNames)
  pdf.catalog.set(PDFName.of("AF"), context.obj(files.map(({ ref }) => ref)))
}

function fileSpecification(context: PDFContext, attachment: Attachment, created: string): PDFRef {
  const { bytes } = attachment
  const stream = context.flateStream(bytes, {
    Type: "EmbeddedFile",
    Subtype: PDFName.of(attachment.mime),
    Params: {
      Size: bytes.length,
      ModDate: PDFString.of(pdfDate(created)),
      CheckSum: PDFHexString.of(md5(bytes)),
    },
  })
  const file = context.register(stream)
  const name = PDFHexString.fromText(attachment.name)
  return context.register(
    context.obj({
      Type: "Filespec",
      F: name,
      UF: name,
      Desc: PDFHexString.fromText(attachment.description),
      AFRelationship: attachment.relationship,
      EF: { F: file, UF: file },
    }),
  )
}

/** The checksum that the format asks for (ISO 32000-1:2008, table 46); it finds accidents, not forgery. */
function md5(bytes: Uint8Array): string {
  return createHash("md5").update(bytes).digest("hex").toUpperCase()
}

/**
 * The files carried by a PDF that `finishPdf` made, in the order of its associated files.
 * Never throws over a damaged attachment: it comes back not `intact`, empty if it cannot be unpacked.
 * @throws whatever the PDF reader throws where the bytes are no PDF
 */
export async function readAttachments(pdf: Uint8Array): Promise<ReadAttachment[]> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  const associated = document.catalog.lookupMaybe(PDFName.of("AF"), PDFArray)
  const specifications = associated?.asArray().map((item) => document.context.lookup(item)) ?? []
  return specifications.filter((item) => item instanceof PDFDict).flatMap((item) => readOne(item))
}

function readOne(specification: PDFDict): ReadAttachment[] {
  const stream = specification.lookupMaybe(PDFName.of("EF"), PDFDict)?.lookup(PDFName.of("UF"))
  if (!(stream instanceof PDFRawStream)) return []
  const bytes = unpacked(stream)
  const stated = stream.dict.lookupMaybe(PDFName.of("Params"), PDFDict)
  const size = stated?.lookupMaybe(PDFName.of("Size"), PDFNumber)?.asNumber()
  const sum = stated?.lookup(PDFName.of("CheckSum"))
  const checksum = sum instanceof PDFHexString ? sum.asString().toUpperCase() : null
  return [
    {
      name: textOf(specification, "UF"),
      bytes: bytes ?? new Uint8Array(),
      mime: nameOf(stream.dict, "Subtype"),
      relationship: relationshipOf(nameOf(specification, "AFRelationship")),
      description: textOf(specification, "Desc"),
      intact: bytes !== null && size === bytes.length && checksum === md5(bytes),
    },
  ]
}

/** Most bytes one attached file may unpack to: a bound against a file made to exhaust the memory. */
const largestFile = 256 * 1024 * 1024

function unpacked(stream: PDFRawStream): Uint8Array | null {
  const filter = stream.dict.lookup(PDFName.of("Filter"))
  if (filter === undefined) return stream.contents
  if (filter !== PDFName.of("FlateDecode")) return null
  try {
    return new Uint8Array(inflateSync(stream.contents, { maxOutputLength: largestFile }))
  } catch {
    return null
  }
}

function textOf(dict: PDFDict, key: string): string {
  const value = dict.lookup(PDFName.of(key))
  return value instanceof PDFHexString || value instanceof PDFString ? value.decodeText() : ""
}

function nameOf(dict: PDFDict, key: string): string {
  return dict.lookupMaybe(PDFName.of(key), PDFName)?.decodeText() ?? ""
}

function relationshipOf(name: string): Relationship {
  return name === "Source" || name === "Data" ? name : "Supplement"
}
