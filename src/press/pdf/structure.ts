import type { PDFDocument, PDFObject } from "pdf-lib"
import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRef } from "pdf-lib"

import { invariant } from "../../kernels/fault.ts"

/** One element of the tag tree, as it stands in the file. */
export interface Element {
  ref: PDFRef
  dict: PDFDict
  /** Its type before any role mapping, e.g. `TH`. */
  type: string
}

/**
 * Mends what the browser leaves undone in the tag tree: types outside the standard set get a role
 * (ISO 32000-1:2008, 14.8.4), and what stands bare in a list item beside its label is given a body (ISO 14289-1:2014,
 * 7.6; ISO 32000-1:2008, table 336).
 */
export function mendStructure(pdf: PDFDocument): void {
  const elements = elementsOf(pdf)
  addRoles(pdf, elements)
  for (const element of elements) if (element.type === "LI") giveBody(pdf, element)
}

/** The elements of the tag tree in reading order; empty for an untagged document. */
export function elementsOf(pdf: PDFDocument): Element[] {
  const root = rootOf(pdf)
  if (root === undefined) return []
  const found: Element[] = []
  const waiting: PDFObject[] = [...kidsOf(root)].reverse()
  while (waiting.length > 0) {
    const kid = waiting.pop()
    if (!(kid instanceof PDFRef)) continue
    const dict = pdf.context.lookup(kid)
    if (!(dict instanceof PDFDict)) continue
    const type = dict.lookupMaybe(PDFName.of("S"), PDFName)
    if (type === undefined) continue
    found.push({ ref: kid, dict, type: type.decodeText() })
    waiting.push(...kidsOf(dict).reverse())
  }
  return found
}

/** What hangs from an element or the root, whether the file writes one or a list. */
export function kidsOf(dict: PDFDict): PDFObject[] {
  const kids = dict.get(PDFName.of("K"))
  if (kids === undefined) return []
  const looked = kids instanceof PDFRef ? dict.context.lookup(kids) : kids
  return looked instanceof PDFArray ? looked.asArray() : [kids]
}

/** The root of the tag tree, if the document is tagged. */
export function rootOf(pdf: PDFDocument): PDFDict | undefined {
  return pdf.catalog.lookupMaybe(PDFName.of("StructTreeRoot"), PDFDict)
}

/** The standard structure types of PDF 1.7 (ISO 32000-1:2008, 14.8.4.2 to 14.8.4.5). */
export const standardTypes: ReadonlySet<string> = new Set(
  (
    "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 " +
    "L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot " +
    "Ruby RB RT RP Warichu WT WP Figure Formula Form"
  ).split(" "),
)

/** Types that browsers write from newer sets, and what they are here; any other becomes a plain division. */
const roles: Readonly<Record<string, string>> = {
  Strong: "Span",
  Em: "Span",
  Sub: "Span",
  Aside: "Sect",
  Title: "P",
}

function addRoles(pdf: PDFDocument, elements: readonly Element[]): void {
  const used = [...new Set(elements.map(({ type }) => type))]
    .filter((type) => !standardTypes.has(type))
    .sort()
  if (used.length === 0) return
  const map = pdf.context.obj({})
  for (const type of used) map.set(PDFName.of(type), PDFName.of(roles[type] ?? "Div"))
  rootOf(pdf)?.set(PDFName.of("RoleMap"), map)
}

function giveBody(pdf: PDFDocument, item: Element): void {
  const { context } = pdf
  const kids = kidsOf(item.dict)
  const stays = (kid: PDFObject): boolean => /^(Lbl|LBody)$/.test(typeOf(pdf, kid))
  const bare = kids.filter((kid) => !stays(kid))
  if (bare.length === 0) return
  const body = context.obj({ Type: "StructElem", S: "LBody", P: item.ref, K: context.obj(bare) })
  const page = item.dict.get(PDFName.of("Pg"))
  if (page !== undefined) body.set(PDFName.of("Pg"), page)
  const bodyRef = context.register(body)
  for (const kid of bare) {
    if (kid instanceof PDFNumber) rehang(pdf, { page, mark: kid.asNumber(), to: bodyRef })
    else if (kid instanceof PDFRef) context.lookup(kid, PDFDict).set(PDFName.of("P"), bodyRef)
    else invariant(false, "a list item holds something that cannot be moved into its body")
  }
  item.dict.set(PDFName.of("K"), context.obj([...kids.filter(stays), bodyRef]))
}

function typeOf(pdf: PDFDocument, kid: PDFObject): string {
  const dict = kid instanceof PDFRef ? pdf.context.lookup(kid) : undefined
  return dict instanceof PDFDict ? (dict.lookupMaybe(PDFName.of("S"), PDFName)?.decodeText() ?? "") : ""
}

/** Tells the parent tree that a mark on a page now belongs to another element. */
function rehang(
  pdf: PDFDocument,
  { page, mark, to }: { page: PDFObject | undefined; mark: number; to: PDFRef },
): void {
  const pageDict = page instanceof PDFRef ? pdf.context.lookup(page, PDFDict) : undefined
  const key = pageDict?.lookupMaybe(PDFName.of("StructParents"), PDFNumber)?.asNumber()
  const numbers = rootOf(pdf)
    ?.lookupMaybe(PDFName.of("ParentTree"), PDFDict)
    ?.lookupMaybe(PDFName.of("Nums"), PDFArray)
  const at = numbers?.asArray().findIndex((item, index) => {
    return index % 2 === 0 && item instanceof PDFNumber && item.asNumber() === key
  })
  invariant(numbers !== undefined && at !== undefined && at >= 0, "a list item's mark has no parent tree")
  numbers.lookup(at + 1, PDFArray).set(mark, to)
}
