import { expect, it } from "vitest"
import { chartPages } from "../../src/sheets/bar-chart.ts"
import { smallResult } from "../fixtures/small-job.ts"

it("draws work inside its day's column, however short", async () => {
  const result = await smallResult()
  const [page] = chartPages(result)
  const shapes = page?.kind === "drawing" ? page.drawing.shapes : []
  const bars = shapes.flatMap((shape) => (shape.kind === "box" && shape.fill === "black" ? [shape] : []))
  // One day is 100 units wide; the small job works from Monday 1 to Wednesday 3 March 2027.
  expect(new Set(bars.map((bar) => Math.floor(bar.at.x / 100)))).toEqual(new Set([0, 1, 2]))
  for (const bar of bars) expect(bar.width).toBeGreaterThanOrEqual(9)
})
