import { readFileSync } from "node:fs"
import { createRequire } from "node:module"

import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader"

import type { Raster } from "./raster.ts"

let prepared = false

/** Every QR code in an image, decoded by an independent reader; the texts in no certain order. */
export async function decodeQr(raster: Raster): Promise<string[]> {
  prepare()
  const image = { ...raster, data: raster.data } as ImageData
  const codes = await readBarcodes(image, { formats: ["QRCode"], tryHarder: true, maxNumberOfSymbols: 20 })
  return codes.filter((code) => code.isValid).map((code) => code.text)
}

/** The reader would fetch its code from the network; it is given the copy that npm installed. */
function prepare(): void {
  if (prepared) return
  const file = createRequire(import.meta.url).resolve("zxing-wasm/reader/zxing_reader.wasm")
  const wasm = readFileSync(file)
  prepareZXingModule({ overrides: { wasmBinary: Uint8Array.from(wasm).buffer } })
  prepared = true
}
