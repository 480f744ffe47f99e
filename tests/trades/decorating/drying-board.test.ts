import { describe, expect, it } from "vitest"
import { dryingBoard, timeText } from "../../../src/trades/decorating/drying-board.ts"
import { attic, moulding } from "./attic.ts"

describe("drying board", () => {
  const board = (facts = moulding) => dryingBoard(attic({}, facts))
  const rowsAt = (caption: string, facts = moulding) => {
    const table = board(facts).blocks.find(
      (block) => block.kind === "table" && block.caption.includes(caption),
    )
    return table?.kind === "table" ? table.rows.map((row) => row.cells) : []
  }

  it("emulsion at 60 %: do not at 8 °C, then 7, 6, 4 and 4 hours (4 h doubled for each 10 °C below 20, rounded up)", () => {
    // 12 °C: 4 x 2^0.8 = 6.96; 16 °C: 4 x 2^0.4 = 5.28; 20 and 24 °C: 4.
    expect(rowsAt("60 %").find((cells) => cells[0] === "Emulsion")).toEqual([
      "Emulsion",
      "next coat",
      "do not",
      "7 h",
      "6 h",
      "4 h",
      "4 h",
    ])
  })

  it("emulsion at 80 %: twice as long", () => {
    expect(
      rowsAt("80 %")
        .find((cells) => cells[0] === "Emulsion")!
        .slice(3),
    ).toEqual(["14 h", "11 h", "8 h", "8 h"])
  })

  it("lists floor oil on oak and grout on tile, and has a place to write in for each", () => {
    const on = (floorFinish: string) =>
      rowsAt("Started", { ...moulding, floorFinish }).map((cells) => cells[0])
    expect(on("oak").join()).toMatch(/Floor oil/)
    expect(on("tile").join()).toMatch(/Grout/)
    expect(on("carpet").join()).not.toMatch(/Floor oil|Grout/)
    expect(rowsAt("60 %").length).toBe(rowsAt("Started").length)
  })

  it("times are rounded up, minutes under an hour, days when long", () => {
    expect([0.5, 1.01, 71.2, 72, 85, "do not" as const].map(timeText)).toEqual([
      "30 min",
      "2 h",
      "72 h",
      "3 days",
      "4 days",
      "do not",
    ])
  })
})
