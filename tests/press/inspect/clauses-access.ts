import type { PDFDocument } from "pdf-lib"
import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream } from "pdf-lib"

import type { Clause } from "./clauses.ts"
import { annotationsOf, look, plain, unpackedStream } from "./look.ts"
import type { Tag } from "./tag-tree.ts"
import { allTags, tagTree } from "./tag-tree.ts"
import { untaggedPaint } from "./untagged.ts"

/** What PDF/UA-1 asks for (ISO 14289-1:2014; clause numbers from memory, those with a dash as an open checker counts them). */
export const accessClauses: readonly Clause[] = [
  {
    id: "UA 5",
    what: "the packet states part 1 of PDF/UA",
    faults: ({ pdf }) => (/<pdfuaid:part>1</.test(xmpText(pdf)) ? [] : ["not stated"]),
  },
  {
    id: "UA 7.1-3",
    what: "all that is painted is tagged or an artifact",
    faults: async ({ open }) =>
      [...(await untaggedPaint(open))].map(([page, times]) => `page ${page}: ${times} times`),
  },
  {
    id: "UA 7.1-9",
    what: "the packet has a title, and viewers are told to show it",
    faults: ({ pdf }) => [
      ...(/<dc:title>.*<rdf:li[^>]*>[^<]+</.test(xmpText(pdf)) ? [] : ["no title"]),
      ...(String(look(pdf.catalog, "ViewerPreferences", "DisplayDocTitle")) === "true"
        ? []
        : ["title not shown"]),
    ],
  },
  {
    id: "UA 7.2-tables",
    what: "a table holds rows, and each row cells for the same number of columns",
    faults: ({ pdf }) => ofRole(pdf, "Table").flatMap((table) => tableFaults(table)),
  },
  {
    id: "UA 7.2-19",
    what: "a list holds items, lists or a caption alone",
    faults: ({ pdf }) => kidsNot(ofRole(pdf, "L"), /^(L|LI|Caption)$/),
  },
  {
    id: "UA 7.2-20",
    what: "a list item holds a label and a body alone",
    faults: ({ pdf }) => [
      ...kidsNot(ofRole(pdf, "LI"), /^(Lbl|LBody)$/),
      ...ofRole(pdf, "LI")
        .filter(({ dict, kids }) => marksOf(dict) > 0 || kids.length === 0)
        .map(() => "a list item holds bare content"),
    ],
  },
  {
    id: "UA 7.3",
    what: "every figure has its words",
    faults: ({ pdf }) =>
      ofRole(pdf, "Figure")
        .filter(({ alt }) => alt.trim() === "")
        .map(() => "a figure has none"),
  },
  {
    id: "UA 7.4.2",
    what: "headings begin at the first level and skip none",
    faults: ({ pdf }) => headingFaults(allTags(tagTree(pdf))),
  },
  {
    id: "UA 7.5",
    what: "every header cell has a scope, and every header a cell names is there",
    faults: ({ pdf }) => headerFaults(pdf),
  },
  {
    id: "UA 7.17",
    what: "there are bookmarks, and page labels from the first page on",
    faults: ({ pdf }) => {
      const labels = look(pdf.catalog, "PageLabels", "Nums")
      const labelled = labels instanceof PDFArray && String(labels.lookup(0)) === "0"
      const outline = look(pdf.catalog, "Outlines", "First")
      return [...(outline === undefined ? ["no bookmarks"] : []), ...(labelled ? [] : ["no page labels"])]
    },
  },
  {
    id: "UA 7.18.3",
    what: "the order of tabbing follows the tags on each page",
    faults: ({ pdf }) =>
      pdf
        .getPages()
        .flatMap((page, index) => (plain(look(page.node, "Tabs")) === "S" ? [] : [`page ${index + 1}`])),
  },
  {
    id: "UA 7.18.5-1",
    what: "every link stands in a link element",
    faults: ({ pdf }) => {
      const held = ofRole(pdf, "Link").flatMap(({ dict }) => objectsHeld(dict))
      return linksOf(pdf)
        .filter((link) => !held.includes(link))
        .map((link) => `${plain(look(link, "Contents"))} stands outside`)
    },
  },
  {
    id: "UA 7.18.5-2",
    what: "every link has its words",
    faults: ({ pdf }) =>
      linksOf(pdf)
        .filter((link) => plain(look(link, "Contents")).trim() === "")
        .map(() => "a link has none"),
  },
]

