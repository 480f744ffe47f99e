import type { Mm } from "../units.ts"

/** Height of capitals and figures as a share of the font size, of the usual sans serif faces. */
const capitalShare = 0.7
/** Depth below the line of g, p, y and the comma as a share of the height of capitals. */
const depthShare = 0.32
/** Distance from one line to the next as a share of the height of capitals. */
const lineShare = 1.65
/** Widths as shares of the font size, on the generous side, so that a real face is no wider. */
const widths: readonly [RegExp, number][] = [
  [/[0-9]/, 0.6],
  [/[ ijl.,:;'|!·]/, 0.3],
  [/[ftr()[\]/-]/, 0.4],
  [/[mwMW@%]/, 0.92],
  [/[A-Z×+±=°²]/, 0.68],
]
const otherWidth = 0.58
const boldShare = 1.05

/** Font size on paper that gives figures and capitals of a height, mm. */
export function fontSize(height: Mm): Mm {
  return height / capitalShare
}

/** The lines of a text. */
export function linesOf(text: string): string[] {
  return text.split("\n")
}

/** Distance from one line of a text to the next, mm on paper. */
export function lineStep(height: Mm): Mm {
  return height * lineShare
}

/** How far letters reach below their line, mm on paper. */
export function letterDepth(height: Mm): Mm {
  return height * depthShare
}

/** The room a text takes on paper, mm: the widest line, and from the top of the first to the depth of the last. */
export function textSize(text: string, height: Mm, bold = false): { width: Mm; height: Mm } {
  const lines = linesOf(text)
  return {
    width: Math.max(...lines.map((line) => lineWidth(line, height))) * (bold ? boldShare : 1),
    height: (lines.length - 1) * lineStep(height) + height + letterDepth(height),
  }
}

function lineWidth(line: string, height: Mm): Mm {
  let shares = 0
  for (const letter of line) shares += widths.find(([letters]) => letters.test(letter))?.[1] ?? otherWidth
  return shares * fontSize(height)
}
