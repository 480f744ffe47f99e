import { describe, expect, it } from "vitest"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { partsTable } from "../../../../src/trades/doors/sheets/door-parts.ts"
import { doorsOfHouse } from "../../../../src/trades/doors/work.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house } from "../run.ts"

function rows(id: string, work: Record<string, unknown>) {
  const job = jobOf({ ...house, work: { [id]: work } })
  const rules = rulesRead(doorRules)
  const hung = doorsOfHouse(job, rules).doors.find((each) => each.door.id === id)!
  const table = partsTable(hung, hung.fitted!, job, rules)
  if (table.kind !== "table") throw new Error("no table")
  return table.rows.map((row) => row.cells.join(" | "))
}

describe("marks and ironmongery of one door", () => {
  it("give each hinge a row with leaf, lining and floor, recess, grade as recalled, screws", () => {
    const found = rows("D5", { hang: "new" })
    expect(found[0]).toMatch(/^Hinge 1, top \| 150 \| 153 \| 18\d\d \| recess 100 long, 3 deep/)
    expect(found[1]).toMatch(/grade 11 \(grades from memory\); 40.0 kg/)
    expect(found[2]).toMatch(/24 screws/)
  })

  it("say which face the closer goes on, towards which room, and its power", () => {
    const found = rows("D13", { hang: "new", leaf: "fd30", closer: true }).find((row) => /^Closer/.test(row))
    expect(found).toMatch(/pull face, knuckle side, towards hall C1; power size 3 or more/)
  })

  it("give a wet room two keeps", () => {
    const found = rows("D3", { hang: "new", leaf: "plain-686", thumbTurn: true })
    expect(found.filter((row) => /keep/i.test(row.split("|")[0]!))).toHaveLength(2)
    expect(found.join()).toMatch(/second keep/)
  })

  it("have strips for a fire leaf alone, and pads as its certificate says", () => {
    expect(rows("D5", { hang: "new" }).join()).toMatch(/lock \d+; hinge/)
    expect(rows("D3", { hang: "new", leaf: "plain-686" }).join()).not.toMatch(/lock \d+; hinge/)
    expect(rows("D5", { hang: "new", certificate: { pads: true } }).join()).toMatch(/pads under flaps/)
    expect(rows("D5", { hang: "new", certificate: { pads: false } }).join()).toMatch(/no pads asked/)
  })
})
