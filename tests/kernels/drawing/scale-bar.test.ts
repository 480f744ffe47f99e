import { expect, it } from "vitest"
import { standardScales } from "../../../src/kernels/drawing/scale.ts"
import { scaleBarMarks } from "../../../src/kernels/drawing/scale-bar.ts"

it.each(standardScales.map((scale) => ({ scale })))(
  "a bar at 1:$scale is as long as its figure says",
  ({ scale }) => {
    const { marks, labels } = scaleBarMarks({ x: 0, y: 0 }, scale)
    const right = Math.max(...marks.flatMap((mark) => mark.lines.flat()).map((point) => point.x))
    const [figure, unit] = labels[2]!.text.split(" ")
    const real = Number(figure) * (unit === "m" ? 1000 : 1)
    expect(right * scale).toBeCloseTo(real, 9)
    expect(right).toBeLessThanOrEqual(60)
    expect(right).toBeGreaterThanOrEqual(20)
    expect(labels[3]!.text).toBe(`1:${scale}`)
  },
)
