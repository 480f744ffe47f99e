import { describe, expect, it } from "vitest"

import { missingSigns, shrunkFault } from "../../../src/press/browser/print-check.ts"
import { printPdf } from "../../../src/press/print.ts"
import { openPdf } from "../inspect/open.ts"
import { contentWidth, htmlFile, withTestPress } from "../inspect/press.ts"
import { textSizes } from "../inspect/text.ts"

describe("what shows in print alone", () => {
  it("is a document made smaller, as the sizes of its type confirm", async () => {
    await withTestPress(async (press, folder) => {
      const wide = "<p>Text</p><p style='width:225mm'>wide by a quarter</p>"
      const { pdf, layoutFaults } = await printPdf(press, htmlFile(folder, wide), { contentWidth })
      const percent = Math.round((contentWidth / 225) * 100)
      expect(layoutFaults).toContainEqual({
        kind: "shrunk",
        sheet: "",
        text: `printed at ${percent} %`,
        by: 0,
      })
      const sizes = (await textSizes(await openPdf(pdf))).map(({ size }) => size)
      expect(sizes[0]).toBeCloseTo((10.5 * contentWidth) / 225, 1)
    })
  })

  it("is a character that no font has, by the page it stands on", async () => {
    await withTestPress(async (press, folder) => {
      const body = "<p>½ ≥ → ≤ × ′ ″ √ ✓ £ ² – fine</p><section>Shade \u{1F000}</section>"
      const { layoutFaults } = await printPdf(press, htmlFile(folder, body), { contentWidth })
      expect(layoutFaults).toEqual([{ kind: "missing-sign", sheet: "", text: "page 2", by: 0 }])
    })
  })
})

describe("print checks on their own", () => {
  const clip = "q\n178 178 2126 3153 re\nW* n\nq\n"

  it("take a drawing's scale for its own where text stands at full size", () => {
    expect(shrunkFault([`${clip}1.5 0 0 1.5 178 178 cm\nQ\nq\n3.125 0 0 3.125 178 178 cm\n`])).toEqual([])
  })

  it("look past the margins, which keep their size when the rest is shrunk", () => {
    const page = `q\n3.125 0 0 3.125 0 0 cm\n${clip}2.0833335 0 0 2.0833335 178 178 cm\n`
    expect(shrunkFault([page])).toEqual([expect.objectContaining({ text: "printed at 67 %" })])
  })

  it("find the empty box inside a longer text, and not across two glyphs", () => {
    expect(missingSigns(["<001400000009> Tj", "<00140009> Tj\n<10000001> Tj"])).toEqual([
      expect.objectContaining({ kind: "missing-sign", text: "page 1" }),
    ])
  })
})
