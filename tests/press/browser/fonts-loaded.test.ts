import { expect, it } from "vitest"

import { Fault } from "../../../src/kernels/fault.ts"
import { printPdf } from "../../../src/press/print.ts"
import { fontsNotAllowed, fontsOf } from "../inspect/fonts.ts"
import { allowedFonts, contentWidth, fontFolder, htmlFile, withTestPress } from "../inspect/press.ts"

it("embeds a face that stands in the margins alone, at the first print of a fresh browser", async () => {
  await withTestPress(async (press, folder) => {
    const { pdf } = await printPdf(press, htmlFile(folder, "<p>Text</p>"), { contentWidth })
    expect(await fontsOf(pdf)).toEqual([
      { name: "IBMPlexSans", type: "Type0", embedded: true },
      { name: "IBMPlexSans-SmBld", type: "Type0", embedded: true },
    ])
    expect(await fontsNotAllowed(pdf, allowedFonts)).toEqual([])
  })
})

it("refuses to print when a face cannot be loaded", async () => {
  await withTestPress(async (press, folder) => {
    const file = htmlFile(folder, "<p>Text</p>", "@font-face{font-family:Lost;src:url(lost.woff2)}")
    const print = printPdf(press, file, { contentWidth })
    await expect(print).rejects.toThrow(Fault)
    await expect(print).rejects.toThrow(/Lost/)
  })
})

it("shows another typeface, and a weight that had to be made up, as fonts that are not allowed", async () => {
  await withTestPress(async (press, folder) => {
    const face = new URL("IBMPlexSans-Regular.woff2", fontFolder).href
    const style = `@font-face{font-family:One;src:url(${face})}.one{font:700 10pt One}.other{font:10pt serif}`
    const body = '<p>Text</p><p class="one">made bold</p><p class="other">other</p>'
    const { pdf } = await printPdf(press, htmlFile(folder, body, style), { contentWidth })
    const types = (await fontsNotAllowed(pdf, allowedFonts)).map(({ type }) => type)
    expect(types.sort()).toEqual(["Type0", "Type3"])
  })
})
