import { describe, expect, it } from "vitest"

import { Fault } from "../../../src/kernels/fault.ts"
import { withArtifacts } from "../../../src/press/pdf/artifacts.ts"

const text = "BT\n/F4 13 Tf\n1 0 0 -1 10 10 Tm\n<0016> Tj\nET\n"
const tagged = `/P <</MCID 0 >>BDC\n${text}EMC\n`

describe("withArtifacts", () => {
  it("wraps text outside all marks", () => {
    expect(withArtifacts(`q\n${text}Q\n`)).toBe(`q\n/Artifact BMC\n${text}Q\nEMC\n`)
  })

  it("leaves marked text as it is", () => {
    expect(withArtifacts(`q\n${tagged}Q\n`)).toBe(`q\n${tagged}Q\n`)
  })

  it("closes before a mark opens, and opens again after it", () => {
    expect(withArtifacts(`${text}${tagged}${text}`)).toBe(
      `/Artifact BMC\n${text}EMC\n${tagged}/Artifact BMC\n${text}EMC\n`,
    )
  })

  it("puts no mark inside a path", () => {
    expect(withArtifacts("1 1 9 9 re\n2 2 3 3 re\nf\n")).toBe(
      "/Artifact BMC\n1 1 9 9 re\n2 2 3 3 re\nf\nEMC\n",
    )
  })

  it("lets a path be that only clips", () => {
    expect(withArtifacts("0 0 9 9 re\nW* n\n")).toBe("0 0 9 9 re\nW* n\n")
  })

  it("counts marks within marks", () => {
    const nested = `/P <</MCID 0 >>BDC\n/Span <</MCID 1 >>BDC\n${text}EMC\n${text}EMC\n`
    expect(withArtifacts(nested)).toBe(nested)
  })

  it.each([
    ["a line it does not know", "1 2 3 frobnicate\n"],
    ["a picture inside the stream, which is not looked into", "BI\n/W 1 /H 1\nID x\nEI\n"],
    ["a mark left open", "/P <</MCID 0 >>BDC\n"],
    ["a path left open", "0 0 9 9 re\n"],
  ])("is a fault for %s", (_what, content) => {
    expect(() => withArtifacts(content)).toThrow(Fault)
  })

  it("marks only the stray signs of a text object that has marks of its own inside it", () => {
    const content = "BT\n<0001> Tj\n/P <</MCID 0 >>BDC\n<0016> Tj\nEMC\nET\n"
    expect(withArtifacts(content)).toBe(
      "BT\n/Artifact BMC\n<0001> Tj\nEMC\n/P <</MCID 0 >>BDC\n<0016> Tj\nEMC\nET\n",
    )
  })
})
