import { describe, expect, it } from "vitest"
import { electrics } from "../../../src/trades/electrics/index.ts"
import { type ElectricsInputs, electricsInputs } from "../../../src/trades/electrics/inputs.ts"
import { scheduledPoints } from "../../../src/trades/electrics/points.ts"
import { electricsRules } from "../../../src/trades/electrics/rules.ts"
import { electricsSheets } from "../../../src/trades/electrics/sheet.ts"
import { electricsWork } from "../../../src/trades/electrics/work.ts"
import { stageRank } from "../../../src/trades/stages.ts"
import type { RoomFacts, Task } from "../../../src/trades/trade.ts"
import { REACH, WET_ZONES } from "../../facts/services.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"
import { badTables } from "../../fixtures/tables.ts"

const rules = rulesOf(electricsRules)

function task(
  written: Record<string, unknown>,
  room = {},
  facts: RoomFacts = { floorBuildUp: 19 },
): Task<ElectricsInputs> {
  const house = houseOf({
    doors: [
      {
        id: "D1",
        name: "door",
        between: ["R1", "L1"],
        swingsInto: "R1",
        lining: "new",
        lengthsTo: "lining",
        heightsFrom: "deck",
        widths: [768],
        heights: [1990],
        wall: 120,
      },
    ],
  })
  const surveyedRoom = surveyed({ doors: [{ door: "D1", wall: 1, fromLeft: 500 }], ...room }, house, rules)
  return {
    job: jobFacts({ rooms: [surveyedRoom], house, rules }),
    room: surveyedRoom,
    input: electricsInputs.parse(written),
    at: { file: surveyedRoom.file, path: ["work", "electrics"] },
    facts,
  }
}

const bedroom = {
  points: [
    { kind: "socket", wall: 3, fromLeft: 600, gang: 2 },
    { kind: "switch", wall: 1, fromLeft: 1500, note: "light" },
    { kind: "socket", wall: 3, fromLeft: 3200, gang: 2, height: 500 },
    { kind: "light", on: "ceiling", wall: 1, fromLeft: 2000, off: 1500 },
    { kind: "smoke-alarm", on: "ceiling", wall: 1, fromLeft: 3000, off: 1500 },
    { kind: "socket", wall: 2, fromLeft: 300, is: "stays", height: 450 },
  ],
}

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

describe("visits of the electrician", () => {
  it("before the first coat, to fit, to ease, to close up: in the order of the house", () => {
    const { steps } = electricsWork(task(bedroom))
    expect(steps.map((step) => step.key)).toEqual(
      ["first-coat", "fit", "ease", "close-up"].map((key) => `electrics/R1/${key}`),
    )
    const ranks = steps.map((step) => stageRank(step.stage))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    expect(steps.map((step) => step.stage)).toEqual(["prepare", "second-fix", "last-coat", "covers-off"])
  })

  it("says who isolates, and that no circuit is designed", () => {
    const text = JSON.stringify(
      electricsWork(task({ ...bedroom, isolatedBy: "the licensed electrician" })).cautions,
    )
    expect(text).toMatch(/Only the licensed electrician isolates/)
    expect(text).toMatch(/electrician's design/)
  })

  it("a room without points has no work and no sheet", () => {
    const empty = task({})
    expect(electricsWork(empty).steps).toEqual([])
    expect(electricsSheets(empty, electricsWork(empty))).toEqual([])
  })
})

describe("electrics on paper", () => {
  it("tables fit their columns, walls with points are drawn, boxes for test papers stand", () => {
    const given = task(bedroom)
    const [sheet] = electricsSheets(given, electricsWork(given))
    expect(badTables(sheet!)).toEqual([])
    const drawn = sheet!.blocks.flatMap((block) => (block.kind === "drawing" ? [block.caption] : []))
    expect(drawn.join()).toMatch(/^Walls? .*1/)
    expect(drawn).toHaveLength(2)
    expect(sheet!.blocks.some((block) => block.kind === "boxes")).toBe(true)
    for (const id of sheet!.rests) expect(rules.entry(id).id).toBe(id)
  })

  it("is listed with its inputs described", () => {
    expect(electrics.rules.every((each) => each.id.startsWith("elec-"))).toBe(true)
  })
})
