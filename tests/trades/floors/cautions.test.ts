import { describe, expect, it } from "vitest"
import { floorCautions } from "../../../src/trades/floors/cautions.ts"

const ids = (work: Partial<Parameters<typeof floorCautions>[0]>) =>
  floorCautions({ laysBoards: false, screwsDeck: false, oils: false, builtBefore2000: false, ...work }).map(
    (each) => each.id,
  )

describe("cautions", () => {
  it("follow the work that is done", () => {
    expect(ids({})).toEqual([])
    expect(ids({ oils: true })).toEqual(["floor-oily-rags", "floor-solvents"])
    expect(ids({ screwsDeck: true })).toEqual(["floor-hidden"])
    expect(ids({ screwsDeck: true, builtBefore2000: true })).toContain("floor-old-materials")
    expect(ids({ laysBoards: true })).toEqual(["floor-hidden", "floor-dust", "floor-saw", "floor-packs"])
  })

  it("each says why, and to whom it defers", () => {
    for (const caution of floorCautions({
      laysBoards: true,
      screwsDeck: true,
      oils: true,
      builtBefore2000: true,
    })) {
      expect([caution.text, caution.why, caution.defer].every((text) => text.length > 10)).toBe(true)
    }
  })
})
