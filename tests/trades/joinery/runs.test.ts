import { describe, expect, it } from "vitest"
import { runsOfRoom, wellsAlong } from "../../../src/trades/joinery/runs.ts"
import { surveyed } from "../../fixtures/rooms.ts"

const task = { thickness: 18, scribed: 120, without: [], stops: [] }

describe("runs of skirting", () => {
  it("are one a wall in a plain room", () => {
    expect(
      runsOfRoom({ ...task, room: surveyed() }).map((run) => [run.wall.number, run.from, run.to]),
    ).toEqual([
      [1, 0, 4000],
      [2, 0, 3000],
      [3, 0, 4000],
      [4, 0, 3000],
    ])
  })

  it("stop at architraves from both sides", () => {
    const stops = [{ wall: 1, outerFrom: 424, outerTo: 1344 }]
    const runs = runsOfRoom({ ...task, stops, room: surveyed() }).filter((run) => run.wall.number === 1)
    expect(runs.map((run) => [run.from, run.to, run.left.cut.as, run.right.cut.as])).toEqual([
      [0, 424, "scribed", "against-architrave"],
      [1344, 4000, "against-architrave", "square"],
    ])
  })

  it("leave out a wall along a stair well, where the string stands", () => {
    const room = surveyed({
      holes: [
        {
          id: "well",
          name: "stair well",
          wall: 3,
          fromLeft: 0,
          off: 0,
          width: 2050,
          depth: 870,
          floored: false,
        },
      ],
    })
    expect(wellsAlong(room.walls[2]!, room.holes)).toEqual([{ from: 0, to: 2050 }])
    expect(wellsAlong(room.walls[1]!, room.holes)).toEqual([{ from: 3000 - 870, to: 3000 }])
    expect(wellsAlong(room.walls[0]!, room.holes)).toEqual([])
    const runs = runsOfRoom({ ...task, room })
    expect(runs.map((run) => [run.wall.number, run.from, run.to])).toEqual([
      [1, 0, 4000],
      [2, 0, 2130],
      [3, 2050, 4000],
      [4, 0, 3000],
    ])
    expect([runs[1]!.right.cut.as, runs[2]!.left.cut.as]).toEqual(["square", "square"])
  })

  it("run on behind a cupboard that has a floor", () => {
    const room = surveyed({
      holes: [
        { id: "c", name: "cupboard", wall: 3, fromLeft: 0, off: 0, width: 900, depth: 600, floored: true },
      ],
    })
    expect(runsOfRoom({ ...task, room })).toHaveLength(4)
  })

  it("are returned at an open edge and square beside a wall without skirting", () => {
    const room = surveyed({
      outline: [
        { length: 4000, turn: "right" },
        { length: 3000, turn: "right", is: "open-edge" },
        { length: 4000, turn: "right" },
        { length: 3000, turn: "right" },
      ],
    })
    const runs = runsOfRoom({ ...task, room, without: [4] })
    expect(runs.map((run) => [run.wall.number, run.left.cut.as, run.right.cut.as])).toEqual([
      [1, "square", "return"],
      [3, "return", "square"],
    ])
  })
})
