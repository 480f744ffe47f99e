import type { Mm } from "../../../kernels/units.ts"
import type { RuleEntry } from "../../../rulebook/entry.ts"
import type { RulesRead } from "../rules-read.ts"

/** A size that leaves are sold in, mm. */
export interface LeafSize {
  width: Mm
  height: Mm
}

const usual = [
  { id: "door-leaf-457x1981", width: 457, height: 1981 },
  { id: "door-leaf-533x1981", width: 533, height: 1981 },
  { id: "door-leaf-610x1981", width: 610, height: 1981 },
  { id: "door-leaf-686x1981", width: 686, height: 1981 },
  { id: "door-leaf-762x1981", width: 762, height: 1981 },
  { id: "door-leaf-838x1981", width: 838, height: 1981 },
  { id: "door-leaf-864x1981", width: 864, height: 1981 },
  { id: "door-leaf-813x2032", width: 813, height: 2032 },
  { id: "door-leaf-526x2040", width: 526, height: 2040 },
  { id: "door-leaf-626x2040", width: 626, height: 2040 },
  { id: "door-leaf-726x2040", width: 726, height: 2040 },
  { id: "door-leaf-826x2040", width: 826, height: 2040 },
  { id: "door-leaf-926x2040", width: 926, height: 2040 },
] as const

/** Leaf sizes as rulebook entries: the width of each, the height in its range. */
export const leafSizeRules: RuleEntry[] = usual.map(({ id, width, height }) => ({
  id,
  what: `width of a leaf sold ${height} high`,
  value: width,
  unit: "mm",
  range: `internal leaves, England and Wales, height ${height}`,
  status: "common practice",
  source: null,
}))

/** The sizes leaves are sold in, narrowest first. */
export function leafSizes(rules: RulesRead): LeafSize[] {
  return usual.map(({ id, height }) => ({ width: rules.value(id), height })).sort((a, b) => a.width - b.width)
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
