import type { Mm } from "../../../kernels/units.ts"
import type { RuleEntry } from "../../../rulebook/entry.ts"
import type { Rules } from "../../../rulebook/rules.ts"

/** A size that leaves are sold in, mm. */
export interface LeafSize {
  width: Mm
  height: Mm
}

const usual: LeafSize[] = [
  ...[457, 533, 610, 686, 762, 838, 864].map((width) => ({ width, height: 1981 })),
  { width: 813, height: 2032 },
  ...[526, 626, 726, 826, 926].map((width) => ({ width, height: 2040 })),
]

/** Leaf sizes as rulebook entries: the width of each, the height in its range. */
export const leafSizeRules: RuleEntry[] = usual.map(({ width, height }) => ({
  id: `door-leaf-${width}x${height}`,
  what: `width of a leaf sold ${height} high`,
  value: width,
  unit: "mm",
  range: `internal leaves, England and Wales, height ${height}`,
  status: "common practice",
  source: null,
}))

/** The sizes leaves are sold in, narrowest first. */
export function leafSizes(rules: Rules): LeafSize[] {
  return usual
    .map(({ width, height }) => ({ width: rules.value(`door-leaf-${width}x${height}`), height }))
    .sort((a, b) => a.width - b.width)
}

/**
 * The widest usual leaf that goes into an opening with the least gaps untrimmed, and not with wider gaps than allowed at its narrowest.
 * @param opening narrowest width between linings, mm
 * @returns null where none fits as sold
 */
export function leafSizeFor(
  opening: Mm,
  gap: { least: Mm; most: Mm },
  sizes: readonly LeafSize[],
): LeafSize | null {
  const fitting = sizes.filter(
    ({ width }) => width + 2 * gap.least <= opening && width + 2 * gap.most >= opening,
  )
  return fitting.at(-1) ?? null
}
