import { describe, expect, it } from "vitest"
import type { Product } from "../../../src/intake/schema/products.ts"
import { joinery } from "../../../src/trades/joinery/index.ts"
import { joineryInputs } from "../../../src/trades/joinery/inputs.ts"
import { joineryRules } from "../../../src/trades/joinery/rules.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

const moulding = (id: string, thickness: number, width: number): Product => ({
  kind: "length",
  id,
  name: id,
  supplier: "merchant",
  lead: 3,
  thickness,
  width,
  material: "mdf",
  primed: true,
  lengths: [{ length: 4400, price: "10.00" }],
})

function taskWith(thickness: { skirting: number; architrave: number }, input: Record<string, unknown> = {}) {
  const house = houseOf({
    doors: [
      {
        id: "D1",
        name: "Door",
        between: ["R1", "outside"],
        lining: "keep",
        lengthsTo: "lining",
        heightsFrom: "finished-floor",
        widths: [768],
        heights: [1994],
        wall: 100,
      },
    ],
  })
  const room = surveyed({ doors: [{ door: "D1", wall: 1, fromLeft: 500 }] }, house)
  const job = jobFacts({
    rooms: [room],
    house,
    rules: rulesOf(joineryRules),
    products: [
      moulding("skirting", thickness.skirting, 145),
      moulding("architrave", thickness.architrave, 69),
    ],
    chosen: { skirting: "skirting", architrave: "architrave" },
  })
  return {
    job,
    room,
    input: joineryInputs.parse(input),
    at: { file: room.file, path: ["work", "joinery"] },
    facts: {},
  }
}

describe("joinery in a room", () => {
  it("passes on what covers the floor's gap", () => {
    expect(joinery.facts!(taskWith({ skirting: 18, architrave: 18 }))).toEqual({
      skirting: { thickness: 18, height: 145 },
      architrave: { thickness: 18, width: 69, margin: 6 },
    })
  })

  it("gives pieces, quantities, steps and a sheet", () => {
    const task = taskWith({ skirting: 18, architrave: 18 })
    const work = joinery.work(task)
    // skirting: wall 1 broken by the doorway 2, wall 3 longer than goes up the stair 2, walls 2 and 4 one each; architrave 3
    expect(work.pieces).toHaveLength(9)
    expect(work.steps.map((step) => step.title)).toEqual(["Fix architraves", "Fix skirting"])
    expect(work.findings).toEqual([])
    const [sheet] = joinery.sheets(task, work)
    expect(sheet).toMatchObject({ kind: "joinery", hosted: true })
  })

  it("finds a skirting thicker than its architrave", () => {
    const work = joinery.work(taskWith({ skirting: 21, architrave: 18 }))
    expect(work.findings.map((finding) => finding.code)).toEqual(["skirting-thicker-than-architrave"])
    expect(joinery.work(taskWith({ skirting: 21, architrave: 18 }, { plinths: true })).findings).toEqual([])
  })

  it("makes no piece where both are left out, and no finding", () => {
    const work = joinery.work(
      taskWith({ skirting: 18, architrave: 18 }, { skirting: false, architrave: false }),
    )
    expect(work.pieces).toEqual([])
    expect(work.findings).toEqual([])
  })

  it("is the same twice and leaves its task alone", () => {
    const task = taskWith({ skirting: 18, architrave: 18 })
    const before = JSON.stringify(task.input)
    expect(JSON.stringify(joinery.work(task))).toBe(JSON.stringify(joinery.work(task)))
    expect(JSON.stringify(task.input)).toBe(before)
  })
})
