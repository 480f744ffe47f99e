import type { PDFDocument } from "pdf-lib"
import { PDFDict, PDFName, PDFNumber, PDFRawStream } from "pdf-lib"

import type { Clause } from "./clauses.ts"
import { annotationsOf, dictsIn, look, plain, unpackedStream } from "./look.ts"
import { allTags, tagTree } from "./tag-tree.ts"

/** What PDF/A-3, level A, asks for (ISO 19005-3:2012; clause numbers from memory). */
export const archiveClauses: readonly Clause[] = [
  {
    id: "A 6.1.2",
    what: "header of PDF 1.0 to 1.7, then a comment of four bytes above 127",
    faults: ({ bytes }) => {
      const head = Buffer.from(bytes.subarray(0, 16)).toString("latin1")
      return /^%PDF-1\.[0-7]\r?\n%[\x80-\xff]{4}/.test(head) ? [] : [`header ${JSON.stringify(head)}`]
    },
  },
  {
    id: "A 6.1.3",
    what: "the trailer has an identifier, and nothing is encrypted",
    faults: ({ pdf }) => {
      const { ID, Encrypt } = pdf.context.trailerInfo
      return [...(ID === undefined ? ["no identifier"] : []), ...(Encrypt === undefined ? [] : ["encrypted"])]
    },
  },
  {
    id: "A 6.2.3",
    what: "an output intent with an RGB profile of version 2 or 4",
    faults: ({ pdf }) => outputIntentFaults(pdf),
  },
  {
    id: "A 6.2.11.4.1",
    what: "every font is embedded",
    faults: ({ pdf }) =>
      dictsOfType(pdf, "FontDescriptor")
        .filter((font) => !["FontFile", "FontFile2", "FontFile3"].some((key) => font.has(PDFName.of(key))))
        .map((font) => plain(look(font, "FontName"))),
  },
  {
    id: "A 6.2.11.7",
    what: "every font says which characters its glyphs are",
    faults: ({ pdf }) =>
      dictsOfType(pdf, "Font")
        .filter((font) => plain(look(font, "Subtype")) === "Type0" && look(font, "ToUnicode") === undefined)
        .map((font) => plain(look(font, "BaseFont"))),
  },
  {
    id: "A 6.3.2",
    what: "every annotation prints, and none is hidden",
    faults: ({ pdf }) =>
      annotationsOf(pdf)
        .map((annotation) => look(annotation, "F"))
        .filter((flags) => !(flags instanceof PDFNumber) || (flags.asNumber() & 0b100111) !== 0b100)
        .map((flags) => `flags ${flags ?? "missing"}`),
  },
  {
    id: "A 6.6.2.1",
    what: "an uncompressed XMP packet in the catalog",
    faults: ({ pdf }) => {
      const stream = look(pdf.catalog, "Metadata")
      if (!(stream instanceof PDFRawStream)) return ["none"]
      return stream.dict.has(PDFName.of("Filter")) ? ["compressed"] : []
    },
  },
  {
    id: "A 6.6.2.3",
    what: "properties beyond the known schemas are explained in the packet",
    faults: ({ pdf }) =>
      /<pdfaSchema:prefix>pdfuaid</.test(xmpOf(pdf)) && /<pdfaProperty:name>part</.test(xmpOf(pdf))
        ? []
        : ["pdfuaid is not explained"],
  },
  {
    id: "A 6.6.3",
    what: "the information dictionary and the packet say the same",
    faults: ({ pdf }) => informationFaults(pdf),
  },
  {
    id: "A 6.6.4",
    what: "the packet states part 3, conformance A",
    faults: ({ pdf }) => {
      const stated = [inXmp(pdf, "pdfaid:part"), inXmp(pdf, "pdfaid:conformance")].join("")
      return stated === "3A" ? [] : [`states "${stated}"`]
    },
  },
  {
    id: "A 6.7.2.2",
    what: "the document says it is tagged",
    faults: ({ pdf }) => (String(look(pdf.catalog, "MarkInfo", "Marked")) === "true" ? [] : ["not marked"]),
  },
  {
    id: "A 6.7.3.3",
    what: "there is a tag tree",
    faults: ({ pdf }) => (tagTree(pdf).length > 0 ? [] : ["none"]),
  },
  {
    id: "A 6.7.3.4",
    what: "every type is a standard one, or has the role of one",
    faults: ({ pdf }) => [
      ...new Set(
        allTags(tagTree(pdf))
          .map(({ role }) => role)
          .filter((role) => !standard.has(role)),
      ),
    ],
  },
  {
    id: "A 6.7.4",
    what: "the document names its language",
    faults: ({ pdf }) =>
      /^[a-z]{2,3}(-[A-Za-z0-9]+)*$/.test(plain(look(pdf.catalog, "Lang"))) ? [] : ["none"],
  },
  {
    id: "A 6.8",
    what: "each attached file has both names, a media type, a date, and its relation to the document",
    faults: ({ pdf }) => attachmentFaults(pdf),
  },
]

