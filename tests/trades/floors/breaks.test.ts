import { describe, expect, it } from "vitest"
import type { Product } from "../../../src/intake/schema/products.ts"
import { regionArea } from "../../../src/kernels/polygon/measure.ts"
import { regionOf } from "../../../src/kernels/polygon/region.ts"
import {
  breaksOn,
  breaksToWrite,
  heldTogether,
  largestField,
  partedBy,
} from "../../../src/trades/floors/breaks.ts"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { firstLines } from "../../../src/trades/floors/row-drawing.ts"
import { floorSheets } from "../../../src/trades/floors/sheet.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { board, floorTask, underlay } from "./fixture.ts"
import { breakFaults, faults } from "./verifier.ts"

const sized = (long: number, deep: number) => ({
  outline: [
    { length: long, turn: "right" },
    { length: deep, turn: "right" },
    { length: long, turn: "right" },
    { length: deep, turn: "right" },
  ],
  diagonals: [{ from: 1, to: 3, length: Math.hypot(long, deep) }],
})
const profile = (width: number, length = 2700): Product => ({
  id: "profile",
  kind: "length",
  name: "Movement profile",
  supplier: "flooring supplier",
  lead: 5,
  thickness: 12,
  width,
  material: "metal",
  primed: false,
  lengths: [{ length, price: "40.00" }],
})
const long = (input: Record<string, unknown>, products: Product[] = []) =>
  floorTask({
    room: sized(9000, 3000),
    input: { along: 1, ...input },
    products: [board, underlay, ...products],
    chosen: products.length > 0 ? { "floor-break-profile": "profile" } : {},
  })
const runFindings = (task: ReturnType<typeof floorTask>) =>
  planFloor(task).findings.filter(({ code }) => code === "floor-run-too-long")

describe("breaks by hand", () => {
  const { room, input } = long({ breaks: [{ wall: 1, fromLeft: 4500 }] })
  const floor = [regionOf(room.outline)]
  const breaks = breaksOn(room, input, floor)

  it("a line square to the wall, from wall to wall", () => {
    expect(breaks).toHaveLength(1)
    expect(breaks[0]).toMatchObject({ number: 1, wall: 1, fromLeft: 4500 })
    expect(breaks[0]!.length).toBeCloseTo(3000, 6)
  })

  it("parts 9,000 by 3,000 into two of 4,488 by 3,000 where 12 is left on both sides", () => {
    const fields = partedBy(breaks, floor, 12)
    expect(fields.map((field) => Math.round(regionArea(field)))).toEqual([4488 * 3000, 4488 * 3000])
    expect(largestField(room.walls[0]!, fields).along).toBeCloseTo(4488, 2)
  })

  it("9,000 with 8,000 allowed is two fields: one break in the middle; 20,000 is three", () => {
    expect(breaksToWrite(room.walls[0]!, floor, 8000)).toEqual([{ wall: 1, fromLeft: 4500 }])
    const far = long({ along: 1 }).room.walls[0]!
    expect(breaksToWrite(far, floor, 3000)).toEqual([
      { wall: 1, fromLeft: 3000 },
      { wall: 1, fromLeft: 6000 },
    ])
  })

  it("walls on both sides of a break hold fields of their own; without it they hold one floor", () => {
    const ends = room.walls.filter((wall) => wall.number === 2 || wall.number === 4)
    expect(heldTogether(ends, floor).map((wall) => wall.number)).toEqual([2, 4])
    expect(heldTogether(ends, partedBy(breaks, floor, 0))).toEqual([])
  })
})

describe("a floor that is too long", () => {
  it("is told where to write the break, and so written it is laid in two fields", () => {
    const [told] = runFindings(long({}))
    expect(told!.message).toContain("8,000 mm")
    expect(told!.mend).toContain("breaks: [{ wall: 1, fromLeft: 4500 }]")
    expect(runFindings(long({ breaks: [{ wall: 1, fromLeft: 4500 }] }))).toEqual([])
  })

  it("no piece comes nearer to the line than the gap; every board is followed", () => {
    const task = long({ breaks: [{ wall: 1, fromLeft: 4500 }] })
    const plan = planFloor(task).plan!
    expect(breakFaults(plan.layout, plan.breaks, plan.movement.gap)).toEqual([])
    expect(breakFaults(plan.layout, plan.breaks, plan.movement.gap + 1)).not.toEqual([])
    const { start, end } = plan.direction.wall
    const rows = {
      floor: plan.area.laid,
      from: { start, end },
      board: plan.layout.board,
      limits: plan.layout.limits,
    }
    expect(faults(rows, plan.layout)).toEqual([])
    expect(plan.layout.rows.every((row) => row.runs.length === 2)).toBe(true)
  })

  it("movement and gap are those of a field: half the length, half of what the rule asks by the metre", () => {
    const whole = planFloor(long({})).plan!.movement
    const parted = planFloor(long({ breaks: [{ wall: 1, fromLeft: 4500 }] })).plan!.movement
    expect([whole.along, parted.along]).toEqual([9000, 4500])
    expect(parted.byRule).toBeLessThan(whole.byRule)
  })

  it("a floor held at both ends is laid with a break between them", () => {
    const codes = (input: Record<string, unknown>) => planFloor(long(input)).findings.map(({ code }) => code)
    expect(codes({ heldAlong: [2, 4] })).toContain("floor-held-twice")
    expect(codes({ heldAlong: [2, 4], breaks: [{ wall: 1, fromLeft: 4500 }] })).not.toContain(
      "floor-held-twice",
    )
  })
})

