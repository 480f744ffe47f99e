import type { PDFDocument } from "pdf-lib"
import { PDFName, PDFString } from "pdf-lib"

/**
 * Says which colours the document means: sRGB, by a profile computed here
 * (ISO 19005-3:2012, 6.2.3 and 6.2.4.3: device colours need an output intent).
 */
export function addOutputIntent(pdf: PDFDocument): void {
  const { context } = pdf
  const profile = context.register(context.flateStream(srgbProfile(), { N: 3 }))
  const intent = context.obj({
    Type: "OutputIntent",
    S: "GTS_PDFA1",
    OutputConditionIdentifier: PDFString.of("sRGB"),
    Info: PDFString.of("sRGB IEC 61966-2-1"),
    DestOutputProfile: profile,
  })
  pdf.catalog.set(PDFName.of("OutputIntents"), context.obj([context.register(intent)]))
}

type Row = readonly [number, number, number]
type Matrix = readonly [Row, Row, Row]

/** Chromaticities of the three primaries and the white D65 of sRGB (IEC 61966-2-1:1999, 4.1; the same as ITU-R BT.709). */
const primaries = {
  red: [0.64, 0.33],
  green: [0.3, 0.6],
  blue: [0.15, 0.06],
  white: [0.3127, 0.329],
} as const

/** White of the profile connection space, D50 (ICC.1:2010, 7.2.16). */
const d50: Row = [0.9642, 1, 0.8249]

/** The linear Bradford transform to cone responses (ICC.1:2010, annex E). */
const bradford: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
]

/**
 * An ICC version 4 display profile of sRGB (ICC.1:2010, 8.3 and 9.2): three colorants adapted to D50, the sRGB curve as a
 * parametric curve of type 3, and nothing copied from any file, so that no licence is involved.
 */
export function srgbProfile(): Uint8Array {
  const white = xyz(primaries.white)
  const adaptation = adaptationFrom(white)
  const colorants = multiply(adaptation, colorantMatrix(white))
  const column = (index: 0 | 1 | 2): Uint8Array =>
    xyzTag([colorants[0][index], colorants[1][index], colorants[2][index]])
  const curve = curveTag()
  const tags: [string, Uint8Array][] = [
    ["desc", textTag("sRGB")],
    ["cprt", textTag("No rights claimed")],
    ["wtpt", xyzTag(d50)],
    ["chad", concatenated([ascii("sf32"), words([0]), words(adaptation.flat().map(s15Fixed16))])],
    ["rXYZ", column(0)],
    ["gXYZ", column(1)],
    ["bXYZ", column(2)],
    ["rTRC", curve],
    ["gTRC", curve],
    ["bTRC", curve],
  ]
  return assembled(tags)
}

function xyz([x, y]: readonly [number, number]): Row {
  return [x / y, 1, (1 - x - y) / y]
}

function colorantMatrix(white: Row): Matrix {
  const [red, green, blue] = [xyz(primaries.red), xyz(primaries.green), xyz(primaries.blue)]
  const columns: Matrix = [
    [red[0], green[0], blue[0]],
    [red[1], green[1], blue[1]],
    [red[2], green[2], blue[2]],
  ]
  const scale = applied(inverse(columns), white)
  return multiply(columns, diagonal(scale))
}

function adaptationFrom(white: Row): Matrix {
  const from = applied(bradford, white)
  const to = applied(bradford, d50)
  const ratio: Row = [to[0] / from[0], to[1] / from[1], to[2] / from[2]]
  return multiply(inverse(bradford), multiply(diagonal(ratio), bradford))
}

function applied(matrix: Matrix, [x, y, z]: Row): Row {
  const row = (r: Row): number => r[0] * x + r[1] * y + r[2] * z
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])]
}

function multiply(left: Matrix, right: Matrix): Matrix {
  const columnOf = (index: 0 | 1 | 2): Row =>
    applied(left, [right[0][index], right[1][index], right[2][index]])
  return transposed([columnOf(0), columnOf(1), columnOf(2)])
}

function transposed([a, b, c]: Matrix): Matrix {
  return [
    [a[0], b[0], c[0]],
    [a[1], b[1], c[1]],
    [a[2], b[2], c[2]],
  ]
}

function diagonal([x, y, z]: Row): Matrix {
  return [
    [x, 0, 0],
    [0, y, 0],
    [0, 0, z],
  ]
}

/** Rows of the inverse transposed are the cross products of the rows, over the determinant. */
function inverse([a, b, c]: Matrix): Matrix {
  const over = dot(a, cross(b, c))
  const part = (row: Row): Row => [row[0] / over, row[1] / over, row[2] / over]
  return transposed([part(cross(b, c)), part(cross(c, a)), part(cross(a, b))])
}

function cross(a: Row, b: Row): Row {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

function dot(a: Row, b: Row): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/** Parameters g a b c d of Y = ((X + 0.055) / 1.055)^2.4 above 0.04045, X / 12.92 below (IEC 61966-2-1:1999, 5.2). */
function curveTag(): Uint8Array {
  const parameters = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045]
  return concatenated([ascii("para"), words([0, 3 << 16]), words(parameters.map(s15Fixed16))])
}

function xyzTag(values: Row): Uint8Array {
  return concatenated([ascii("XYZ "), words([0]), words(values.map(s15Fixed16))])
}

function textTag(text: string): Uint8Array {
  const utf16 = new Uint8Array([...text].flatMap((character) => [0, character.charCodeAt(0)]))
  const head = [0, 1, 12, 0x656e4742, utf16.length, 28]
  return concatenated([ascii("mluc"), words(head), utf16])
}

function s15Fixed16(value: number): number {
  return Math.round(value * 65536)
}

function words(values: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(values.length * 4)
  const view = new DataView(bytes.buffer)
  for (const [index, value] of values.entries()) view.setInt32(index * 4, value | 0)
  return bytes
}

function ascii(text: string): Uint8Array {
  return new TextEncoder().encode(text)
}

function concatenated(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    bytes.set(part, at)
    at += part.length
  }
  return bytes
}

/** Header of 128 bytes, tag table, then each different tag once, on boundaries of four bytes. */
function assembled(tags: readonly [string, Uint8Array][]): Uint8Array {
  const headerLength = 128
  const places = new Map<Uint8Array, number>()
  const bodies: Uint8Array[] = []
  let end = headerLength + 4 + 12 * tags.length
  for (const [, body] of tags) {
    if (places.has(body)) continue
    places.set(body, end)
    const padded = concatenated([body, new Uint8Array((4 - (body.length % 4)) % 4)])
    bodies.push(padded)
    end += padded.length
  }
  const table = tags.map(([name, body]) =>
    concatenated([ascii(name), words([places.get(body) ?? 0, body.length])]),
  )
  return concatenated([header(end), words([tags.length]), ...table, ...bodies])
}

/** ICC.1:2010, 7.2; the creation date is that of the standard's year, as a profile must state one. */
function header(size: number): Uint8Array {
  const bytes = new Uint8Array(128)
  const put = (at: number, part: Uint8Array): void => bytes.set(part, at)
  put(0, words([size, 0, 0x04200000]))
  put(12, ascii("mntrRGB XYZ "))
  put(24, new Uint8Array([0x07, 0xda, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0]))
  put(36, ascii("acsp"))
  put(68, words(d50.map(s15Fixed16)))
  return bytes
}
