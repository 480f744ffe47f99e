import { describe, expect, it } from "vitest"
import { product } from "../../../src/intake/schema/products.ts"
import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import { type TilingInputs, tilingInputs } from "../../../src/trades/tiling/inputs.ts"
import { meetings, tiledBuildUp } from "../../../src/trades/tiling/levels.ts"
import { groutPerM2 } from "../../../src/trades/tiling/quantities.ts"
import { tilingRules } from "../../../src/trades/tiling/rules.ts"
import { acrossText, thresholdText, tilingSheets } from "../../../src/trades/tiling/sheet.ts"
import { tilingFacts, tilingWork } from "../../../src/trades/tiling/work.ts"
import type { Task } from "../../../src/trades/trade.ts"
import { ADHESIVE, GROUT } from "../../facts/tiling.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"
import { badTables } from "../../fixtures/tables.ts"

const rules = rulesOf([...tilingRules, ...dryingRules])
const sold = { supplier: "tile merchant", lead: 5, price: "20.00", perBox: 10, boxMass: 14, kind: "tile" }
const products = [
  product.parse({ ...sold, id: "wall", name: "Wall tile", width: 248, height: 398, thickness: 8 }),
  product.parse({ ...sold, id: "floor", name: "Floor tile", width: 300, height: 300, thickness: 10 }),
]

/** A wash room 2,310 by 1,540, 2,290 high, taped from the deck; door D1 in wall 1. */
function task(written: Record<string, unknown>, facts = { floorBuildUp: 13 }): Task<TilingInputs> {
  const house = houseOf({
    doors: [
      {
        id: "D1",
        name: "door",
        between: ["R1", "A1"],
        swingsInto: "R1",
        lining: "new",
        lengthsTo: "lining",
        heightsFrom: "deck",
        widths: [768],
        heights: [1990],
        wall: 120,
      },
    ],
  })
  const room = surveyed(
    {
      use: "bathroom",
      outline: [2310, 1540, 2310, 1540].map((length) => ({ length, turn: "right" })),
      diagonals: [],
      ceiling: { heights: [2290] },
      doors: [{ door: "D1", wall: 1, fromLeft: 120 }],
    },
    house,
    rules,
  )
  const passed = { A1: { floorBuildUp: 19, floorFinish: "oak" } }
  return {
    job: jobFacts({
      rooms: [room],
      house,
      rules,
      products,
      chosen: { wallTile: "wall", floorTile: "floor" },
      passed,
    }),
    room,
    input: tilingInputs.parse(written),
    at: { file: room.file, path: ["work", "tiling"] },
    facts,
  }
}

describe("grout and adhesive", () => {
  it.each(GROUT)("$what: $value kg a m2 ($source)", ({ joint, value, ...tile }) => {
    expect(groutPerM2(tile, joint, rules.value("tile-grout-density"))).toBeCloseTo(value, 9)
  })

  it.each(ADHESIVE)("$rule lies from $from to $to kg a m2 ($source)", ({ rule, from, to }) => {
    expect(rules.value(rule)).toBeGreaterThanOrEqual(from)
    expect(rules.value(rule)).toBeLessThanOrEqual(to)
  })
})

describe("a tiled wall by hand", () => {
  // Wall 2, 1,540 long, tiled 2,000 high; tile 248 × 398 with joints of 3, open joints of 5 at both corners and the floor.
  // Across: 1,540 - 10 = 1,530. Joint on the centre: (1,530 - 3) / 2 = 763.5; 3 × 251 = 753; left 10.5.
  // Tile on the centre: (1,530 - 248) / 2 - 3 = 638; 2 × 251 = 502; left 136. So 5 whole, 136 left and right: 7.
  // Up: 2,000 - 5 = 1,995; 4 × 401 = 1,604; left 391: 4 whole rows from the top, 391 at the foot: 5 rows.
  // Area 1.540 × 2.000 = 3.080 m2. Tiles 7 × 5 = 35 of 0.098704 = 3.45464; with a tenth 3.800104 m2.
  // Adhesive 3.08 × 2.5 = 7.70 kg. Grout: 646 / 98,704 × 8 × 3 × 1.6 = 0.251321 kg a m2: 0.774068 kg.
  // Sealant: 1.540 + 2 × 2.000 = 5.54 m.
  const given = task({ walls: [{ wall: 2, top: 2000 }] })
  const work = tilingWork(given)

  it("columns and rows", () => {
    expect(work.results.fields).toEqual([
      {
        name: "Wall 2",
        width: 1540,
        height: 2000,
        area: 3.08,
        across: { whole: 5, first: 136, last: 136, from: "a tile on the centre", count: 7 },
        up: { whole: 4, first: 391, last: null, from: "a whole tile last", count: 5 },
        tiles: 35,
      },
    ])
  })

  it("tiles, adhesive, grout, sealant", () => {
    const by = (what: string) => work.quantities.find((each) => each.what.startsWith(what))!
    expect(by("Wall tile").net).toBeCloseTo(3.08, 9)
    expect(by("Wall tile").gross).toBeCloseTo(3.800104, 6)
    expect(by("Tile adhesive").net).toBeCloseTo(7.7, 9)
    expect(by("Grout").net).toBeCloseTo(0.774068, 5)
    expect(by("Sealant").net).toBeCloseTo(5.54, 9)
  })

  it("passes the tiled wall on to the decorator, and no floor", () => {
    const facts = tilingFacts(given)
    expect(facts.tiledWall).toBeCloseTo(3.08, 9)
    expect(facts).not.toHaveProperty("floorBuildUp")
  })

  it("the doorway is taken off: wall 1 less 0.768 by 1,990 less the floor of 13", () => {
    // 2.310 × 2.000 = 4.620; doorway over the finished floor 0.768 × 1.977 = 1.518336.
    expect(tilingFacts(task({ walls: [{ wall: 1, top: 2000 }] })).tiledWall).toBeCloseTo(3.101664, 6)
  })
})

