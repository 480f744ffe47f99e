import type { PDFDocument } from "pdf-lib"
import { PDFDict, PDFHexString, PDFName, PDFString } from "pdf-lib"

import { fixDates, xmpDate } from "./dates.ts"

/** What a document says of itself. */
export interface Description {
  title: string
  /** BCP 47 tag, e.g. `en-GB`. */
  language: string
  /** Instant of issue. */
  created: string
}

/** The program that stands behind the document, as its properties name it. */
const creator = "Storey Rod"

/**
 * Title, language and dates in the catalog and in the information dictionary, and the same in an XMP packet that
 * states PDF/A-3a and PDF/UA-1 (ISO 19005-3:2012, 6.6.2 to 6.6.4; ISO 14289-1:2014, 5 and 7.1).
 */
export function describe(pdf: PDFDocument, description: Description): void {
  const { context, catalog } = pdf
  const information = informationOf(pdf)
  information.set(PDFName.of("Title"), PDFHexString.fromText(description.title))
  information.set(PDFName.of("Creator"), PDFString.of(creator))
  fixDates(pdf, information, description.created)
  catalog.set(PDFName.of("Lang"), PDFString.of(description.language))
  catalog.set(PDFName.of("ViewerPreferences"), context.obj({ DisplayDocTitle: true }))
  catalog.set(PDFName.of("MarkInfo"), context.obj({ Marked: true }))
  const packet = new TextEncoder().encode(xmpPacket(description, pdf.getProducer() ?? ""))
  const stream = context.stream(packet, { Type: "Metadata", Subtype: "XML" })
  catalog.set(PDFName.of("Metadata"), context.register(stream))
}

function informationOf(pdf: PDFDocument): PDFDict {
  const { context } = pdf
  const present = context.lookup(context.trailerInfo.Info)
  if (present instanceof PDFDict) return present
  const made = context.obj({})
  context.trailerInfo.Info = context.register(made)
  return made
}

/** The packet is kept uncompressed, so that any program can find it in the file. */
function xmpPacket({ title, language, created }: Description, producer: string): string {
  const date = xmpDate(created)
  return `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${xml(title)}</rdf:li></rdf:Alt></dc:title>
<dc:language><rdf:Bag><rdf:li>${xml(language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreatorTool>${xml(creator)}</xmp:CreatorTool>
<xmp:CreateDate>${date}</xmp:CreateDate>
<xmp:ModifyDate>${date}</xmp:ModifyDate>
<pdf:Producer>${xml(producer)}</pdf:Producer>
<pdfaid:part>3</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
${extensionSchema}
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`
}

/** PDF/A asks that a property it does not know be explained in the packet (ISO 19005-3:2012, 6.6.2.3). */
const extensionSchema = `<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 the file conforms to</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`

function xml(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;")
}
