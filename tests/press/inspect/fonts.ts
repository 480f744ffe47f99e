import { PDFArray, PDFDict, PDFDocument, PDFName } from "pdf-lib"

/** A font that a document uses. */
export interface UsedFont {
  /** Its name without the tag of a subset, e.g. `IBMPlexSans-Bold`; empty for one that has none. */
  name: string
  /** `Type0`, `TrueType`, `Type3` ... */
  type: string
  embedded: boolean
}

/** The fonts of a PDF, each once, by name. */
export async function fontsOf(bytes: Uint8Array): Promise<UsedFont[]> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false })
  const fonts = new Map<string, UsedFont>()
  for (const [, object] of pdf.context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFDict) || nameOf(object, "Type") !== "Font") continue
    const type = nameOf(object, "Subtype")
    if (type.startsWith("CIDFont")) continue
    const font = { name: plainName(object), type, embedded: isEmbedded(object) }
    fonts.set(JSON.stringify(font), font)
  }
  return [...fonts.values()].sort((a, b) => (a.name < b.name ? -1 : 1))
}

/** Fonts that are not embedded, drawn glyph by glyph (Type 3), or not among the names allowed. */
export async function fontsNotAllowed(bytes: Uint8Array, allowed: readonly string[]): Promise<UsedFont[]> {
  const fonts = await fontsOf(bytes)
  return fonts.filter((font) => !font.embedded || font.type === "Type3" || !allowed.includes(font.name))
}

function plainName(font: PDFDict): string {
  return nameOf(font, "BaseFont").replace(/^[A-Z]{6}\+/, "")
}

function isEmbedded(font: PDFDict): boolean {
  if (nameOf(font, "Subtype") === "Type3") return true
  const descendant = font.lookupMaybe(PDFName.of("DescendantFonts"), PDFArray)?.lookup(0, PDFDict) ?? font
  const descriptor = descendant.lookupMaybe(PDFName.of("FontDescriptor"), PDFDict)
  return ["FontFile", "FontFile2", "FontFile3"].some((key) => descriptor?.has(PDFName.of(key)) === true)
}

function nameOf(dict: PDFDict, key: string): string {
  const value = dict.lookup(PDFName.of(key))
  return value instanceof PDFName ? value.decodeText() : ""
}
