import { describe, expect, it } from "vitest"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { laidChecks, notThrough, underChecks } from "../../../src/trades/floors/sheet-checks.ts"
import { floorTask } from "./fixture.ts"

const texts = (given: Parameters<typeof floorTask>[0]) => {
  const task = floorTask(given)
  const { plan } = planFloor(task)
  return {
    under: underChecks(task, plan!)
      .map(({ text }) => text)
      .join("\n"),
    laid: laidChecks(task, plan!)
      .map(({ text }) => text)
      .join("\n"),
    fixed: notThrough(task).join("\n"),
  }
}

describe("checks on the floor sheet", () => {
  it("a concrete base asks for a moisture layer, a ventilated one for clear air bricks", () => {
    expect(texts({ storey: { base: "concrete" } }).under).toContain("Moisture layer")
    expect(texts({ storey: { base: "ventilated-timber" } }).under).toContain("Air bricks clear")
  })

  it("oil is checked and its renewal dated only where the floor is oiled", () => {
    expect(texts({}).laid).toContain("Re-oil where it is walked on 12 months after")
    expect(texts({ input: { oilCoats: 0 } }).laid).not.toContain("oil")
  })

  it("what holds the floor is named", () => {
    expect(texts({}).fixed).toContain("newels, pans")
    expect(texts({ input: { heldAlong: [2] } }).fixed).toContain("Held along wall 2 only")
  })
})