describe("a floor that is too wide", () => {
  const task = floorTask({
    room: sized(4000, 7000),
    input: { along: 1, breaks: [{ wall: 2, fromLeft: 3600 }] },
    products: [board, underlay],
  })
  const plan = planFloor(task).plan!

  it("has a setting of its rows of its own beyond the break, and a second line to strike", () => {
    const lines = firstLines(plan)
    expect(lines).toHaveLength(2)
    expect(lines[1]!.from).toBeGreaterThan(3600 + plan.movement.gap)
    const { start, end } = plan.direction.wall
    const rows = {
      floor: plan.area.laid,
      from: { start, end },
      board: plan.layout.board,
      limits: plan.layout.limits,
    }
    expect(faults(rows, plan.layout)).toEqual([])
    expect(breakFaults(plan.layout, plan.breaks, plan.movement.gap)).toEqual([])
    const edges = plan.layout.rows.flatMap((row) =>
      row.runs.flatMap((run) => [run.widths.left, run.widths.right]),
    )
    expect(Math.min(...edges)).toBeGreaterThanOrEqual(60)
  })

  it("the sheet says where break and second line lie", () => {
    const text = JSON.stringify(floorSheets(task, floorWork(task)))
    expect(text).toContain(
      "Break 1: strike a line square to wall 2, 3,600 mm from its left end, 4,000 mm long",
    )
    expect(text).toContain("Beyond the break strike another line")
  })
})

describe("the profile over a break", () => {
  const breaks = [{ wall: 1, fromLeft: 4500 }]
  const codes = (products: Product[], written: unknown = breaks) =>
    planFloor(long({ breaks: written }, products)).findings.map(({ code }) => code)

  it("is a piece to be cut, from wall to wall", () => {
    const { pieces, quantities } = floorWork(long({ breaks }, [profile(60, 3300)]))
    expect(pieces).toMatchObject([{ mark: "R1-F1", product: "profile", wall: 1 }])
    expect(pieces[0]!.length).toBeCloseTo(3000, 6)
    expect(quantities.some((line) => line.what.startsWith("movement profile"))).toBe(false)
  })

  it("3,000 from wall to wall is cut in two of 1,500 where lengths are 2,700", () => {
    const { pieces } = floorWork(long({ breaks }, [profile(60)]))
    expect(pieces.map(({ mark, length }) => [mark, Math.round(length)])).toEqual([
      ["R1-F1a", 1500],
      ["R1-F1b", 1500],
    ])
  })

  it("where none is chosen it is told in metres, with a warning", () => {
    const { pieces, quantities, findings } = floorWork(long({ breaks }))
    expect(pieces).toEqual([])
    expect(quantities.find((line) => line.what === "movement profile over break 1")!.net).toBeCloseTo(3, 6)
    expect(findings.map(({ code }) => code)).toContain("floor-no-break-profile")
  })

  /* Gap 10 on both sides, opening a little more as the boards dry, and 5 of bearing on each: more than 30. */
  it("must cover both gaps at their widest and lie on the boards", () => {
    expect(codes([profile(30)])).toContain("floor-break-not-covered")
    expect(codes([profile(60)])).not.toContain("floor-break-not-covered")
  })

  it("a break off its wall, along no wall, or that parts nothing", () => {
    expect(codes([profile(60)], [{ wall: 1, fromLeft: 9500 }])).toContain("floor-break-off-wall")
    expect(codes([profile(60)], [{ wall: 9, fromLeft: 500 }])).toContain("floor-no-such-wall")
    const well = {
      id: "well",
      name: "stair well",
      wall: 3,
      fromLeft: 4000,
      off: 500,
      width: 1000,
      depth: 1000,
    }
    const around = floorTask({
      room: { ...sized(9000, 3000), holes: [{ ...well, floored: false }] },
      input: { along: 1, breaks: [{ wall: 1, fromLeft: 4500 }] },
    })
    expect(planFloor(around).findings.map(({ code }) => code)).toContain("floor-break-parts-nothing")
  })
})
