import { describe, expect, it } from "vitest"

import { printPdf } from "../../src/press/print.ts"
import { qrSvg } from "../../src/press/qr.ts"
import { qrCapacities, qrModules, qrQuietZone } from "../facts/paper.ts"
import { decodeQr } from "./inspect/decode-qr.ts"
import { openPdf } from "./inspect/open.ts"
import { contentWidth, htmlFile, withTestPress } from "./inspect/press.ts"
import { pageRaster, worn } from "./inspect/raster.ts"

const address = "https://jobs.example.co.uk/k7mq3x2p/04/c/"

function addressOf(characters: number): string {
  return `https://jobs.example.co.uk/${"k7mq3x2p".repeat(9)}`.slice(0, characters)
}

describe("qrSvg", () => {
  it.each(qrCapacities)(
    "fills version $version at level $level with $characters characters, and no more",
    (row) => {
      const isFor = (characters: number): string => (characters <= 44 ? "H" : "Q")
      if (isFor(row.characters) === row.level) {
        expect(qrSvg(addressOf(row.characters), "x")).toMatchObject({
          modules: qrModules(row.version),
          level: row.level,
        })
      }
      if (isFor(row.characters + 1) === row.level) {
        expect(qrSvg(addressOf(row.characters + 1), "x").modules).toBeGreaterThan(qrModules(row.version))
      }
    },
  )

  it("takes the stronger level up to 44 characters, the largest version 5 holds", () => {
    expect([44, 45].map((length) => qrSvg(addressOf(length), "x").level)).toEqual(["H", "Q"])
  })

  it("keeps half a millimetre a module at 25 mm square up to 60 characters", () => {
    const side = qrSvg(addressOf(60), "x").modules + 2 * qrQuietZone
    expect(25 / side).toBeGreaterThan(0.5)
  })

  it("leaves the quiet zone white and paints nothing but black on it", () => {
    const { svg, modules } = qrSvg(address, "x")
    const side = modules + 2 * qrQuietZone
    expect(svg).toContain(`viewBox="0 0 ${side} ${side}"`)
    const runs = [...svg.matchAll(/M(\d+) (\d+)h(\d+)v1/g)].map(([, x, y, width]) =>
      [x, y, width].map(Number),
    )
    expect(Math.min(...runs.map(([x = 0]) => x))).toBe(qrQuietZone)
    expect(Math.max(...runs.map(([x = 0, , width = 0]) => x + width))).toBe(side - qrQuietZone)
    expect([...new Set(svg.match(/fill="[^"]*"/g))]).toEqual(['fill="#fff"', 'fill="#000"'])
  })

  it("is the same each time, and shows markup in its label as text", () => {
    expect(qrSvg(address, "a")).toEqual(qrSvg(address, "a"))
    const { svg } = qrSvg(address, `<b>"A&B"</b>`)
    expect(svg).toContain(`aria-label="&lt;b&gt;&quot;A&amp;B&quot;&lt;/b&gt;"`)
    expect(svg).not.toContain("<b>")
  })
})

describe("on paper", () => {
  const wear = [
    { what: "as printed, 200 dpi", dpi: 200, worn: {} },
    { what: "150 dpi", dpi: 150, worn: {} },
    { what: "grey, 300 dpi, black or white", dpi: 300, worn: { threshold: 128 } },
    { what: "blurred", dpi: 200, worn: { blur: 1.5 } },
    { what: "turned 3 degrees", dpi: 200, worn: { degrees: 3 } },
    { what: "printed at 95 %", dpi: 200, worn: { scale: 0.95 } },
    { what: "95 %, turned, blurred, 150 dpi", dpi: 150, worn: { scale: 0.95, degrees: 3, blur: 1 } },
  ]

  it("decodes from the body of a sheet, whatever befell it", async () => {
    const pdf = await withTestPress(async (press, folder) => {
      const codes = [address, addressOf(60)].map((url) => `<p>${qrSvg(url, url).svg}</p>`).join("")
      const file = htmlFile(folder, codes, "svg.qr{width:25mm;height:25mm}")
      return openPdf((await printPdf(press, file, { contentWidth })).pdf)
    })
    for (const { what, dpi, worn: how } of wear) {
      const decoded = await decodeQr(worn(await pageRaster(pdf, 1, dpi), how))
      expect(decoded.sort(), what).toEqual([address, addressOf(60)].sort())
    }
  })

  it("does not decode when half of it is torn off", async () => {
    const pdf = await withTestPress(async (press, folder) => {
      const torn = `<div data-may-clip style="height:13mm;overflow:hidden">${qrSvg(address, "x").svg}</div>`
      const file = htmlFile(folder, torn, "svg.qr{width:25mm;height:25mm}")
      return openPdf((await printPdf(press, file, { contentWidth })).pdf)
    })
    expect(await decodeQr(await pageRaster(pdf, 1, 200))).toEqual([])
  })
})
