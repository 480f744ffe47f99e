import { describe, expect, it } from "vitest"
import { programmeSheet, visitSheets } from "../../src/sheets/programme-sheets.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf, columnsOf } from "./sheets.ts"

describe("the bar chart", () => {
  it("has a bar for each step, a hatch for each wait, and every day of its weeks", async () => {
    const sheet = programmeSheet(await smallResult())
    const drawings = sheet?.blocks.flatMap((block) => (block.kind === "drawing" ? [block.drawing] : [])) ?? []
    expect(drawings).toHaveLength(1)
    const shapes = drawings[0]?.shapes ?? []
    const filled = shapes.filter((shape) => shape.kind === "box" && shape.fill === "black")
    expect(filled.length).toBeGreaterThanOrEqual(3)
    expect(shapes.filter((shape) => shape.kind === "hatch")).toHaveLength(1)
    const days = shapes.flatMap((shape) =>
      shape.kind === "text" && /^\d+$/.test(shape.text) ? [shape.text] : [],
    )
    expect(days).toEqual(["1", "2", "3", "4", "5", "6", "7"])
  })

  it("shades the days on which nobody works", async () => {
    const sheet = programmeSheet(await smallResult())
    const shapes =
      sheet?.blocks.flatMap((block) => (block.kind === "drawing" ? block.drawing.shapes : [])) ?? []
    const shaded = shapes.flatMap((shape) =>
      shape.kind === "box" && shape.fill === "light" ? [shape.at.x] : [],
    )
    expect(shaded).toHaveLength(2)
    expect(shaded[1]! - shaded[0]!).toBeGreaterThan(0)
  })

  it("is no sheet where nothing is done", async () => {
    const result = await smallResult()
    expect(programmeSheet({ ...result, programme: { ...result.programme, steps: [] } })).toBeNull()
  })
})

describe("a crew's visits", () => {
  it("name room, step, start and why not sooner, one sheet a crew", async () => {
    const [sheet, ...more] = visitSheets(await smallResult())
    expect(more).toEqual([])
    expect(sheet).toMatchObject({ kind: "trade-visits", part: "joiners", title: "Visits: joiners" })
    expect(columnsOf(sheet, ["Room", "Start"])).toEqual([
      ["C2", "Mon 1 Mar 08:00"],
      ["C2", "Wed 3 Mar 08:30"],
    ])
    const words = cellsOf(sheet).map((cells) => cells.join(" "))
    expect(words[0]).toContain("Lay")
    expect(words[1]).toContain("Fix; Oil")
    expect(words[1]).toContain("Lay (C2) and glue set")
  })
})
