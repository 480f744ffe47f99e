import { layoutDrawing } from "../../../src/kernels/drawing/layout.ts"
import { boxCorners } from "../../../src/kernels/drawing/marks.ts"
import type { Drawing } from "../../../src/kernels/drawing/shapes.ts"
import { intersection } from "../../../src/kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../../../src/kernels/polygon/measure.ts"
import { regionOf } from "../../../src/kernels/polygon/region.ts"

/** Pairs of labels of a drawing that lie over one another by more than a hundredth of a square millimetre, at a scale. */
export function overlappingLabels(drawing: Drawing, scale: number): string[] {
  const labels = layoutDrawing(drawing, scale).labels.map(({ text, box }) => {
    const corners = boxCorners(box)
    return { text, corners, bounds: boundsOf(corners) }
  })
  return labels.flatMap((one, index) =>
    labels.slice(index + 1).flatMap((other) => {
      const [a, b] = [one.bounds, other.bounds]
      if (a.right <= b.left || b.right <= a.left || a.top <= b.bottom || b.top <= a.bottom) return []
      const shared = intersection([regionOf(one.corners)], [regionOf(other.corners)])
      const area = shared.reduce((sum, region) => sum + regionArea(region), 0)
      return area > 0.01 ? [`${drawing.title} at 1:${scale}: ${one.text} over ${other.text}`] : []
    }),
  )
}

/** Figures of a drawing that are no numbers. */
export function badFigures(drawing: Drawing): boolean {
  return /null|NaN|Infinity/.test(JSON.stringify(drawing.shapes))
}
