import { describe, expect, it } from "vitest"
import { electricsSheets } from "../../../src/trades/electrics/sheet.ts"
import { electricsWork } from "../../../src/trades/electrics/work.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import { bedroom, task } from "./bedroom.ts"

describe("visits of the electrician", () => {
  it("before the first coat, to fit, to ease, to close up: in the order of the house", () => {
    const { steps } = electricsWork(task(bedroom))
    expect(steps.map((step) => step.key)).toEqual(
      ["first-coat", "fit", "ease", "close-up"].map((key) => `electrics/R1/${key}`),
    )
    const ranks = steps.map((step) => stageRank(step.stage))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    expect(steps.map((step) => step.stage)).toEqual(["prepare", "second-fix", "last-coat", "covers-off"])
  })

  it("says who isolates, and that no circuit is designed", () => {
    const text = JSON.stringify(
      electricsWork(task({ ...bedroom, isolatedBy: "the licensed electrician" })).cautions,
    )
    expect(text).toMatch(/Only the licensed electrician isolates/)
    expect(text).toMatch(/electrician's design/)
  })

  it("a room without points has no work and no sheet", () => {
    const empty = task({})
    expect(electricsWork(empty).steps).toEqual([])
    expect(electricsSheets(empty, electricsWork(empty))).toEqual([])
  })
})