function ofRole(pdf: PDFDocument, role: string): Tag[] {
  return allTags(tagTree(pdf)).filter((tag) => tag.role === role)
}

function kidsNot(tags: readonly Tag[], allowed: RegExp): string[] {
  return tags.flatMap(({ role, kids }) =>
    kids.filter((kid) => !allowed.test(kid.role)).map((kid) => `${role} holds ${kid.role}`),
  )
}

function tableFaults(table: Tag): string[] {
  const rows = table.kids.flatMap((kid) => (/^(THead|TBody|TFoot)$/.test(kid.role) ? kid.kids : [kid]))
  const wrong = rows
    .filter(({ role }) => !/^(TR|Caption)$/.test(role))
    .map(({ role }) => `table holds ${role}`)
  const trs = rows.filter(({ role }) => role === "TR")
  const cells = kidsNot(trs, /^(TH|TD)$/)
  const widths = widthsOf(trs)
  const uneven = new Set(widths).size > 1 ? [`rows of ${[...new Set(widths)].join(" and ")} columns`] : []
  return [...wrong, ...cells, ...uneven]
}

/** Columns each row takes up, cells that reach down from rows above counted in. */
function widthsOf(rows: readonly Tag[]): number[] {
  const hanging: number[] = []
  return rows.map((row, index) => {
    const across = (cell: Tag): number => spanOf(cell, "ColSpan")
    for (const cell of row.kids) {
      for (let below = 1; below < spanOf(cell, "RowSpan"); below += 1) {
        hanging[index + below] = (hanging[index + below] ?? 0) + across(cell)
      }
    }
    return row.kids.reduce((sum, cell) => sum + across(cell), hanging[index] ?? 0)
  })
}

function spanOf(cell: Tag, key: "ColSpan" | "RowSpan"): number {
  const span = cell.attributes.get(key)
  return span instanceof PDFNumber ? span.asNumber() : 1
}

function headingFaults(tags: readonly Tag[]): string[] {
  const levels = tags.flatMap(({ role }) => /^H([1-6])$/.exec(role)?.[1] ?? []).map(Number)
  return levels
    .map((level, index) => ({ level, before: levels[index - 1] ?? 0 }))
    .filter(({ level, before }) => level > before + 1)
    .map(({ level, before }) => `H${level} after ${before === 0 ? "nothing" : `H${before}`}`)
}

function headerFaults(pdf: PDFDocument): string[] {
  const tags = allTags(tagTree(pdf))
  const ids = new Set(tags.map(({ id }) => id))
  const index = look(pdf.catalog, "StructTreeRoot", "IDTree", "Names")
  const indexed = new Set(index instanceof PDFArray ? index.asArray().map((item) => plain(item)) : [])
  const scopeless = tags
    .filter((tag) => tag.role === "TH" && !tag.attributes.has("Scope"))
    .map(() => "no scope")
  const named = tags.flatMap(({ attributes }) => {
    const headers = attributes.get("Headers")
    return headers instanceof PDFArray ? headers.asArray().map((item) => plain(item)) : []
  })
  const lost = named.filter((id) => !ids.has(id) || !indexed.has(id)).map((id) => `header ${id} is not there`)
  return [...scopeless, ...lost]
}

function linksOf(pdf: PDFDocument): PDFDict[] {
  return annotationsOf(pdf).filter((annotation) => plain(look(annotation, "Subtype")) === "Link")
}

function objectsHeld(dict: PDFDict): PDFDict[] {
  const kids = look(dict, "K")
  const list = kids instanceof PDFArray ? kids.asArray() : kids === undefined ? [] : [kids]
  const dicts = list.map((kid) => dict.context.lookup(kid)).filter((kid) => kid instanceof PDFDict)
  return dicts.map((kid) => look(kid, "Obj")).filter((object) => object instanceof PDFDict)
}

function marksOf(dict: PDFDict): number {
  const kids = dict.get(PDFName.of("K"))
  const list = kids instanceof PDFArray ? kids.asArray() : [kids]
  return list.filter((kid) => kid instanceof PDFNumber).length
}

function xmpText(pdf: PDFDocument): string {
  const stream = look(pdf.catalog, "Metadata")
  return stream instanceof PDFRawStream ? Buffer.from(unpackedStream(stream)).toString("utf8") : ""
}
