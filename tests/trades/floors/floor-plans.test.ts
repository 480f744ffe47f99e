import { describe, expect, it } from "vitest"
import { planOfWork } from "../../../src/trades/floors/floor-plans.ts"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { noWork } from "../../../src/trades/trade.ts"
import { floorTask } from "./fixture.ts"

describe("the plan kept with a work", () => {
  it("is the one that the work was made of; a work without a floor has none", () => {
    const task = floorTask({})
    expect(planOfWork(floorWork(task))).toBe(planFloor(task).plan)
    expect(planOfWork(noWork())).toBeUndefined()
    expect(planOfWork(floorWork(floorTask({ input: { finish: "stays" } })))).toBeUndefined()
  })
})
