import { OPS } from "pdfjs-dist/legacy/build/pdf.mjs"
import type { OpenPdf } from "../../press/inspect/open.ts"

type Matrix = [number, number, number, number, number, number]

/** A straight stretch of a drawn path on the paper, mm to the right and up. */
export interface StraightLine {
  dx: number
  dy: number
}

/** Codes of the steps in a path as pdf.js lists them. */
const step = { move: 0, line: 1, curve: 2, quadratic: 3, close: 4 } as const
const pointsInMm = 25.4 / 72

/** Every straight stretch of every path drawn on a page, after all scaling: what a ruler on the paper would measure. */
export async function straightLines(pdf: OpenPdf, page: number): Promise<StraightLine[]> {
  const { fnArray, argsArray } = await (await pdf.getPage(page)).getOperatorList()
  let matrix: Matrix = [1, 0, 0, 1, 0, 0]
  const kept: Matrix[] = []
  const lines: StraightLine[] = []
  fnArray.forEach((operator, index) => {
    const args: unknown[] = argsArray[index] ?? []
    if (operator === OPS.save) kept.push(matrix)
    else if (operator === OPS.restore) matrix = kept.pop() ?? matrix
    else if (operator === OPS.transform) matrix = times(matrix, args as unknown as Matrix)
    else if (operator === OPS.constructPath) lines.push(...stretches(args, matrix))
  })
  return lines
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ]
}

function stretches([, paths]: unknown[], [a, b, c, d, e, f]: Matrix): StraightLine[] {
  const on = (x: number, y: number) =>
    [(a * x + c * y + e) * pointsInMm, (b * x + d * y + f) * pointsInMm] as const
  const lines: StraightLine[] = []
  for (const path of (paths as (Float32Array | null)[]) ?? []) {
    if (!path) continue
    let [first, at] = [on(0, 0), on(0, 0)]
    const to = (next: readonly [number, number]) => {
      lines.push({ dx: next[0] - at[0], dy: next[1] - at[1] })
      at = next
    }
    for (let index = 0; index < path.length; ) {
      const code = path[index]
      const point = (after: number) => on(path[index + after]!, path[index + after + 1]!)
      if (code === step.move) {
        first = point(1)
        at = first
        index += 3
      } else if (code === step.line) {
        to(point(1))
        index += 3
      } else if (code === step.curve) {
        at = point(5)
        index += 7
      } else if (code === step.quadratic) {
        at = point(3)
        index += 5
      } else {
        to(first)
        index += 1
      }
    }
  }
  return lines
}
