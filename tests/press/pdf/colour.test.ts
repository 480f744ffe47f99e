import { PDFDocument } from "pdf-lib"
import { describe, expect, it } from "vitest"

import { addOutputIntent, srgbProfile } from "../../../src/press/pdf/colour.ts"
import { srgbColorants } from "../../facts/paper.ts"
import { dictsIn, look, plain } from "../inspect/look.ts"

const profile = Buffer.from(srgbProfile())

/** The body of a tag, looked up in the profile's own table. */
function tag(name: string): Buffer {
  const count = profile.readUInt32BE(128)
  for (let index = 0; index < count; index += 1) {
    const at = 132 + 12 * index
    if (profile.toString("latin1", at, at + 4) !== name) continue
    const offset = profile.readUInt32BE(at + 4)
    return profile.subarray(offset, offset + profile.readUInt32BE(at + 8))
  }
  throw new Error(`no tag ${name}`)
}

function fixedAt(body: Buffer, index: number, start = 8): number {
  return body.readInt32BE(start + 4 * index) / 65536
}

describe("srgbProfile", () => {
  it("states its own length, version 4, a display profile from RGB to XYZ", () => {
    expect(profile.readUInt32BE(0)).toBe(profile.length)
    expect(profile[8]).toBe(4)
    expect(profile.toString("latin1", 12, 24)).toBe("mntrRGB XYZ ")
    expect(profile.toString("latin1", 36, 40)).toBe("acsp")
  })

  it("has every tag such a profile needs, within its bounds and on boundaries of four", () => {
    for (const name of ["desc", "cprt", "wtpt", "chad", "rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC"]) {
      expect(tag(name).byteOffset % 4, name).toBe(profile.byteOffset % 4)
      expect(tag(name).length, name).toBeGreaterThan(12)
    }
  })

  it("has the published colorants to four decimals", () => {
    for (const [column, name] of ["rXYZ", "gXYZ", "bXYZ"].entries()) {
      for (const row of [0, 1, 2] as const) {
        const published = srgbColorants[row][column as 0 | 1 | 2]
        expect(Math.abs(fixedAt(tag(name), row) - published), `${name} ${row}`).toBeLessThan(0.0002)
      }
    }
  })

  it("adds up to its white: red, green and blue at full make D50", () => {
    for (const row of [0, 1, 2]) {
      const sum = ["rXYZ", "gXYZ", "bXYZ"].reduce((total, name) => total + fixedAt(tag(name), row), 0)
      expect(sum).toBeCloseTo(fixedAt(tag("wtpt"), row), 3)
    }
  })

  it("has a curve that is continuous, and takes middle grey (119 of 255) to 18.4 % light", () => {
    const [gamma, a, b, c, d] = [0, 1, 2, 3, 4].map((index) => fixedAt(tag("rTRC"), index, 12))
    const above = (x: number): number => ((a ?? 0) * x + (b ?? 0)) ** (gamma ?? 0)
    expect(above(d ?? 0)).toBeCloseTo((c ?? 0) * (d ?? 0), 4)
    expect(above(119 / 255)).toBeCloseTo(0.184, 3)
    expect(above(1)).toBeCloseTo(1, 4)
  })
})

it("stands in the document as its output intent", async () => {
  const pdf = await PDFDocument.create()
  addOutputIntent(pdf)
  const [intent] = dictsIn(look(pdf.catalog, "OutputIntents"))
  expect(intent && plain(look(intent, "S"))).toBe("GTS_PDFA1")
})
