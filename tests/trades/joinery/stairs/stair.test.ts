import { describe, expect, it } from "vitest"
import { stairsOf } from "../../../../src/trades/joinery/stairs/stair.ts"
import { joineryWork } from "../../../../src/trades/joinery/work.ts"
import { joineryTask } from "../task.ts"

describe("stairs seen from what is written", () => {
  it("take each rise as taped, and what is laid on the treads", () => {
    const rises = [200, 205, 210]
    const task = joineryTask({ stairs: [{ stair: "S2", rises, onTreads: 10 }] })
    const [seen] = stairsOf(task.job, [{ room: task.room, work: joineryWork(task) }])
    // 19 in R1 at the head; B4 at the foot is not surveyed: nothing known there
    expect(seen!.rises.map((rise) => [rise.before, rise.after])).toEqual([
      [200, 210],
      [205, 205],
      [210, 219],
    ])
  })

  it("are as in the house file where nothing is written, and changed by the job only where something is laid", () => {
    const { job } = joineryTask({}, { passed: { R1: { floorBuildUp: 0 }, B4: { floorBuildUp: 12 } } })
    const old = { ...job.house, stairs: [{ ...job.house.stairs[0]!, new: false }] }
    const [seen] = stairsOf({ ...job, house: old }, [])
    expect(seen).toMatchObject({ work: null, changes: false, below: 12, above: 0 })
    expect(seen!.rises).toHaveLength(13)
    const laid = new Map([["R1", { floorBuildUp: 19 }]])
    expect(stairsOf({ ...job, house: old, passed: laid }, [])[0]!.changes).toBe(true)
  })
})
