import type { OpenPdf } from "./open.ts"

/** A stretch of text as it stands on the paper. */
export interface TextItem {
  /** From 1. */
  page: number
  text: string
  /** Height of its type on paper, points: after all scaling, so a shrunk page shows. */
  size: number
  /** Left end of its base line, points from the left and from the bottom of the page. */
  x: number
  y: number
  /** Points, along the line. */
  width: number
  /** The rectangle it fills, points from the left and the bottom: base line to the height of capitals, turned as it is. */
  box: { left: number; bottom: number; right: number; top: number }
}

/** All text of a document, page by page, in the order of its content; blanks left out. */
export async function textItems(pdf: OpenPdf): Promise<TextItem[]> {
  const items: TextItem[] = []
  for (let page = 1; page <= pdf.numPages; page += 1) {
    const proxy = await pdf.getPage(page)
    const content = await proxy.getTextContent({ disableNormalization: true })
    for (const item of content.items) {
      if (!("str" in item) || item.str.trim() === "") continue
      const matrix: number[] = item.transform
      const [, , c = 0, d = 0, x = 0, y = 0] = matrix
      const size = Math.round(Math.hypot(c, d) * 100) / 100
      const box = boxOf(matrix, item.width)
      items.push({ page, text: item.str, size, x, y, width: item.width, box })
    }
    proxy.cleanup()
  }
  return items
}

/** Height of capitals over the size of type, of the sheets' typeface and most like it. */
const capitals = 0.7

function boxOf([a = 0, b = 0, c = 0, d = 0, x = 0, y = 0]: number[], width: number): TextItem["box"] {
  const along = width / (Math.hypot(a, b) || 1)
  const corners = [0, along].flatMap((run) =>
    [0, capitals].map((rise) => [x + a * run + c * rise, y + b * run + d * rise] as const),
  )
  const xs = corners.map(([across]) => across)
  const ys = corners.map(([, up]) => up)
  return { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) }
}

/** Pairs of texts on one page that lie over each other by more than a seventh of the smaller one. */
export async function overlappingText(pdf: OpenPdf): Promise<{ page: number; texts: [string, string] }[]> {
  const items = (await textItems(pdf)).sort((a, b) => a.page - b.page || a.box.left - b.box.left)
  const found: { page: number; texts: [string, string] }[] = []
  for (const [index, left] of items.entries()) {
    for (const right of items.slice(index + 1)) {
      if (right.page !== left.page || right.box.left >= left.box.right) break
      const shared = areaOf(sharedBox(left.box, right.box))
      const smaller = Math.min(areaOf(left.box), areaOf(right.box))
      if (shared > smaller / 7) found.push({ page: left.page, texts: [left.text, right.text] })
    }
  }
  return found
}

function sharedBox(a: TextItem["box"], b: TextItem["box"]): TextItem["box"] {
  return {
    left: Math.max(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
    top: Math.min(a.top, b.top),
  }
}

function areaOf({ left, bottom, right, top }: TextItem["box"]): number {
  return Math.max(right - left, 0) * Math.max(top - bottom, 0)
}

/** The sizes of type in a document, smallest first, points, each with the first text set in it. */
export async function textSizes(pdf: OpenPdf): Promise<{ size: number; sample: string; page: number }[]> {
  const bySize = new Map<number, { size: number; sample: string; page: number }>()
  for (const { size, text, page } of await textItems(pdf)) {
    if (!bySize.has(size)) bySize.set(size, { size, sample: text, page })
  }
  return [...bySize.values()].sort((a, b) => a.size - b.size)
}

/** Text that reaches outside its page, or nearer to its edge than `margin` points. */
export async function textOutside(pdf: OpenPdf, margin = 0): Promise<TextItem[]> {
  const items = await textItems(pdf)
  const outside: TextItem[] = []
  for (const item of items) {
    const [left = 0, bottom = 0, right = 0, top = 0] = (await pdf.getPage(item.page)).view
    const { box } = item
    const within =
      box.left >= left + margin &&
      box.right <= right - margin &&
      box.bottom >= bottom + margin &&
      box.top <= top - margin
    if (!within) outside.push(item)
  }
  return outside
}

/** All text of a PDF, in the order of its pages. */
export async function textOf(pdf: OpenPdf): Promise<string> {
  return (await textItems(pdf)).map((item) => item.text).join(" ")
}

/** The text of each page, from page 1. */
export async function pagesOf(pdf: OpenPdf): Promise<string[]> {
  const pages = Array.from({ length: pdf.numPages }, () => "")
  for (const { page, text } of await textItems(pdf)) pages[page - 1] += `${text} `
  return pages
}
