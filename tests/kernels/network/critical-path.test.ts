import { describe, expect, it } from "vitest"
import type { Activity } from "../../../src/kernels/network/activity.ts"
import { criticalPath, isBinding, isCritical } from "../../../src/kernels/network/critical-path.ts"
import {
  ARROWS,
  ARROWS_WITH_DUMMY,
  CLEANING_EQUIPMENT,
  PLANT_BUILDING,
  SEVEN_TASKS,
} from "../../facts/network.ts"

/** Arrows as activities: each waits for every arrow that ends in the event it leaves. */
function fromArrows(rows: readonly (readonly [string, number, ...number[]])[]): Activity[] {
  return rows.map(([id, duration]) => {
    const event = id.split("-")[0]
    const before = rows.filter(([other]) => other.split("-")[1] === event)
    return { id, duration, after: before.map(([from]) => ({ from })) }
  })
}

describe("critical path: published networks to the digit", () => {
  describe.each([PLANT_BUILDING, CLEANING_EQUIPMENT])("$source", ({ rows, duration, critical }) => {
    const network = rows.map(([id, length, before]) => ({
      id,
      duration: length,
      after: before.map((from) => ({ from })),
    }))
    const result = criticalPath(network)

    it.each(rows)("activity %s", (...row) => {
      const t = result.times.get(row[0])!
      expect([
        t.earliestStart,
        t.earliestFinish,
        t.latestStart,
        t.latestFinish,
        t.totalFloat,
        t.freeFloat,
      ]).toEqual(row.slice(3, 9))
    })

    it("duration and critical chain", () => {
      expect(result.duration).toBe(duration)
      expect(result.chain).toEqual(critical)
    })
  })

  describe.each([ARROWS, ARROWS_WITH_DUMMY])("$source, $duration long", ({ rows, duration, critical }) => {
    const result = criticalPath(fromArrows(rows))

    it.each(rows)("arrow %s", (...row) => {
      const t = result.times.get(row[0])!
      expect([t.earliestStart, t.earliestFinish, t.latestStart, t.latestFinish, t.totalFloat]).toEqual(
        row.slice(2),
      )
    })

    it("duration and critical chain", () => {
      expect(result.duration).toBe(duration)
      expect(result.chain).toEqual(critical)
    })
  })

  it(SEVEN_TASKS.source, () => {
    const result = criticalPath(
      SEVEN_TASKS.rows.map(([id, before, , mean]) => ({
        id,
        duration: mean,
        after: before.map((from) => ({ from })),
      })),
    )
    expect(result.duration).toBeCloseTo(SEVEN_TASKS.duration, 9)
    expect(result.chain).toEqual(SEVEN_TASKS.critical)
    for (const [id, t] of result.times) expect(t.totalFloat).toBeCloseTo(SEVEN_TASKS.slack[id] ?? 0, 9)
  })
})

describe("critical path: lags", () => {
  // screed 2, dry 7, floor 3; walls may start 1 after the screed starts and take 4; floor 1 after walls finish
  const network: Activity[] = [
    { id: "screed", duration: 2, after: [] },
    { id: "walls", duration: 4, after: [{ from: "screed", kind: "start-start", lag: 1 }] },
    {
      id: "floor",
      duration: 3,
      after: [
        { from: "screed", lag: 7 },
        { from: "walls", lag: 1 },
      ],
    },
  ]
  const { times, duration, chain } = criticalPath(network)

  it("waits out the lag after a finish, and after a start", () => {
    expect(duration).toBe(12)
    expect(times.get("walls")).toMatchObject({
      earliestStart: 1,
      latestStart: 4,
      totalFloat: 3,
      freeFloat: 3,
    })
    expect(times.get("floor")).toMatchObject({ earliestStart: 9, totalFloat: 0 })
    expect(chain).toEqual(["screed", "floor"])
  })

  it("knows which link holds the follower", () => {
    const [bound, slack] = network[2]!.after
    expect(isBinding(bound!, times.get("floor")!, times.get("screed")!)).toBe(true)
    expect(isBinding(slack!, times.get("floor")!, times.get("walls")!)).toBe(false)
    expect(isCritical(times.get("walls")!)).toBe(false)
  })

  it("an overlap never starts before the network does", () => {
    const early = criticalPath([
      { id: "a", duration: 2, after: [] },
      { id: "b", duration: 5, after: [{ from: "a", lag: -3 }] },
    ])
    expect(early.times.get("b")!.earliestStart).toBe(0)
    expect(early.duration).toBe(5)
    expect(criticalPath([]).duration).toBe(0)
  })
})
