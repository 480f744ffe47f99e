import { describe, expect, it } from "vitest"
import type { SheetModel } from "../../src/kernels/paper.ts"
import { kindNumbers, numbered } from "../../src/sheets/numbers.ts"

const model = (kind: string, given: Partial<SheetModel> = {}): SheetModel => ({
  kind,
  title: kind,
  purpose: "A trial.",
  room: "A1",
  trade: null,
  audience: ["trade"],
  hosted: true,
  orientation: "portrait",
  datum: null,
  blocks: [],
  rests: [],
  ...given,
})

const numbersOf = (models: SheetModel[]) => numbered(models).map(({ number }) => number)

describe("sheet numbers", () => {
  it("stand on paper for good: none of these may ever change", () => {
    // The numbers as first printed. A new kind is added below; a line here is never edited.
    expect(kindNumbers).toMatchObject({
      glance: 1,
      sequence: 2,
      quantities: 3,
      floor: 4,
      doors: 5,
      joinery: 6,
      decorating: 7,
      drying: 8,
      cautions: 9,
      electrics: 10,
      plumbing: 11,
      tiling: 12,
      "door-schedule": 51,
      "escape-route": 52,
      saw: 53,
      deliveries: 54,
      programme: 55,
      "paint-order": 57,
      "trade-visits": 58,
      "client-schedule": 70,
      "client-choices": 71,
      "client-price": 72,
      workings: 80,
      rulebook: 81,
      orders: 82,
      price: 83,
    })
  })

  it("are never shared by two kinds", () => {
    expect(new Set(Object.values(kindNumbers)).size).toBe(Object.keys(kindNumbers).length)
  })

  it("name room or job, kind, and part", () => {
    expect(numbersOf([model("floor"), model("saw", { room: null }), model("doors", { part: "D4" })])).toEqual(
      ["A1-04", "J-53", "A1-05-D4"],
    )
  })

  it("do not move when other sheets come or go", () => {
    expect(numbersOf([model("glance"), model("floor"), model("doors")]).slice(1)).toEqual(
      numbersOf([model("floor"), model("doors"), model("cautions")]).slice(0, 2),
    )
  })

  it("tell several of a kind apart, and give addresses in small letters", () => {
    const sheets = numbered([model("floor"), model("floor"), model("floor")])
    expect(sheets.map((sheet) => sheet.number)).toEqual(["A1-04", "A1-04b", "A1-04c"])
    expect(sheets.map((sheet) => sheet.path)).toEqual(["a1-04", "a1-04b", "a1-04c"])
  })

  it("are refused to a kind that has none", () => {
    expect(() => numbered([model("poem")])).toThrow(/poem/)
  })
})
