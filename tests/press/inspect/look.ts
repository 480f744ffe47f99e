import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  type PDFObject,
  PDFRawStream,
  PDFString,
} from "pdf-lib"

/** What stands under a chain of keys, references followed; undefined where the chain breaks. */
export function look(from: PDFDict, ...keys: string[]): PDFObject | undefined {
  let at: PDFObject | undefined = from
  for (const key of keys) {
    const dict: PDFObject | undefined = at instanceof PDFRawStream ? at.dict : at
    if (!(dict instanceof PDFDict)) return undefined
    at = dict.lookup(PDFName.of(key))
  }
  return at
}

/** Text of a string or name object; empty for anything else. */
export function plain(object: PDFObject | undefined): string {
  const isText = object instanceof PDFString || object instanceof PDFHexString || object instanceof PDFName
  return isText ? object.decodeText() : ""
}

/** The dictionaries in a list, references followed. */
export function dictsIn(list: PDFObject | undefined): PDFDict[] {
  if (!(list instanceof PDFArray)) return []
  const items = Array.from({ length: list.size() }, (_, index) => list.lookup(index))
  return items.filter((item) => item instanceof PDFDict)
}

/** The annotations of all pages. */
export function annotationsOf(pdf: PDFDocument): PDFDict[] {
  return pdf.getPages().flatMap((page) => dictsIn(look(page.node, "Annots")))
}

/** A stream's bytes, unpacked. */
export function unpackedStream(stream: PDFRawStream): Uint8Array {
  return decodePDFRawStream(stream).decode()
}

/** Every stream of a PDF, unpacked: pages, typefaces, embedded files; those in a coding of pictures are left as they are. */
export async function unpackedStreams(bytes: Uint8Array): Promise<Uint8Array[]> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false })
  return pdf.context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (!(object instanceof PDFRawStream)) return []
    const filter = plain(look(object.dict, "Filter"))
    return [filter === "" || filter === "FlateDecode" ? unpackedStream(object) : object.contents]
  })
}
