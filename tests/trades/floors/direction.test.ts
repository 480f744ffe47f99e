import { describe, expect, it } from "vitest"
import { direction, joistWall } from "../../../src/trades/floors/direction.ts"
import { floorTask } from "./fixture.ts"

const wallFor = (given: Parameters<typeof floorTask>[0]) => {
  const task = floorTask(given)
  return direction(task.room, task.input, task.at).wall.number
}

describe("which way boards run (common practice)", () => {
  it("along the longest wall where joists are not known; the first of two as long", () => {
    expect(wallFor({})).toBe(1)
  })

  it("at right angles to the joists", () => {
    const joists = (wall: number) => ({
      storey: { joists: { alongWallOf: "R1", wall, centres: 400, firstFrom: 50 } },
    })
    expect(wallFor(joists(1))).toBe(2)
    expect(wallFor(joists(2))).toBe(1)
    expect(joistWall(floorTask(joists(4)).room)?.number).toBe(4)
  })

  it("joists told of another room say nothing of this one", () => {
    expect(wallFor({ storey: { joists: { alongWallOf: "R9", wall: 1 } } })).toBe(1)
  })

  it("as written", () => {
    expect(wallFor({ input: { along: 2 } })).toBe(2)
    expect(wallFor({ input: { along: 2, firstRowFrom: 4 } })).toBe(4)
    expect(wallFor({ input: { firstRowFrom: 3 } })).toBe(3)
  })
})
