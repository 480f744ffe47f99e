import { distance } from "../kernels/polygon/point.ts"
import { solveOutline } from "../kernels/traverse/solve-outline.ts"
import type { Check, Run } from "../kernels/traverse/survey.ts"
import type { Mm } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"

/** A shape of room as people meet it, with the check lengths that fix it: corner to corner, corner n the left end of wall n. */
export interface ShapeToTape {
  name: string
  corners: number
  checks: { from: number; to: number }[]
}

/** A usual tape, for planning what to tape, mm. */
const tape: Mm = 3

/**
 * The check lengths that fix an outline, the most telling first, where turns are only assumed: added one by one until no
 * distance between corners is more open than the rulebook allows. At least one, unless the outline is a triangle.
 */
export function checksToTape(
  runs: readonly Pick<Run, "length" | "turn">[],
  rules: Rules,
): { from: number; to: number }[] {
  const checks: Check[] = []
  for (;;) {
    const { fixed, needs, corners } = solveOutline({
      runs,
      checks,
      tolerances: {
        length: tape,
        assumedTurn: rules.value("survey-assumed-turn"),
        measuredTurn: rules.value("survey-measured-turn"),
        ...(checks.length > 0 ? { shape: rules.value("survey-shape-looseness") } : {}),
      },
    })
    const next = needs[0]
    if (fixed || !next) return checks.map(({ from, to }) => ({ from: from + 1, to: to + 1 }))
    checks.push({ ...next, length: distance(corners[next.from]!, corners[next.to]!) })
  }
}

/** Usual shapes of rooms with what to tape in each; sizes are those of a middling room. */
export function usualShapes(rules: Rules): ShapeToTape[] {
  return usual.map(({ name, runs }) => ({
    name,
    corners: runs.length,
    checks: checksToTape(
      runs.map(([length, turn]) => ({ length, turn })),
      rules,
    ),
  }))
}

const usual: { name: string; runs: [Mm, number][] }[] = [
  {
    name: "Four sides",
    runs: [
      [4000, 90],
      [3000, 90],
      [4000, 90],
      [3000, 90],
    ],
  },
  {
    name: "L, the inside corner at the left end of wall 5",
    runs: [
      [4000, 90],
      [3000, 90],
      [1500, 90],
      [1200, -90],
      [2500, 90],
      [1800, 90],
    ],
  },
  {
    name: "Breast in the wall opposite the door (walls 4 to 6)",
    runs: [
      [4000, 90],
      [3500, 90],
      [1300, 90],
      [350, -90],
      [1400, -90],
      [350, 90],
      [1300, 90],
      [3500, 90],
    ],
  },
  {
    name: "Three-sided bay opposite the door (walls 4 to 6)",
    runs: [
      [4000, 90],
      [3500, 90],
      [1000, -45],
      [849, 45],
      [800, 45],
      [849, -45],
      [1000, 90],
      [3500, 90],
    ],
  },
]
