import { describe, expect, it } from "vitest"
import { drawingSvg } from "../../../src/kernels/drawing/svg.ts"
import { printPdf } from "../../../src/press/print.ts"
import { describe as inWords, wallElevationDrawing } from "../../../src/survey/drawings/wall-elevation.ts"
import { rulesOf } from "../../fixtures/rooms.ts"
import { openPdf } from "../../press/inspect/open.ts"
import { htmlFile, withTestPress } from "../../press/inspect/press.ts"
import { overlappingText } from "../../press/inspect/text.ts"
import { demoRoom } from "../demo.ts"
import { straightLines } from "./paths.ts"

const options = { floor: 19, datum: "deck", rules: rulesOf() }

describe("wallElevationDrawing", () => {
  const room = demoRoom("A1")
  const drawing = wallElevationDrawing(room, room.walls[0]!, options)

  it("carries length, heights of both ends and of the flat, openings with sizes, datum and headroom lines", () => {
    const texts = drawing.shapes.flatMap((shape) => ("text" in shape ? [shape.text] : []))
    for (const text of [
      "4,860",
      "940",
      "980",
      "2,310",
      "D1\n845 × 2,055",
      "deck 0",
      "1.5 m",
      "2.0 m",
      "cable",
    ])
      expect(texts).toContain(text)
  })

  it("is told in words too", () => {
    expect(inWords(room.walls[0]!)).toBe(
      "Wall 1 from inside, 4,860 mm long, 940 to 2,310 mm high, with D1, D3.",
    )
  })

  it("measures right on the printed paper: within 0.2 mm at the stated scale", async () => {
    // Wall 1 was taped 4,860 and stands so within the tape's 3 mm: at 1:50 it is 97.2 mm on paper, its right end 980 / 50 = 19.6 mm.
    const { svg } = drawingSvg(drawing, { scale: 50 })
    await withTestPress(async (press, folder) => {
      const { pdf } = await printPdf(press, htmlFile(folder, svg), { contentWidth: 180 })
      const open = await openPdf(pdf)
      const lines = await straightLines(open, 1)
      const near = (length: number, upright: boolean) =>
        lines.filter(
          ({ dx, dy }) =>
            Math.abs(Math.hypot(dx, dy) - length) < 0.2 && (upright ? Math.abs(dx) : Math.abs(dy)) < 0.01,
        )
      expect(near(4860 / 50, false).length).toBeGreaterThan(0)
      expect(near(980 / 50, true).length).toBeGreaterThan(0)
      expect(near(4860 / 50 + 1, false)).toEqual([])
      expect(await overlappingText(open)).toEqual([])
    })
  })
})
