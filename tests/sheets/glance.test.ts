import { describe, expect, it } from "vitest"
import { glanceSheet, hasWork } from "../../src/sheets/glance.ts"
import { smallResult } from "../fixtures/small-job.ts"

describe("a room at a glance", () => {
  it("tells the sizes: 4,450 by 3,720 is 16.55 m2 and 16.34 m round, give or take what the diagonal says", async () => {
    const result = await smallResult()
    const figures = glanceSheet(result, result.house.rooms[1]!).blocks.find(
      (block) => block.kind === "figures",
    )
    const items = new Map(figures?.items.map(({ label, value }) => [label, Number(value)]))
    expect(items.get("Floor")).toBeCloseTo(4.45 * 3.72, 1)
    expect(items.get("Round the walls")).toBeCloseTo(2 * (4.45 + 3.72), 1)
  })

  it("draws the plan and says which heights and lengths it gives", async () => {
    const result = await smallResult()
    const sheet = glanceSheet(result, result.house.rooms[1]!)
    expect(sheet.blocks.filter((block) => block.kind === "drawing")).toHaveLength(1)
    expect(sheet.datum).toMatch(/deck/i)
  })

  it("warns where the measurements do not fix the shape, and names the diagonal to tape", async () => {
    const result = await smallResult()
    const hall = result.house.rooms[0]!
    const free = { ...hall, trust: { ...hall.trust, fixed: false, needs: [{ from: 1, to: 3 }] } }
    const warning = glanceSheet(result, free).blocks.find((block) => block.kind === "warning")
    expect(JSON.stringify(warning)).toContain("from corner 1 to corner 3")
    const fixed = { ...hall, trust: { ...hall.trust, fixed: true } }
    expect(JSON.stringify(glanceSheet(result, fixed).blocks)).not.toContain("Shape not fixed")
  })

  it("is made for rooms that have work", async () => {
    const result = await smallResult()
    const [hall, living] = result.house.rooms
    expect(hasWork(result, living!)).toBe(true)
    expect(hasWork({ ...result, results: [] }, hall!)).toBe(false)
  })
})
