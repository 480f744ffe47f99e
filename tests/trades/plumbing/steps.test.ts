import { describe, expect, it } from "vitest"
import { elapsedHours } from "../../../src/trades/plumbing/steps.ts"
import { plumbingWork } from "../../../src/trades/plumbing/work.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import { radiator, task, wares } from "./rooms.ts"

describe("order of plumbing", () => {
  const { steps } = plumbingWork(task({ radiators: [radiator], sanitaryware: wares }))
  const at = (key: string) => steps.find((step) => step.key === `plumbing/R1/${key}`)!

  it("radiators after the white behind them and before wood comes in; the room must be warm first", () => {
    expect(stageRank(at("radiators").stage)).toBeGreaterThan(stageRank("white"))
    expect(stageRank(at("heating-on").stage)).toBeLessThan(stageRank("acclimatise"))
    expect(at("heating-on").after).toEqual([at("radiators").key])
    // 10 working days before boards come in are two weeks: 14 × 24.
    expect(at("heating-on").gate!.hours).toBe(336)
    expect(at("radiators").hold).toMatch(/White behind/)
  })

  it("so many working days are counted with the free days between them", () => {
    expect([1, 3, 5, 10].map(elapsedHours)).toEqual([48, 120, 168, 336])
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