/** ISO 32000-1:2008, 14.8.4, from memory; written out apart from the list in the code under test. */
const standard = new Set(
  `Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private H H1 H2 H3 H4 H5 H6 P
   L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby
   Warichu RB RT RP WT WP Figure Formula Form`.split(/\s+/),
)

function outputIntentFaults(pdf: PDFDocument): string[] {
  const intents = dictsIn(look(pdf.catalog, "OutputIntents"))
  const intent = intents.find((one) => plain(look(one, "S")) === "GTS_PDFA1")
  if (intent === undefined) return ["none"]
  const profile = look(intent, "DestOutputProfile")
  if (!(profile instanceof PDFRawStream)) return ["no profile"]
  const icc = Buffer.from(unpackedStream(profile))
  const holds =
    icc.readUInt32BE(0) === icc.length &&
    [2, 4].includes(icc[8] ?? 0) &&
    icc.toString("latin1", 16, 20) === "RGB " &&
    icc.toString("latin1", 36, 40) === "acsp" &&
    String(look(profile.dict, "N")) === "3"
  return holds ? [] : ["the profile is no RGB profile"]
}

function informationFaults(pdf: PDFDocument): string[] {
  const information = pdf.context.lookup(pdf.context.trailerInfo.Info)
  if (!(information instanceof PDFDict)) return ["no information dictionary"]
  const pairs: [string, string, string][] = [
    ["Title", plain(look(information, "Title")), /x-default">([^<]*)</.exec(xmpOf(pdf))?.[1] ?? ""],
    ["Creator", plain(look(information, "Creator")), inXmp(pdf, "xmp:CreatorTool")],
    ["Producer", plain(look(information, "Producer")), inXmp(pdf, "pdf:Producer")],
    ["CreationDate", instantOf(information, "CreationDate"), inXmp(pdf, "xmp:CreateDate")],
    ["ModDate", instantOf(information, "ModDate"), inXmp(pdf, "xmp:ModifyDate")],
  ]
  const readable = (xml: string): string =>
    xml.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&amp;/g, "&")
  return pairs
    .filter(([, left, right]) => left === "" || left !== readable(right))
    .map(([key, left, right]) => `${key} is "${left}" here and "${right}" there`)
}

function instantOf(information: PDFDict, key: string): string {
  const digits = /^D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)Z$/.exec(plain(look(information, key)))
  if (digits === null) return ""
  const [, year, month, day, hour, minute, second] = digits
  return `${year}-${month}-${day}T${hour}:${minute}:${second}Z`
}

function attachmentFaults(pdf: PDFDocument): string[] {
  const named = look(pdf.catalog, "Names", "EmbeddedFiles", "Names")
  const files = dictsIn(named)
  const associated = dictsIn(look(pdf.catalog, "AF"))
  const faults = files
    .filter((file) => !associated.includes(file))
    .map((file) => `${nameIn(file)} is not associated`)
  for (const file of files) {
    const stream = look(file, "EF", "F")
    const dict = stream instanceof PDFRawStream ? stream.dict : undefined
    const relation = plain(look(file, "AFRelationship"))
    if (plain(look(file, "F")) === "" || plain(look(file, "UF")) === "")
      faults.push("a file has not both names")
    if (!/^(Source|Data|Alternative|Supplement|Unspecified)$/.test(relation))
      faults.push(`${nameIn(file)}: no relation`)
    if (dict === undefined) faults.push(`${nameIn(file)}: no content`)
    else if (!/^[a-z]+\/[a-z0-9.+-]+$/.test(plain(look(dict, "Subtype"))))
      faults.push(`${nameIn(file)}: no media type`)
    else if (!plain(look(dict, "Params", "ModDate")).startsWith("D:")) faults.push(`${nameIn(file)}: no date`)
  }
  return faults
}

function nameIn(file: PDFDict): string {
  return plain(look(file, "UF")) || plain(look(file, "F"))
}

function xmpOf(pdf: PDFDocument): string {
  const stream = look(pdf.catalog, "Metadata")
  return stream instanceof PDFRawStream ? Buffer.from(unpackedStream(stream)).toString("utf8") : ""
}

function inXmp(pdf: PDFDocument, element: string): string {
  return new RegExp(`<${element}>([^<]*)</${element}>`).exec(xmpOf(pdf))?.[1] ?? ""
}

function dictsOfType(pdf: PDFDocument, type: string): PDFDict[] {
  return pdf.context
    .enumerateIndirectObjects()
    .map(([, object]) => object)
    .filter((object) => object instanceof PDFDict)
    .filter((object) => plain(look(object, "Type")) === type)
}
