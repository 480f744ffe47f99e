import { describe, expect, it } from "vitest"
import { scheduledPoints } from "../../../src/trades/electrics/points.ts"
import { planOf } from "../../../src/trades/electrics/wet-zones.ts"
import { electricsWork } from "../../../src/trades/electrics/work.ts"
import { WET_ZONES } from "../../facts/services.ts"
import { task } from "./bedroom.ts"

/** A room of 4,000 by 3,000, 2,400 high, with a shower of 800 by 800 at the left end of wall 3. */
const shower = [{ what: "shower" as const, wall: 3, fromLeft: 0, width: 800, depth: 800 }]
const wash = (points: Record<string, unknown>[], room = {}) =>
  task({ points }, { use: "bathroom", ...room }, { floorBuildUp: 19, wetPlaces: shower })
const zones = (points: Record<string, unknown>[], room = {}) =>
  scheduledPoints(wash(points, room)).map(({ zone }) => zone)

describe("zones round a shower, by hand", () => {
  it(`600 beside the tray and up to 2,250 (${WET_ZONES[0]!.source})`, () => {
    const on3 = (fromLeft: number, height: number) => ({ kind: "light", wall: 3, fromLeft, height })
    expect(zones([on3(400, 2000)])).toEqual(["1"])
    expect(zones([on3(1390, 2000)])).toEqual(["2"])
    expect(zones([on3(1410, 2000)])).toEqual(["outside"])
    expect(zones([on3(400, 2250)])).toEqual(["outside"])
  })

  it("round the corner: wall 2 runs down to the corner at the left end of wall 3, 3,000 long", () => {
    // The tray's edge along wall 2 lies 800 from its right end: 2,200 from its left; zone 2 begins at 1,600.
    const on2 = (fromLeft: number) => ({ kind: "light", wall: 2, fromLeft, height: 1000 })
    expect([1590, 1610, 2190, 2210].map((fromLeft) => zones([on2(fromLeft)])[0])).toEqual([
      "outside",
      "2",
      "2",
      "1",
    ])
  })

  it("a level ceiling of 2,400 less 19 of floor is above the zones, one of 2,260 is not", () => {
    const over = { kind: "light", on: "ceiling", wall: 3, fromLeft: 400, off: 400 }
    expect(zones([over])).toEqual(["outside"])
    expect(zones([over], { ceiling: { heights: [2260] } })).toEqual(["1"])
  })

  it("a room without bath or shower has none", () => {
    expect(scheduledPoints(task({ points: [{ kind: "light", wall: 3, fromLeft: 400 }] }))[0]!.zone).toBeNull()
  })

  it("a switch in a zone is an error, a pull cord there is not", () => {
    const codes = (kind: string) =>
      electricsWork(wash([{ kind, wall: 3, fromLeft: 1000 }])).findings.map((each) => each.code)
    expect(codes("switch")).toContain("point-in-wet-zone")
    expect(codes("pull-cord")).not.toContain("point-in-wet-zone")
  })
})

describe("places on the plan", () => {
  it("wall 1 runs along x from the origin with the room below it", () => {
    const [wall] = wash([]).room.walls
    expect(planOf(wall!, 1000, 300)).toEqual({ x: 1000, y: -300 })
  })
})
