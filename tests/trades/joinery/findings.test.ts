import { describe, expect, it } from "vitest"
import { joineryWork } from "../../../src/trades/joinery/work.ts"
import { joineryTask, moulding } from "./task.ts"

const found = (...given: Parameters<typeof joineryTask>) =>
  joineryWork(joineryTask(...given)).findings.map(({ code, at }) => [code, at.path.slice(2).join(".")])

describe("findings of a room's joinery", () => {
  it("are none in a room that is right", () => {
    expect(found()).toEqual([])
  })

  it("name a leg that reaches past its wall, and by how much", () => {
    const doors = [{ door: "D1", wall: 1, fromLeft: 57 }]
    const [finding] = joineryWork(joineryTask({}, { room: { doors } })).findings
    // the leg stands 6 + 69 outside the lining: 57 - 75 = -18
    expect(finding).toMatchObject({ code: "architrave-too-wide", severity: "warning" })
    expect(finding!.message).toContain("D1, wall 1")
    expect(finding!.message).toContain("18 mm")
  })

  // The leg's outer edge stands 75 from the opening; the scribe of the wall's left end takes 18 of what is left.
  it.each([
    { fromLeft: 94, found: "only 1 mm are left" },
    { fromLeft: 90, found: "nothing is left" },
  ])(
    "note a stretch of skirting too short to saw: doorway $fromLeft from the corner",
    ({ fromLeft, found }) => {
      const doors = [{ door: "D1", wall: 1, fromLeft }]
      const { findings, pieces } = joineryWork(joineryTask({}, { room: { doors } }))
      expect(findings.map(({ code, severity }) => [code, severity])).toEqual([["skirting-too-short", "note"]])
      expect(findings[0]!.message).toContain(found)
      const onWall = pieces.filter(({ what, wall }) => what.startsWith("skirting") && wall === 1)
      expect(onWall.map(({ mark }) => mark)).toEqual(["R1-1-S1"])
      expect(onWall[0]!.left.as).toBe("against-architrave")
    },
  )

  it("saw a stretch of 10 mm and more", () => {
    const { findings, pieces } = joineryWork(
      joineryTask({}, { room: { doors: [{ door: "D1", wall: 1, fromLeft: 103 }] } }),
    )
    expect(findings).toEqual([])
    expect(pieces.find(({ mark }) => mark === "R1-1-S1")?.length).toBe(10)
  })

  it("name two legs that meet", () => {
    const doors = [
      { door: "D1", wall: 1, fromLeft: 500 },
      { door: "D2", wall: 1, fromLeft: 500 + 768 + 140 },
    ]
    // the gap of 140 holds two of 75 but for 10
    const [finding] = joineryWork(joineryTask({}, { room: { doors } })).findings
    expect(finding).toMatchObject({ code: "architrave-too-wide" })
    expect(finding!.message).toContain("10 mm")
  })

  it("find a skirting thicker than the architrave, unless blocks or the foreman take it", () => {
    const products = [moulding({ id: "skirting", thickness: 21 }), moulding({ id: "architrave", width: 69 })]
    expect(found({}, { products })).toEqual([["skirting-thicker-than-architrave", ""]])
    expect(found({ plinths: true }, { products })).toEqual([])
    expect(found({ standsProud: true }, { products })).toEqual([])
  })

  it("name what is written but is not there", () => {
    expect(
      found({
        trims: [{ opening: "RW9" }],
        threshold: [{ door: "D9", profile: "flat" }],
        stairs: [{ stair: "S9", parts: [{ what: "handrail", product: "none", lengths: [900] }] }],
        made: [{ what: "shelf", product: "none", lengths: [400] }],
        sawn: ["R1-9-S1"],
      }),
    ).toEqual([
      ["joinery-unknown-name", "trims.0.opening"],
      ["joinery-unknown-name", "threshold.0.door"],
      ["joinery-unknown-name", "stairs.0.stair"],
      ["joinery-unknown-name", "sawn.0"],
      ["joinery-unknown-name", "made.0.product"],
      ["joinery-unknown-name", "stairs.0.parts.0.product"],
    ])
  })

  it("ask for a product where none is chosen", () => {
    expect(found({}, { products: [] }).map(([code]) => code)).toEqual([
      "no-product-chosen",
      "no-product-chosen",
    ])
  })
})
