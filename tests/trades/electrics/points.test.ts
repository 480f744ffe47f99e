import { describe, expect, it } from "vitest"
import { scheduledPoints } from "../../../src/trades/electrics/points.ts"
import { electricsWork } from "../../../src/trades/electrics/work.ts"
import { REACH, WET_ZONES } from "../../facts/services.ts"
import { bedroom, rules, task } from "./bedroom.ts"

describe("points schedule of a bedroom, by hand", () => {
  // Heights taped from the deck; oak and underlay build up 19: a box centre 500 over the floor is 519 over the deck.
  it("runs by wall and from the left, heights from the finished floor and from the deck", () => {
    const rows = scheduledPoints(task(bedroom)).map(({ number, point, height, fromDatum }) => [
      number,
      point.kind,
      point.wall,
      point.fromLeft,
      height,
      fromDatum,
    ])
    expect(rows).toEqual([
      [1, "switch", 1, 1500, 1150, 1169],
      [2, "light", 1, 2000, null, null],
      [3, "smoke-alarm", 1, 3000, null, null],
      [4, "socket", 2, 300, 450, 469],
      [5, "socket", 3, 600, 500, 519],
      [6, "socket", 3, 3200, 500, 519],
    ])
  })

  it("counts what is new by kind and gang; what stays is not bought", () => {
    const counts = electricsWork(task(bedroom)).quantities.map((each) => [each.what, each.net, each.from])
    expect(counts).toEqual([
      ["switch", 1, "numbers 1 of the points schedule"],
      ["light", 1, "numbers 2 of the points schedule"],
      ["smoke alarm", 1, "numbers 3 of the points schedule"],
      ["socket, 2 gang", 2, "numbers 5, 6 of the points schedule"],
    ])
  })

  it("heights taped from the finished floor need nothing added", () => {
    const measured = {
      on: "2027-01-10",
      by: "foreman",
      lengthsTo: "plaster",
      heightsFrom: "finished-floor",
      tape: 3,
    }
    expect(scheduledPoints(task(bedroom, { measured }))[0]!.fromDatum).toBe(1150)
  })
})

describe("heights and zones", () => {
  it(`heights by rule keep to ${REACH.lowest} to ${REACH.highest} (${REACH.source})`, () => {
    expect(rules.value("elec-lowest")).toBe(REACH.lowest)
    expect(rules.value("elec-highest")).toBe(REACH.highest)
    for (const kind of ["socket", "switch", "data"]) {
      const [point] = scheduledPoints(task({ points: [{ kind, wall: 2, fromLeft: 900 }] }))
      expect(point!.height).toBeGreaterThanOrEqual(REACH.lowest)
      expect(point!.height).toBeLessThanOrEqual(REACH.highest)
    }
  })

  it.each(WET_ZONES)("$rule is $value mm ($source)", ({ rule, value }) => {
    expect(rules.value(rule)).toBe(value)
  })
})

describe("findings of electrics", () => {
  const found = (points: Record<string, unknown>[], room = {}) =>
    electricsWork(task({ points }, room)).findings.map((each) => [
      each.code,
      each.severity,
      each.at.path.slice(2).join("/"),
    ])

  it("a sound room has none", () => {
    expect(electricsWork(task(bedroom)).findings).toEqual([])
  })

  it("a point off its wall, in the doorway, on no wall", () => {
    expect(found([{ kind: "socket", wall: 2, fromLeft: 3100 }])).toEqual([
      ["point-off-wall", "error", "points/0/fromLeft"],
    ])
    expect(found([{ kind: "switch", wall: 1, fromLeft: 1350 }])).toEqual([
      ["point-at-doorway", "error", "points/0/fromLeft"],
    ])
    expect(found([{ kind: "switch", wall: 7, fromLeft: 10 }])).toEqual([
      ["no-such-wall", "error", "points/0/wall"],
    ])
  })

  it("out of reach is a warning with the place of its height; a light high on the wall is none", () => {
    expect(found([{ kind: "socket", wall: 2, fromLeft: 900, height: 300 }])).toEqual([
      ["point-out-of-reach", "warning", "points/0/height"],
    ])
    expect(found([{ kind: "light", wall: 2, fromLeft: 900, height: 1900 }])).toEqual([])
  })

  it("a socket in a room with bath or shower wants the electrician's word", () => {
    expect(found([{ kind: "socket", wall: 2, fromLeft: 900 }], { use: "bathroom" })).toEqual([
      ["socket-in-wet-room", "warning", "points/0/kind"],
    ])
  })
})
