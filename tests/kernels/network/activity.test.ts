import { describe, expect, it } from "vitest"
import type { Activity } from "../../../src/kernels/network/activity.ts"
import { findCycle, inOrder } from "../../../src/kernels/network/activity.ts"

function activity(id: string, ...after: string[]): Activity {
  return { id, duration: 1, after: after.map((from) => ({ from })) }
}

describe("rings in a network", () => {
  it("names a ring in the order in which one comes before the next", () => {
    // paint before floor, floor before doors, doors before paint; start and end are not part of it
    const ring = findCycle([
      activity("end", "doors"),
      activity("paint", "start", "doors"),
      activity("floor", "paint"),
      activity("doors", "floor"),
      activity("start"),
    ])
    expect(ring).toHaveLength(3)
    const turned = [...(ring ?? []), ...(ring ?? [])].join(" ")
    expect(turned).toContain("paint floor doors")
  })

  it("an activity that waits for itself is a ring of one", () => {
    expect(findCycle([activity("a", "a")])).toEqual(["a"])
  })

  it("finds none where there is none, however deep", () => {
    const deep = Array.from({ length: 50_000 }, (_, n) => activity(`${n}`, ...(n > 0 ? [`${n - 1}`] : [])))
    expect(findCycle(deep)).toBeNull()
    expect(findCycle([activity("a", "nowhere")])).toBeNull()
  })
})

describe("order of a network", () => {
  it("puts each behind all it waits for and keeps the order given otherwise", () => {
    const order = inOrder([activity("c", "b"), activity("d"), activity("b", "a"), activity("a")])
    expect(order.map(({ id }) => id)).toEqual(["a", "b", "c", "d"])
  })

  it("refuses a ring, an unknown id and an id twice", () => {
    expect(() => inOrder([activity("a", "b"), activity("b", "a")])).toThrow("ring")
    expect(() => inOrder([activity("a", "b")])).toThrow("not in the network")
    expect(() => inOrder([activity("a"), activity("a")])).toThrow("twice")
  })
})
