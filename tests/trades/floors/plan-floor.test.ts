import { describe, expect, it } from "vitest"
import { floorFacts, planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { board, floorTask, underlay } from "./fixture.ts"

const codes = (given: Parameters<typeof floorTask>[0]) =>
  planFloor(floorTask(given)).findings.map((finding) => [
    finding.code,
    finding.severity,
    finding.at.path.join("."),
  ])

const quiet = [
  ["floor-deck-not-measured", "note", "work.floors.deck"],
  ["floor-not-read", "note", "readings"],
  ["floor-not-read", "note", "readings"],
  ["floor-not-read", "note", "readings"],
  ["floor-not-read", "note", "readings"],
]

function sized(wide: number, deep: number) {
  return {
    outline: [wide, deep, wide, deep].map((length) => ({ length, turn: "right" })),
    diagonals: [{ from: 1, to: 3, length: Math.hypot(wide, deep) }],
  }
}

describe("what a floor tells other trades", () => {
  it("build-up 14 + 5, gap and finish of a floating floor", () => {
    expect(floorFacts(floorTask({}))).toMatchObject({ floorBuildUp: 19, floorGap: 10, floorFinish: "oak" })
  })

  it("what lies there now, where it stays or nothing was written", () => {
    expect(floorFacts({ ...floorTask({}), input: null })).toEqual({ floorBuildUp: 12, floorFinish: "carpet" })
    expect(floorFacts(floorTask({ input: { finish: "stays" } }))).toEqual({
      floorBuildUp: 12,
      floorFinish: "carpet",
    })
    expect(floorFacts(floorTask({ input: { finish: "by-tiler", buildUp: 13 } }))).toEqual({
      floorBuildUp: 13,
      floorFinish: "tile",
    })
  })
})

describe("refusals and warnings, each with its place", () => {
  it("a plain room has only notes", () => {
    expect(codes({})).toEqual(quiet)
  })

  it("a floor held along two lines is refused", () => {
    expect(codes({ input: { heldAlong: [1, 3] } })).toContainEqual([
      "floor-held-twice",
      "error",
      "work.floors.heldAlong",
    ])
    expect(codes({ input: { heldAlong: [1] } })).toEqual(quiet)
  })

  it("a floor 8,200 long or 6,100 wide wants a break", () => {
    const long = codes({ room: sized(8220, 3000) })
    expect(long.filter(([code]) => code === "floor-run-too-long")).toHaveLength(1)
    const wide = codes({ room: sized(6800, 6200) })
    expect(wide.filter(([code]) => code === "floor-run-too-long")).toHaveLength(1)
    const both = planFloor(floorTask({ room: sized(8200, 6200) })).findings
    expect(both.filter(({ code }) => code === "floor-run-too-long")).toHaveLength(2)
  })

  it("a skirting of 12 does not cover a gap of 10 as the floor dries; one of 24 does", () => {
    expect(codes({ facts: { skirting: { thickness: 12, height: 145 } } })).toContainEqual([
      "floor-gap-not-covered",
      "warning",
      "work.floors",
    ])
    expect(codes({ facts: { skirting: { thickness: 24, height: 145 } } })).toEqual(quiet)
  })

  it("a written gap below rule and calculation", () => {
    expect(codes({ input: { gap: 6 } })).toContainEqual(["floor-gap-too-small", "warning", "work.floors.gap"])
  })

  it("a strip of floor 30 wide inside its gaps is a row too thin", () => {
    const found = planFloor(floorTask({ room: sized(4000, 50) })).findings
    expect(found.map(({ code }) => code)).toContain("floor-row-too-thin")
    expect(found.find(({ code }) => code === "floor-row-too-thin")!.message).toContain("30 mm")
  })

  it("each refusal names the rule's figure, the room's figure and a cure", () => {
    const damp = { readings: [{ on: "2027-02-01", what: "deck", value: 14.5, instrument: "pin meter" }] }
    const cases = [
      { code: "floor-row-too-thin", given: { room: sized(4000, 32) }, figures: ["12 mm", "60 mm"] },
      { code: "floor-reading-out", given: { room: damp }, figures: ["14.5 %", "12 %"] },
      { code: "floor-run-too-long", given: { room: sized(8220, 3000) }, figures: ["8,186 mm", "8,000 mm"] },
      {
        code: "floor-gap-not-covered",
        given: { facts: { skirting: { thickness: 12, height: 145 } } },
        figures: ["12 mm", "18 mm"],
      },
      { code: "floor-held-twice", given: { input: { heldAlong: [1, 3] } }, figures: ["1 and 3", "one line"] },
    ]
    for (const { code, given, figures } of cases) {
      const finding = planFloor(floorTask(given)).findings.find((each) => each.code === code)
      const words = [finding?.message, finding?.expected].join(" ")
      for (const figure of figures) expect(words, code).toContain(figure)
      expect(finding?.mend?.length, code).toBeGreaterThan(20)
    }
  })

  it("nothing is left of a cupboard 18 deep", () => {
    const { plan, findings } = planFloor(floorTask({ room: sized(4000, 18) }))
    expect(plan).toBeNull()
    expect(findings.map(({ code }) => code)).toEqual(["floor-nothing-to-lay"])
  })

  it("foil over a ventilated timber floor is asked about", () => {
    const foil = ["floor-foil-over-ventilated", "warning", "work.floors.underlay"]
    expect(codes({ storey: { base: "ventilated-timber" } })).toContainEqual(foil)
    const breathing = { ...underlay, foil: false }
    expect(codes({ storey: { base: "ventilated-timber" }, products: [board, breathing] })).not.toContainEqual(
      foil,
    )
  })

  it("packs too heavy and boards too long to carry", () => {
    const big = { ...board, packMass: 31, length: 3600 }
    const found = codes({ products: [big, underlay] }).filter(([code]) => code === "floor-too-much-to-carry")
    expect(found).toHaveLength(2)
  })

  it("products, walls and holes that are not there", () => {
    expect(codes({ products: [] }).map(([code]) => code)).toEqual(["floor-no-product", "floor-no-product"])
    expect(codes({ input: { along: 9 } })).toContainEqual([
      "floor-no-such-wall",
      "error",
      "work.floors.along",
    ])
    expect(codes({ input: { into: ["press"] } })).toContainEqual([
      "floor-no-such-hole",
      "error",
      "work.floors.into.0",
    ])
    expect(codes({ input: { along: 1, firstRowFrom: 2 } })).toContainEqual([
      "floor-first-row-not-along",
      "error",
      "work.floors.firstRowFrom",
    ])
  })
})
