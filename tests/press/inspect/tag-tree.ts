import type { PDFDocument, PDFObject } from "pdf-lib"
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRef, PDFString } from "pdf-lib"

/** One tagged element, read without the code that wrote it. */
export interface Tag {
  /** Its type as written, e.g. `Strong`. */
  type: string
  /** Its type after the role map, e.g. `Span`. */
  role: string
  id: string
  alt: string
  /** Values of its attributes by key, e.g. `Scope` to `/Column`, as written. */
  attributes: Map<string, PDFObject>
  kids: Tag[]
  /** What else hangs from it: marks on pages and objects such as links. */
  dict: PDFDict
}

/** The tag tree of a document, from its root's kids down; empty if it has none. */
export function tagTree(pdf: PDFDocument): Tag[] {
  const root = pdf.catalog.lookupMaybe(PDFName.of("StructTreeRoot"), PDFDict)
  const roles = root?.lookupMaybe(PDFName.of("RoleMap"), PDFDict)
  return root === undefined ? [] : kidTags(root, roles)
}

/** All elements of a tag tree in reading order. */
export function allTags(tags: readonly Tag[]): Tag[] {
  return tags.flatMap((tag) => [tag, ...allTags(tag.kids)])
}

function kidTags(parent: PDFDict, roles: PDFDict | undefined): Tag[] {
  const kids = parent.lookup(PDFName.of("K"))
  const list = kids instanceof PDFArray ? kids.asArray() : kids === undefined ? [] : [kids]
  return list.flatMap((kid) => {
    const dict = kid instanceof PDFRef ? parent.context.lookup(kid) : kid
    if (!(dict instanceof PDFDict) || !(dict.lookup(PDFName.of("S")) instanceof PDFName)) return []
    const type = nameOf(dict, "S")
    const mapped = roles === undefined ? "" : nameOf(roles, type)
    return [
      {
        type,
        role: mapped === "" ? type : mapped,
        id: textOf(dict, "ID"),
        alt: textOf(dict, "Alt"),
        attributes: attributesOf(dict),
        kids: kidTags(dict, roles),
        dict,
      },
    ]
  })
}

function attributesOf(dict: PDFDict): Map<string, PDFObject> {
  const written = dict.lookup(PDFName.of("A"))
  const sets = written instanceof PDFArray ? written.asArray() : written === undefined ? [] : [written]
  const dicts = sets.map((set) => dict.context.lookup(set)).filter((set) => set instanceof PDFDict)
  return new Map(dicts.flatMap((set) => set.entries().map(([key, value]) => [key.decodeText(), value])))
}

function nameOf(dict: PDFDict, key: string): string {
  const value = dict.lookup(PDFName.of(key))
  return value instanceof PDFName ? value.decodeText() : ""
}

function textOf(dict: PDFDict, key: string): string {
  const value = dict.lookup(PDFName.of(key))
  return value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : ""
}
