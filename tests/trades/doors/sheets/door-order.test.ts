import { describe, expect, it } from "vitest"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { gapRecord, leafChecks, passText, workOrder } from "../../../../src/trades/doors/sheets/door-order.ts"
import { doorsOfHouse } from "../../../../src/trades/doors/work.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house, setDoor } from "../run.ts"

function order(work: Record<string, unknown>, to: Parameters<typeof setDoor>[1] = {}) {
  const job = jobOf({ ...house, work: { D5: { hang: "new", ...work } } })
  setDoor("D5", to)(job)
  const rules = rulesRead(doorRules)
  const hung = doorsOfHouse(job, rules).doors.find((each) => each.door.id === "D5")!
  const list = workOrder(hung, hung.fitted!, rules)
  return {
    items: list.kind === "list" ? list.items.join("\n") : "",
    record: gapRecord(hung, hung.fitted!),
    checks: JSON.stringify(leafChecks(hung, hung.fitted!, rules)),
  }
}

describe("the order of work on a leaf", () => {
  it("trims before it marks, seals oak after cutting in, splices old recesses with timber", () => {
    const { items } = order({})
    expect(items.indexOf("Mark hinges")).toBeGreaterThan(items.indexOf("Lead on"))
    expect(items.indexOf("six faces")).toBeGreaterThan(items.indexOf("Mark the spindle"))
    expect(items).toMatch(/Splice timber/)
  })

  // 44 x tan 2.5 degrees = 1.92; the leaf bears 3 on its lock edge, so where 2 is planed off 1 is left.
  it("leads the lock edge 2 over 44 (2 to 3 degrees, common practice), never over what the leaf bears", () => {
    expect(order({}, { widths: [768, 768, 768] }).items).toMatch(/Lead on the lock edge: 2 off/)
    expect(order({}, { widths: [766, 766, 766] }).items).not.toMatch(/Lead on the lock edge: 2 off/)
  })

  it("moves the stop of an old rebate of 37 by 7 for a leaf of 44", () => {
    expect(order({ rebateBy: "move-stop" }, { rebate: 37 }).items).toMatch(/Move the stop back by 7/)
  })

  it("asks for pads only where the certificate's answer was not entered", () => {
    expect(order({}).items).toMatch(/Pads/)
    expect(order({ certificate: { pads: false } }).items).not.toMatch(/Pads/)
  })
})

describe("gaps to be written in", () => {
  it("have pass limits and three boxes before and three after paint, at four places", () => {
    const { record } = order({})
    if (record.kind !== "table") throw new Error("no table")
    expect(record.rows).toHaveLength(4)
    expect(record.columns.filter((column) => column.as === "write")).toHaveLength(6)
    // BS 8214:2016 as quoted by a door inspector: 2 to 4.
    expect(record.rows[0]!.cells[1]).toBe("2 to 4")
  })

  it("show one figure where nothing may vary", () => {
    expect(passText({ least: 10, most: 10 })).toBe("10")
    expect(passText({ least: 2, most: 4 })).toBe("2 to 4")
  })

  it("check what is tried, the label, and a kept lining's thickness", () => {
    expect(order({ closer: true }).checks).toMatch(/latches by itself/)
    expect(order({}).checks).toMatch(/label number/)
    expect(order({}).checks).toMatch(/at least 30 thick/)
  })
})
