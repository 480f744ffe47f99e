import { describe, expect, it } from "vitest"
import { limitsOf } from "../../../../src/trades/joinery/stairs/limits.ts"
import { stairsOf } from "../../../../src/trades/joinery/stairs/stair.ts"
import { joineryFacts } from "../../../facts/joinery.ts"
import { joineryTask } from "../task.ts"

const { job } = joineryTask({}, { passed: {} })
const stair = job.house.stairs[0]!

function outside(rise: number, going: number) {
  const changed = { ...job, house: { ...job.house, stairs: [{ ...stair, rise, going }] } }
  const [seen] = stairsOf({ ...changed, passed: new Map([["B4", { floorBuildUp: 0 }]]) }, [])
  return limitsOf(seen!, job.rules)
    .filter((limit) => !limit.within)
    .map((limit) => limit.code)
}

describe("a stair against guidance", () => {
  it.each(joineryFacts.stairCases)(
    "rise $rise, going $going: $outside ($source)",
    ({ rise, going, outside: expected }) => {
      expect(outside(rise, going)).toEqual(expected)
    },
  )

  it("holds the heights of handrail and guarding where they are written", () => {
    const [seen] = stairsOf(job, [])
    const work = { stair: "S2", onTreads: 0, parts: [], handrailHeight: 850, guardingHeight: 900 }
    const codes = limitsOf({ ...seen!, work }, job.rules).map((limit) => [limit.code, limit.within])
    expect(codes).toContainEqual(["handrail", false])
    expect(codes).toContainEqual(["guarding", true])
  })
})
