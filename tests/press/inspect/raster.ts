import type { Canvas } from "@napi-rs/canvas"
import { createCanvas, ImageData } from "@napi-rs/canvas"

import type { OpenPdf } from "./open.ts"

/** An image of a page: rows of pixels, each red, green, blue, alpha in 0 to 255. */
export interface Raster {
  width: number
  height: number
  data: Uint8ClampedArray
}

/** Page `page` (from 1) as an image on white at a resolution. */
export async function pageRaster(pdf: OpenPdf, page: number, dpi: number): Promise<Raster> {
  const proxy = await pdf.getPage(page)
  const viewport = proxy.getViewport({ scale: dpi / 72 })
  const factory = pdf.canvasFactory as CanvasMaker
  const { canvas, context } = factory.create(Math.round(viewport.width), Math.round(viewport.height))
  await proxy.render({ canvas, viewport, background: "white" }).promise
  const { width, height } = canvas
  const { data } = context.getImageData(0, 0, width, height)
  proxy.cleanup()
  return { width, height, data: new Uint8ClampedArray(data) }
}

/** pdf.js brings canvases of its own making, which are typed as a browser's. */
interface CanvasMaker {
  create: (width: number, height: number) => { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D }
}

/** What happened to a sheet between printer and eye. */
export interface Wear {
  /** Size it was printed or copied at, e.g. 0.95. */
  scale?: number
  /** Turn, clockwise. */
  degrees?: number
  /** Radius of blur, pixels. */
  blur?: number
  /** Black or white, nothing between, at this level from 0 to 255. */
  threshold?: number
}

/** The image as it comes out of a copier or a camera: grey, turned, smaller, blurred, thresholded, in that order. */
export function worn(raster: Raster, { scale = 1, degrees = 0, blur = 0, threshold }: Wear): Raster {
  const source = createCanvas(raster.width, raster.height)
  const pixels = new ImageData(new Uint8ClampedArray(raster.data), raster.width, raster.height)
  source.getContext("2d").putImageData(pixels, 0, 0)
  const canvas = createCanvas(raster.width, raster.height)
  const context = canvas.getContext("2d")
  context.fillStyle = "white"
  context.fillRect(0, 0, raster.width, raster.height)
  context.filter = `grayscale(1) blur(${blur}px)`
  context.translate(raster.width / 2, raster.height / 2)
  context.rotate((degrees * Math.PI) / 180)
  context.scale(scale, scale)
  context.drawImage(source, -raster.width / 2, -raster.height / 2)
  const result = rasterOf(canvas)
  return threshold === undefined ? result : blackAndWhite(result, threshold)
}

/** The image as a PNG file, to look at. */
export function png(raster: Raster): Uint8Array {
  const canvas = createCanvas(raster.width, raster.height)
  const pixels = new ImageData(new Uint8ClampedArray(raster.data), raster.width, raster.height)
  canvas.getContext("2d").putImageData(pixels, 0, 0)
  return canvas.toBuffer("image/png")
}

function rasterOf(canvas: Canvas): Raster {
  const { width, height } = canvas
  const { data } = canvas.getContext("2d").getImageData(0, 0, width, height)
  return { width, height, data: new Uint8ClampedArray(data) }
}

function blackAndWhite({ width, height, data }: Raster, threshold: number): Raster {
  const result = new Uint8ClampedArray(data.length)
  for (let at = 0; at < data.length; at += 4) {
    result.fill((data[at] ?? 0) < threshold ? 0 : 255, at, at + 3)
    result[at + 3] = 255
  }
  return { width, height, data: result }
}
