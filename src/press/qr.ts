import { create } from "qrcode"

/** A QR code as drawn on a sheet. */
export interface Qr {
  /** Whole `svg` element, black modules on white with the quiet zone inside it; sized by its container. */
  svg: string
  /** Modules along one side, without the quiet zone. */
  modules: number
  /** Error correction: H recovers about 30 % of the symbol, Q about 25 % (ISO/IEC 18004:2015, 5.1 e, from memory). */
  level: "H" | "Q"
}

/** Longest address, in characters, that still fits version 5 at level H in byte mode (ISO/IEC 18004:2015, table 7, from memory). */
const longestAtH = 44

/** Modules of white on each side (ISO/IEC 18004:2015, 9.1, from memory). */
const quietZone = 4

/**
 * The QR code of an address: level H up to 44 characters, level Q beyond, so that at 25 mm square a module
 * stays above half a millimetre up to 60 characters.
 * @param label what a reader who cannot see it is told; escaped here
 * @returns the same text for the same address, always
 */
export function qrSvg(url: string, label: string): Qr {
  const level = url.length <= longestAtH ? "H" : "Q"
  const { modules } = create(url, { errorCorrectionLevel: level })
  const side = modules.size + 2 * quietZone
  const name = escaped(label)
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="qr" role="img" aria-label="${name}" viewBox="0 0 ${side} ${side}" shape-rendering="crispEdges">` +
    `<title>${name}</title><path fill="#fff" d="M0 0h${side}v${side}H0z"/>` +
    `<path fill="#000" d="${darkRuns(modules.size, (row, column) => modules.get(row, column) !== 0)}"/></svg>`
  return { svg, modules: modules.size, level }
}

/** One rectangle for each unbroken run of dark modules in a row. */
function darkRuns(size: number, isDark: (row: number, column: number) => boolean): string {
  const runs: string[] = []
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      if (!isDark(row, column)) continue
      const start = column
      while (column < size && isDark(row, column)) column += 1
      runs.push(`M${start + quietZone} ${row + quietZone}h${column - start}v1h${start - column}z`)
    }
  }
  return runs.join("")
}

function escaped(text: string): string {
  const entities: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" }
  return text.replace(/[&<>"]/g, (character) => entities[character] ?? character)
}
