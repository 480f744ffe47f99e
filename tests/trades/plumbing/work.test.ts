import { describe, expect, it } from "vitest"
import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import { type PlumbingInputs, plumbingInputs } from "../../../src/trades/plumbing/inputs.ts"
import { holeFor, hungRadiators } from "../../../src/trades/plumbing/radiators.ts"
import { plumbingRules } from "../../../src/trades/plumbing/rules.ts"
import { plumbingSheets } from "../../../src/trades/plumbing/sheet.ts"
import { plumbingWork } from "../../../src/trades/plumbing/work.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import type { RoomFacts, Task } from "../../../src/trades/trade.ts"
import { HOLES } from "../../facts/services.ts"
import { jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"
import { badTables } from "../../fixtures/tables.ts"

const rules = rulesOf([...plumbingRules, ...dryingRules])

function task(
  written: Record<string, unknown>,
  facts: RoomFacts = { floorBuildUp: 19, floorGap: 12 },
  given = {},
): Task<PlumbingInputs> {
  const room = surveyed(given, undefined, rules)
  return {
    job: jobFacts({ rooms: [room], rules }),
    room,
    input: plumbingInputs.parse(written),
    at: { file: room.file, path: ["work", "plumbing"] },
    facts,
  }
}

const radiator = { wall: 2, fromLeft: 900, width: 1000, height: 600 }
const wares = [
  { kind: "wc", wall: 2, fromLeft: 200, width: 380 },
  { kind: "basin", wall: 2, fromLeft: 900, width: 550, rim: 850 },
]

describe("pipes through the floor", () => {
  it.each(HOLES)("$what: hole $value ($source)", ({ pipe, gap, value }) => {
    expect(holeFor(pipe, gap)).toBe(value)
  })

  it("a radiator by hand: foot 150, top 750, pipes 40 beyond both ends, hole 15 + 2 × 12 = 39", () => {
    const [hung] = hungRadiators(task({ radiators: [radiator] }))
    expect(hung).toMatchObject({ foot: 150, top: 750, tails: [860, 1940], tailsOff: 55, hole: 39, gap: 12 })
  })

  it("without a floor's own gap the rule's is taken; pipes as written go first", () => {
    const [hung] = hungRadiators(task({ radiators: [{ ...radiator, tails: [1350, 1400] }] }, {}))
    expect(hung).toMatchObject({ hole: 35, tails: [1350, 1400] })
  })
})

describe("order of plumbing", () => {
  const { steps } = plumbingWork(task({ radiators: [radiator], sanitaryware: wares }))
  const at = (key: string) => steps.find((step) => step.key === `plumbing/R1/${key}`)!

  it("radiators after the white behind them and before wood comes in; the room must be warm first", () => {
    expect(stageRank(at("radiators").stage)).toBeGreaterThan(stageRank("white"))
    expect(stageRank(at("heating-on").stage)).toBeLessThan(stageRank("acclimatise"))
    expect(at("heating-on").after).toEqual([at("radiators").key])
    expect(at("heating-on").gate!.hours).toBe(72)
    expect(at("radiators").hold).toMatch(/White behind/)
  })

  it("tile, cure, sanitaryware, seal: fixed after the tile's stage, sealed after it is fixed, with the sealant's cure", () => {
    expect(stageRank(at("sanitaryware").stage)).toBeGreaterThan(stageRank("tile"))
    expect(at("seal").after).toEqual([at("sanitaryware").key])
    // A 6 mm bead at 2.5 mm a day is 57.6 h at 20 °C; at 18 °C 1.1487 times: 66.2, up to 67.
    expect(at("seal").gate).toMatchObject({ hours: 67, forbids: ["wet"] })
  })

  it("a room without radiators has no heating step; an empty room nothing", () => {
    expect(plumbingWork(task({ sanitaryware: wares })).steps.map((step) => step.stage)).toEqual([
      "prepare",
      "second-fix",
      "second-fix",
      "covers-off",
    ])
    expect(plumbingWork(task({})).steps).toEqual([])
  })

  it("counts radiators, collars and sanitaryware", () => {
    const counts = plumbingWork(task({ radiators: [radiator], sanitaryware: wares })).quantities.map(
      (each) => [each.what, each.net],
    )
    expect(counts).toEqual([
      ["Radiator 1000 × 600", 1],
      ["Pipe collars at the floor", 2],
      ["WC", 1],
      ["basin", 1],
    ])
  })
})

describe("findings of plumbing", () => {
  const codes = (written: Record<string, unknown>, given = {}) =>
    plumbingWork(task(written, {}, given)).findings.map((each) => each.code)

  it("what fits has none", () => {
    expect(codes({ radiators: [radiator], sanitaryware: wares })).toEqual([])
  })

  it("a radiator off its wall, on no wall, higher than a dwarf wall", () => {
    expect(codes({ radiators: [{ ...radiator, width: 2100 }] })).toEqual(["radiator-off-wall"])
    expect(codes({ radiators: [{ ...radiator, wall: 8 }] })).toEqual(["no-such-wall"])
    const ceiling = { heights: [2400], slopes: [{ wall: 2, dwarf: 700, pitch: 45 }] }
    expect(codes({ radiators: [radiator] }, { ceiling })).toEqual(["radiator-above-wall"])
  })

  it("sanitaryware off its wall", () => {
    expect(codes({ sanitaryware: [{ kind: "bath", wall: 2, fromLeft: 1800, width: 1700 }] })).toEqual([
      "ware-off-wall",
    ])
  })
})

describe("plumbing on paper", () => {
  it("tables fit their columns; the wall is drawn; the pressure test has boxes", () => {
    const given = task({ radiators: [radiator], sanitaryware: wares })
    const work = plumbingWork(given)
    const [sheet] = plumbingSheets(given, work)
    expect(badTables(sheet!)).toEqual([])
    expect(sheet!.blocks.some((block) => block.kind === "drawing")).toBe(true)
    expect(JSON.stringify(sheet)).toMatch(/15 \+ 2 × 12 = 39/)
    for (const id of work.rests) expect(rules.entry(id).id).toBe(id)
  })
})