describe("a tiled floor", () => {
  it("is tile, bed and board thick, or as written; meets oak with a step of 6", () => {
    const given = task({ floor: true })
    expect(tiledBuildUp(given)).toBe(13)
    expect(tiledBuildUp(task({ floor: true, board: 6 }))).toBe(19)
    expect(tilingFacts(given)).toEqual({ floorFinish: "tile", floorBuildUp: 13 })
    expect(meetings(given)).toEqual([{ door: "D1", room: "A1", finish: "oak", tile: 13, other: 19, step: 6 }])
    expect(thresholdText({ step: 6, finish: "oak" })).toMatch(/6 mm step: the oak is higher/)
    expect(thresholdText({ step: 0, finish: "oak" })).toMatch(/Level/)
  })
})

describe("order of tiling", () => {
  const { steps } = tilingWork(task({ floor: true, walls: [{ wall: 2, top: 2000 }] }))

  it("lay, cure, grout, cure; seal after the sanitaryware", () => {
    expect(steps.map((step) => step.key.split("/")[2])).toEqual(["prepare", "lay", "grout", "seal"])
    expect(steps[2]!.after).toEqual([steps[1]!.key])
    expect(steps[1]!.gate!.hours).toBeGreaterThanOrEqual(24)
    expect(steps[2]!.gate!.forbids).toContain("walk")
    expect(stageRank(steps[3]!.stage)).toBeGreaterThan(stageRank("second-fix"))
    expect(steps[3]!.after).toContain("plumbing/R1/seal")
  })

  it("in freezing air nothing is laid: errors, no hours", () => {
    const given = task({ floor: true })
    const cold = { ...given, job: { ...given.job, climate: { ...given.job.climate, temperature: 3 } } }
    const work = tilingWork(cold)
    expect(work.findings.map((each) => each.code)).toEqual([
      "air-outside-range",
      "air-outside-range",
      "air-outside-range",
    ])
    expect(work.steps.every((step) => step.gate === undefined)).toBe(true)
  })
})

describe("findings of tiling", () => {
  const codes = (written: Record<string, unknown>) =>
    tilingWork(task(written)).findings.map((each) => each.code)

  it("no such wall, off the wall, above the wall, a narrow cut", () => {
    expect(codes({ walls: [{ wall: 9, top: 2000 }] })).toEqual(["no-such-wall"])
    expect(codes({ walls: [{ wall: 2, from: 100, to: 1700, top: 2000 }] })).toEqual(["tiling-off-wall"])
    expect(codes({ walls: [{ wall: 2, top: 2300 }] })).toContain("tiling-above-wall")
    // 1,700 - 5 = 1,695 less 4 × 401 leaves a row of 91.
    expect(codes({ walls: [{ wall: 2, top: 1700 }] })).toEqual(["narrow-cut"])
  })

  it("no tile chosen", () => {
    const given = task({ walls: [{ wall: 2, top: 2000 }] })
    const bare = { ...given, job: { ...given.job, chosen: () => undefined } }
    expect(tilingWork(bare).findings.map((each) => each.code)).toEqual(["no-tile-chosen"])
  })
})

describe("tiling on paper", () => {
  it("tables fit their columns, a wall is drawn with its rows, levels are told", () => {
    const given = task({ floor: true, walls: [{ wall: 2, top: 2000 }] })
    const work = tilingWork(given)
    const [sheet] = tilingSheets(given, work)
    expect(badTables(sheet!)).toEqual([])
    const drawing = sheet!.blocks.find((block) => block.kind === "drawing")
    // 6 joints across, 4 up, the floor line.
    expect(
      drawing?.kind === "drawing"
        ? drawing.drawing.shapes.filter((shape) => shape.kind === "line").length
        : 0,
    ).toBe(11)
    for (const id of work.rests) expect(rules.entry(id).id).toBe(id)
  })

  it("says cuts in words", () => {
    expect(acrossText({ whole: 5, first: 136, last: 136, from: "a tile on the centre", count: 7 })).toBe(
      "5 whole, cut 136 left and right, from a tile on the centre",
    )
    expect(acrossText({ whole: 0, first: 120, last: null, from: "one tile", count: 1 })).toBe("1 cut to 120")
  })
})
