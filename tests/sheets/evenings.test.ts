import { describe, expect, it } from "vitest"
import { eveningsSheet } from "../../src/sheets/evenings.ts"
import { eveningsIn } from "../../src/sheets/evenings-of-job.ts"
import { cellsOf } from "./sheets.ts"
import { house } from "./site.ts"

describe("the evenings on paper", () => {
  const rows = cellsOf(eveningsSheet(house))

  it("one row an evening; every door hung stands on its day", () => {
    expect(rows).toHaveLength(eveningsIn(house).length)
    expect(rows.map((row) => row[1]).join(" ")).toMatch(/D5/)
    expect(rows.some((row) => /A\d/.test(row[3]!))).toBe(true)
  })

  it("says of an electrician's work that goes on tomorrow that ends are safe and the supply is on", () => {
    const over = eveningsIn(house).some((each) =>
      each.overnight.some(({ step }) => step.trade === "electrics"),
    )
    expect(rows.some((row) => row[4]!.includes("supply on"))).toBe(over)
  })

  it("warns first where the programme leaves an evening open, and says nothing of it where it does not", () => {
    expect(eveningsSheet(house)!.blocks.map(({ kind }) => kind)).toEqual(["table"])
    const finding = {
      code: "doorway-left-open",
      severity: "warning",
      message: "Door D5 stands open.",
      at: { file: "", path: [] },
    }
    const programme = { ...house.programme, findings: [...house.programme.findings, finding] }
    const [first] = eveningsSheet({ ...house, programme } as typeof house)!.blocks
    expect(first).toMatchObject({ kind: "warning", items: ["Door D5 stands open."] })
  })

  it("is none where nobody lives", () => {
    expect(eveningsSheet({ ...house, house: { ...house.house, occupied: false } })).toBeNull()
  })
})
