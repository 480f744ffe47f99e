import { readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, it } from "vitest"
import { filesBelow } from "../../src/press/output-tree.ts"
import { decodeQr } from "../press/inspect/decode-qr.ts"
import { openPdf } from "../press/inspect/open.ts"
import { pageRaster, worn } from "../press/inspect/raster.ts"
import { textItems } from "../press/inspect/text.ts"

/** A built output whose every page is to be read: `WORN=output npm test -- tests/whole/worn.test.ts`, some minutes. */
const output = process.env.WORN

/** A grey copy at 150 dpi, printed at 95 %, 3 degrees askew, out of focus. */
const wear = { scale: 0.95, degrees: 3, blur: 1 }

it.skipIf(!output)(
  "every page of every bound pack still answers to its code when copied, shrunk, askew and blurred",
  async () => {
    const print = join(output!, "print")
    const paths = filesBelow(print).filter(({ path }) => /\/(job|archive|fold-outs)\.pdf$/.test(path))
    const unread: string[] = []
    let read = 0
    for (const { path } of paths) {
      const pdf = await openPdf(readFileSync(join(print, path)))
      const addresses = new Map<number, string>()
      for (const { page, text } of await textItems(pdf)) {
        const typed = /^[a-z0-9.-]+\/[0-9a-z]{8}\/\S*$/.exec(text.trim())
        if (typed) addresses.set(page, `https://${typed[0]}`)
      }
      for (const [page, address] of addresses) {
        const codes = await decodeQr(worn(await pageRaster(pdf, page, 150), wear))
        if (codes.length === 1 && codes[0] === address) read += 1
        else unread.push(`${path} page ${page}: ${codes.join(" ") || "nothing"}`)
      }
    }
    console.log(`${read} codes read, ${unread.length} not`)
    expect(unread).toEqual([])
    expect(read).toBeGreaterThan(0)
  },
  3_600_000,
)
