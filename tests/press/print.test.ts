import { dirname, join } from "node:path"

import { describe, expect, it } from "vitest"

import { Fault } from "../../src/kernels/fault.ts"
import { printPdf } from "../../src/press/print.ts"
import { paperFacts } from "../facts/paper.ts"
import { pageBoxes, pagesNotA4 } from "./inspect/boxes.ts"
import { coloursNotGrey } from "./inspect/colours.ts"
import { fontsNotAllowed } from "./inspect/fonts.ts"
import { openPdf } from "./inspect/open.ts"
import { allowedFonts, contentWidth, htmlFile, trialBody, withTestPress } from "./inspect/press.ts"
import { overlappingText, textItems, textOutside, textSizes } from "./inspect/text.ts"

/** What most printers leave white along each edge, 5 mm, in points; common practice. */
const unprintable = (5 / 25.4) * 72

describe("printPdf", () => {
  it("prints upright and lying A4 in one document, in the sheets' typeface, at the size set", async () => {
    await withTestPress(async (press, folder) => {
      const body = `${trialBody}<section style="page:wide"><h2>Programme</h2></section>`
      const file = htmlFile(folder, body, "@page wide{size:A4 landscape}")
      const printed = await printPdf(press, file, { contentWidth })
      expect(printed.layoutFaults).toEqual([])
      expect(printed.pages).toBe(4)
      expect(await pagesNotA4(printed.pdf)).toEqual([])
      const boxes = await pageBoxes(printed.pdf)
      expect(boxes.map(({ width, height }) => (width < height ? "upright" : "lying"))).toEqual([
        "upright",
        "upright",
        "upright",
        "lying",
      ])
      expect(await fontsNotAllowed(printed.pdf, allowedFonts)).toEqual([])
      const open = await openPdf(printed.pdf)
      const sizes = await textSizes(open)
      expect(sizes[0]?.size).toBeGreaterThanOrEqual(paperFacts.smallestType.value - 0.02)
      expect(sizes.map(({ size }) => size)).toContainEqual(expect.closeTo(10.5, 1))
      expect(await textOutside(open, unprintable)).toEqual([])
      const text = (await textItems(open)).map((item) => item.text).join("")
      expect(text).toContain("page 4 of 4")
    })
  })

  it("keeps texts apart, and shows where a style lays one over the other", async () => {
    await withTestPress(async (press, folder) => {
      const sound = await printPdf(press, htmlFile(folder, trialBody), { contentWidth })
      expect(await overlappingText(await openPdf(sound.pdf))).toEqual([])
      const body = "<p>wall 1 3,940</p><p style='margin-top:-8mm'>door 762</p>"
      const over = await printPdf(press, htmlFile(folder, body), { contentWidth })
      const pairs = await overlappingText(await openPdf(over.pdf))
      expect(pairs).toEqual([{ page: 1, texts: ["wall 1 3,940", "door 762"] }])
    })
  })

  it("finds paper that is not A4", async () => {
    await withTestPress(async (press, folder) => {
      const file = htmlFile(folder, "<p>Text</p>", "@page{size:A5}")
      const { pdf } = await printPdf(press, file, { contentWidth: 118 })
      expect(await pagesNotA4(pdf)).toHaveLength(1)
    })
  })

  it("names the page of each linked place, the same in a draft as in the full print", async () => {
    await withTestPress(async (press, folder) => {
      const file = htmlFile(folder, trialBody)
      const draft = await printPdf(press, file, { contentWidth, draft: true })
      const full = await printPdf(press, file, { contentWidth })
      expect([...full.destinations]).toEqual([
        ["one", 2],
        ["two", 3],
      ])
      expect(draft.destinations).toEqual(full.destinations)
      expect(draft.pages).toBe(full.pages)
    })
  })

  it("keeps to grey where the style does, and shows the browser's link blue where it does not", async () => {
    await withTestPress(async (press, folder) => {
      const grey = await printPdf(press, htmlFile(folder, trialBody), { contentWidth })
      expect(await coloursNotGrey(grey.pdf)).toEqual([])
      const blue = await printPdf(press, htmlFile(folder, trialBody, "a{color:-webkit-link}"), {
        contentWidth,
      })
      expect(await coloursNotGrey(blue.pdf)).toEqual(["0 0 .9333"])
    })
  })

  it("is a fault when the page lacks a picture, or asks for one from the network", async () => {
    await withTestPress(async (press, folder) => {
      const lacks = htmlFile(folder, '<h1>Plan</h1><img src="gone.png" alt="">')
      await expect(printPdf(press, lacks, { contentWidth })).rejects.toThrow(/gone\.png/)
      const asks = htmlFile(folder, '<h1>Plan</h1><img src="https://jobs.example.co.uk/a.png" alt="">')
      const asking = printPdf(press, asks, { contentWidth })
      await expect(asking).rejects.toThrow(Fault)
      await expect(asking).rejects.toThrow(/jobs\.example\.co\.uk/)
    })
  })

  it("is a fault when there is no such file", async () => {
    await withTestPress(async (press, folder) => {
      await expect(printPdf(press, join(dirname(folder), "gone.html"), { contentWidth })).rejects.toThrow()
    })
  })
})
