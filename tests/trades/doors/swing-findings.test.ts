import { describe, expect, it } from "vitest"
import { codes } from "./run.ts"

/** Places the bedroom's door in wall 1, so far from its left end. */
const placed =
  (fromLeft: number, slope = false) =>
  (job: Parameters<NonNullable<Parameters<typeof codes>[2]>>[0]) => {
    const room = job.house.rooms.find((each) => each.id === "B1")!
    const door = job.house.doors.find((each) => each.id === "D5")!
    const here = { door, wall: 1, fromLeft, width: 768, height: 1992 }
    room.doors.push(here)
    room.walls[0]!.doors.push(here)
    if (!slope) return
    const { outline } = room
    const flat = room.ceiling.parts[0]!
    room.ceiling.parts.push({ ...flat, kind: "slope", wall: 4, pitch: 45, plan: [...outline] })
  }

describe("what a swinging leaf meets", () => {
  it("a handle against the wall where less than 60 stands beside the hinges (common practice)", () => {
    expect(codes({ D5: { hang: "new" } }, "B1", placed(40))).toContain("door-handle-meets-wall")
    expect(codes({ D5: { hang: "new" } }, "B1", placed(300))).not.toContain("door-handle-meets-wall")
  })

  it("a slope over its top corner; not where the author tried the swing on site", () => {
    expect(codes({ D5: { hang: "new" } }, "B1", placed(300, true))).not.toContain("door-swings-under-slope")
    const low = (job: Parameters<ReturnType<typeof placed>>[0]) => {
      placed(300, true)(job)
      const wall = job.house.rooms.find((each) => each.id === "B1")!.walls[3]!
      wall.elevation = wall.elevation.map((corner) => ({ ...corner, y: Math.min(corner.y, 900) }))
    }
    expect(codes({ D5: { hang: "new" } }, "B1", low)).toContain("door-swings-under-slope")
    expect(codes({ D5: { hang: "new", swept: false } }, "B1", low)).not.toContain("door-swings-under-slope")
  })
})
