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
}

/** All text of a document, page by page, in the order of its content; blanks left out. */
export async function textItems(pdf: OpenPdf): Promise<TextItem[]> {
  const items: TextItem[] = []
  for (let page = 1; page <= pdf.numPages; page += 1) {
    const proxy = await pdf.getPage(page)
    const content = await proxy.getTextContent({ disableNormalization: true })
    for (const item of content.items) {
      if (!("str" in item) || item.str.trim() === "") continue
      const [, , c, d, x, y] = item.transform as number[]
      const size = Math.round(Math.hypot(c ?? 0, d ?? 0) * 100) / 100
      items.push({ page, text: item.str, size, x: x ?? 0, y: y ?? 0, width: item.width })
    }
    proxy.cleanup()
  }
  return items
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
    const within =
      item.x >= left + margin &&
      item.x + item.width <= right - margin &&
      item.y >= bottom + margin &&
      item.y + item.size <= top - margin
    if (!within) outside.push(item)
  }
  return outside
}
