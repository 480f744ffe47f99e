import { describe, expect, it } from "vitest"
import { layoutDrawing } from "../../../src/kernels/drawing/layout.ts"
import type { Block } from "../../../src/kernels/paper.ts"
import { floorSheets } from "../../../src/trades/floors/sheet.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { doorBetween, floorTask } from "./fixture.ts"

const task = floorTask({
  room: {
    doors: [{ door: "D1", wall: 1, fromLeft: 1500 }],
    holes: [
      {
        id: "well",
        name: "stair well",
        wall: 3,
        fromLeft: 1000,
        off: 0,
        width: 900,
        depth: 700,
        floored: false,
      },
    ],
    hidden: [{ what: "pipe", in: "floor", wall: 2, fromLeft: 900, to: 1500, note: "radiator tails" }],
    readings: [
      { on: "2027-02-01", what: "deck", value: 11, instrument: "pin meter", place: "centre" },
      { on: "2027-02-01", what: "air-humidity", value: 71, instrument: "logger" },
    ],
  },
  doors: [doorBetween()],
  storey: { joists: { alongWallOf: "R1", wall: 2, centres: 400, firstFrom: 100 } },
})
const work = floorWork(task)
const [sheet] = floorSheets(task, work)
const of = <K extends Block["kind"]>(kind: K) =>
  sheet!.blocks.filter((block): block is Extract<Block, { kind: K }> => block.kind === kind)

describe("the floor sheet", () => {
  it("may be hosted, names room and datum, and rests on what the work rests on", () => {
    expect(sheet).toMatchObject({
      kind: "floor",
      room: "R1",
      trade: "floors",
      hosted: true,
      rests: work.rests,
    })
    expect(sheet!.datum).toContain("bare deck")
  })

  it("key figures are those of the work", () => {
    const figures = of("figures")[0]!.items
    const value = (label: string) => figures.find((item) => item.label === label)!.value
    expect(value("Boards")).toBe(String(work.results.boards))
    expect(value("Gap all round")).toBe("10")
    expect(value("Build-up")).toBe("19")
    expect(value("Undercut linings")).toBe("20")
  })

  it("one line a run, as many pieces as are laid, every offcut used is kept before", () => {
    const table = of("table").find((block) => block.caption.startsWith("Rows"))!
    const rows = work.results.rows as { row: string; pieces: { from: string; length: number }[] }[]
    expect(table.rows.map((row) => row.cells[0])).toEqual(rows.map((row) => row.row))
    const kept = new Set<string>()
    table.rows.forEach((row, index) => {
      for (const piece of rows[index]!.pieces) {
        const source = piece.from
        if (source !== "new board" && !row.cells[8]!.includes(source)) expect([...kept]).toContain(source)
      }
      for (const mark of row.cells[8]!.split(", ")) kept.add(mark.replace(" (spare)", ""))
    })
  })

  it("a reading out of limits is warned of and stands out; there is room for more", () => {
    expect(of("warning")[0]!.items.join()).toContain("71 %")
    const readings = of("table").find((block) => block.caption === "Readings")!
    expect(readings.rows.filter((row) => row.as === "hold").map((row) => row.cells[5])).toEqual(["OUT"])
    expect(readings.rows.filter((row) => row.cells[2] === "")).toHaveLength(6)
  })

  it("hidden pipes, doorway line, joists and signatures are there", () => {
    const lists = of("list")
      .flatMap((block) => block.items)
      .join("\n")
    expect(lists).toContain("pipe in the floor at wall 2, 900 to 1,500")
    expect(lists).toContain("Doorway D1 in wall 1: floor ends 22 mm behind")
    expect(of("table").some((block) => block.caption.startsWith("Screws by joist"))).toBe(true)
    expect(of("sign")).toHaveLength(1)
  })

  it("the drawing shows every piece and row name and lays out on paper", () => {
    const { drawing } = of("drawing")[0]!
    const texts = drawing.shapes.filter((shape) => shape.kind === "text").map((shape) => shape.text)
    for (const row of work.results.rows as { row: string }[]) expect(texts).toContain(row.row)
    for (const wall of task.room.walls) expect(texts).toContain(String(wall.number))
    const { box } = layoutDrawing(drawing, 50)
    expect(box.right - box.left).toBeLessThan(180)
  })

  it("no text carries an unrounded figure", () => {
    expect(JSON.stringify(sheet!.blocks.filter((block) => block.kind !== "drawing"))).not.toMatch(
      /\d\.\d{4,}|NaN|undefined/,
    )
  })

  it("there is none where no floor is laid", () => {
    const staying = floorTask({ input: { finish: "stays" } })
    expect(floorSheets(staying, floorWork(staying))).toEqual([])
  })
})
