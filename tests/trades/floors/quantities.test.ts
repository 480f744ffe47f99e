import { describe, expect, it } from "vitest"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { board, floorTask, underlay } from "./fixture.ts"

const quantities = (given: Parameters<typeof floorTask>[0]) => floorWork(floorTask(given)).quantities

describe("quantities of a floating floor", () => {
  it("gross is never below net, and every line says where it comes from", () => {
    for (const line of quantities({ input: { joints: "glued", oilCoats: 2 } })) {
      expect(line.gross).toBeGreaterThanOrEqual(line.net)
      expect(line.from.length).toBeGreaterThan(5)
    }
  })

  it("glue only where joints are glued: 11.86 m2 at 15 m2 a litre (common practice)", () => {
    const glue = (joints: string) =>
      quantities({ input: { joints } }).find((line) => line.what.startsWith("glue"))
    expect(glue("locked")).toBeUndefined()
    expect(glue("glued")!.net).toBeCloseTo(0.7907, 4)
  })

  it("the oil maker's rate stands before the rule's", () => {
    const oil = {
      id: "oil",
      kind: "liquid" as const,
      name: "Oil",
      supplier: "flooring supplier",
      lead: 5,
      use: "oil" as const,
      base: "oil" as const,
      colour: "clear",
      rate: 24,
      tins: [{ litres: 1, price: "38.00" }],
    }
    const line = quantities({ products: [board, underlay, oil], input: { oil: "oil", oilCoats: 2 } }).find(
      (each) => each.product === "oil",
    )!
    expect(line.net).toBeCloseTo((11.8604 * 2) / 24, 6)
  })

  it("no screws for a concrete base", () => {
    expect(
      quantities({ storey: { base: "concrete" } }).some((line) => line.what.startsWith("deck screws")),
    ).toBe(false)
  })
})
