import { createHash } from "node:crypto"
import type { PDFContext, PDFDocument, PDFObject } from "pdf-lib"
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRef, PDFStream, PDFString } from "pdf-lib"

import { elementsOf, rootOf } from "./structure.ts"

/**
 * Numbers the identifiers of tagged elements in reading order, and rewrites the index of them and the references of table
 * cells to their headers. The browser numbers them by all it has printed since it started.
 */
export function renumberElementIds(pdf: PDFDocument): void {
  const renamed = new Map<string, PDFString>()
  const index: PDFObject[] = []
  const elements = elementsOf(pdf)
  for (const { ref, dict } of elements) {
    const id = textOf(dict.lookup(PDFName.of("ID")))
    if (id === null) continue
    const name = PDFString.of(`e${String(renamed.size + 1).padStart(8, "0")}`)
    renamed.set(id, name)
    dict.set(PDFName.of("ID"), name)
    index.push(name, ref)
  }
  for (const { dict } of elements) renameHeaders(pdf.context, dict, renamed)
  const root = rootOf(pdf)
  if (index.length > 0) root?.set(PDFName.of("IDTree"), pdf.context.obj({ Names: pdf.context.obj(index) }))
  else root?.delete(PDFName.of("IDTree"))
}

function renameHeaders(context: PDFContext, dict: PDFDict, renamed: ReadonlyMap<string, PDFString>): void {
  const attributes = dict.lookup(PDFName.of("A"))
  const sets = attributes instanceof PDFArray ? attributes.asArray() : attributes ? [attributes] : []
  for (const set of sets.map((item) => context.lookup(item))) {
    const headers = set instanceof PDFDict ? set.lookup(PDFName.of("Headers")) : undefined
    if (!(set instanceof PDFDict) || !(headers instanceof PDFArray)) continue
    const names = headers
      .asArray()
      .flatMap((header) => renamed.get(textOf(context.lookup(header)) ?? "") ?? [])
    set.set(PDFName.of("Headers"), context.obj(names))
  }
}

function textOf(value: PDFObject | undefined): string | null {
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : null
}

/**
 * Numbers all objects in the order in which they are reached from the catalog, and drops those that are not.
 * The order follows the keys and lists as written, so equal documents come out equal whatever numbers they had.
 */
export function renumberObjects(pdf: PDFDocument): void {
  const { context } = pdf
  const order = reachable(context)
  const numbers = new Map(order.map((ref, index) => [ref, PDFRef.of(index + 1)]))
  const objects = order.map((ref) => context.lookup(ref))
  for (const [ref] of context.enumerateIndirectObjects()) context.delete(ref)
  for (const [index, object] of objects.entries()) {
    if (object === undefined) continue
    context.assign(PDFRef.of(index + 1), withNumbers(object, numbers))
  }
  for (const key of ["Root", "Info"] as const) {
    const ref = context.trailerInfo[key]
    if (ref instanceof PDFRef) context.trailerInfo[key] = numbers.get(ref)
  }
  context.largestObjectNumber = order.length
}

function reachable(context: PDFContext): PDFRef[] {
  const seen = new Set<PDFRef>()
  const waiting: PDFObject[] = []
  const push = (objects: readonly (PDFObject | undefined)[]): void => {
    for (const object of [...objects].reverse()) if (object !== undefined) waiting.push(object)
  }
  push([context.trailerInfo.Root, context.trailerInfo.Info])
  while (waiting.length > 0) {
    const object = waiting.pop()
    if (object instanceof PDFRef) {
      if (seen.has(object) || context.lookup(object) === undefined) continue
      seen.add(object)
      push([context.lookup(object)])
    } else if (object instanceof PDFStream) push(object.dict.values())
    else if (object instanceof PDFDict) push(object.values())
    else if (object instanceof PDFArray) push(object.asArray())
  }
  return [...seen]
}

/** The same object with its references renumbered in place; a reference to nothing becomes null's, by being dropped from dictionaries. */
function withNumbers(object: PDFObject, numbers: ReadonlyMap<PDFRef, PDFRef>): PDFObject {
  if (object instanceof PDFRef) return numbers.get(object) ?? object
  if (object instanceof PDFStream) withNumbers(object.dict, numbers)
  if (object instanceof PDFDict) {
    for (const [key, value] of object.entries()) {
      if (value instanceof PDFRef && !numbers.has(value)) object.delete(key)
      else object.set(key, withNumbers(value, numbers))
    }
  }
  if (object instanceof PDFArray) {
    for (let index = 0; index < object.size(); index += 1) {
      object.set(index, withNumbers(object.get(index), numbers))
    }
  }
  return object
}

/** The identifier of the file, twice the same as it never was changed: made from the document's own key (ISO 32000-1:2008, 14.4). */
export function setFileIdentifier(pdf: PDFDocument, documentKey: string): void {
  const hash = createHash("sha256").update(documentKey).digest("hex").slice(0, 32).toUpperCase()
  const identifier = PDFHexString.of(hash)
  pdf.context.trailerInfo.ID = pdf.context.obj([identifier, identifier])
}
