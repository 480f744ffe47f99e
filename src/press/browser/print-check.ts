import type { LayoutFault } from "./layout-check.ts"

/** Steps of the page's own grid to a CSS pixel at full size: the browser draws on 300 steps to the inch, of 96 pixels. */
const fullScale = 300 / 96

/**
 * A document that the browser printed smaller, as something in it was too wide for its paper: one fault, or none.
 * It sets each page's scale after the clip to the area within the margins; drawings have scales of their own,
 * so one text at full size is enough to know that the document was not shrunk.
 * @param contents what each page paints, as the browser wrote it
 */
export function shrunkFault(contents: readonly string[]): LayoutFault[] {
  let largest = 0
  for (const content of contents) {
    const inside = content.slice(content.indexOf("W* n"))
    for (const [, across, down] of inside.matchAll(/^([\d.]+) 0 0 ([\d.]+) \S+ \S+ cm$/gm)) {
      if (across !== down) continue
      const scale = Number(across) / fullScale
      if (Math.abs(scale - 1) < 0.001) return []
      if (scale < 1) largest = Math.max(largest, scale)
    }
  }
  if (largest === 0) return []
  return [{ kind: "shrunk", sheet: "", text: `printed at ${Math.round(largest * 100)} %`, by: 0 }]
}

/**
 * Pages on which a character stands that no font has: the font's first glyph is painted for it, an empty box.
 * @param contents what each page paints, as the browser wrote it: two bytes a glyph, in hexadecimal
 * @returns one fault a page
 */
export function missingSigns(contents: readonly string[]): LayoutFault[] {
  return contents.flatMap((content, index) => {
    const glyphs = [...content.matchAll(/<([0-9a-f]+)> Tj/gi)].flatMap(
      ([, text]) => text?.match(/.{4}/g) ?? [],
    )
    if (!glyphs.includes("0000")) return []
    return [{ kind: "missing-sign" as const, sheet: "", text: `page ${index + 1}`, by: 0 }]
  })
}
