import { PDFDocument } from "pdf-lib"

/** Size of a page as it is held, points. */
export interface PageBox {
  page: number
  width: number
  height: number
}

/** The size of each page, its turn taken into account. */
export async function pageBoxes(bytes: Uint8Array): Promise<PageBox[]> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false })
  return pdf.getPages().map((page, index) => {
    const { width, height } = page.getSize()
    const turned = page.getRotation().angle % 180 !== 0
    return { page: index + 1, width: turned ? height : width, height: turned ? width : height }
  })
}

/** A4 in points, short side first: 210 x 297 mm (ISO 216:2007). */
const a4 = [(210 / 25.4) * 72, (297 / 25.4) * 72] as const

/** Pages that are not A4, upright or lying, within one point. */
export async function pagesNotA4(bytes: Uint8Array): Promise<PageBox[]> {
  return (await pageBoxes(bytes)).filter(({ width, height }) => {
    const [short, long] = width < height ? [width, height] : [height, width]
    return Math.abs(short - a4[0]) > 1 || Math.abs(long - a4[1]) > 1
  })
}
