import type { DryingProcessId } from "../../rulebook/drying.ts"
import type { Stage } from "../stages.ts"
import type { PaintUse, SurfaceState } from "./inputs.ts"

/** One coat of a system. */
export interface Coat {
  key: CoatKey
  name: string
  stage: Stage
  use: PaintUse
  /** True for the coat that is thinned with water. */
  mist?: true
}

/** Every coat there is, in the order it goes on. */
export const coatOrder = [
  "mist",
  "bond",
  "block",
  "ceiling-1",
  "white",
  "ceiling-2",
  "colour-1",
  "colour-2",
  "colour-3",
  "prime",
  "undercoat",
  "finish",
  "clear-1",
  "clear-2",
  "clear-3",
  "clear-4",
  "colour-last",
] as const
export type CoatKey = (typeof coatOrder)[number]

interface PlasterTask {
  as: "wall" | "ceiling"
  state: SurfaceState
  wet: boolean
  /** Coats of the wall colour, the last one included: 1 to 4. */
  colourCoats: number
}

/**
 * Coats on plaster, in order. New plaster: mist, white, then the finishing coats; old gloss a bond coat and stains a
 * blocking coat first. Ceilings finish in white before second fix; walls keep their last coat until after it.
 */
export function plasterSystem({ as, state, wet, colourCoats }: PlasterTask): Coat[] {
  const finish: PaintUse =
    as === "ceiling" ? (wet ? "moistureWhite" : "ceilingWhite") : wet ? "moistureColour" : "wallColour"
  const first = firstCoats(state, as)
  if (as === "ceiling") {
    return [
      ...first,
      { key: "ceiling-1", name: "Ceiling, first coat", stage: "white", use: finish },
      { key: "ceiling-2", name: "Ceiling, last coat", stage: "white", use: finish },
    ]
  }
  return [
    ...first,
    ...earlier
      .slice(0, colourCoats - 1)
      .map(({ key, name }): Coat => ({ key, name, stage: "white", use: finish })),
    { key: "colour-last", name: "Wall colour, last coat", stage: "last-coat", use: finish },
  ]
}

/** Wall colour before its last coat. */
const earlier: { key: CoatKey; name: string }[] = [
  { key: "colour-1", name: "Wall colour, first coat" },
  { key: "colour-2", name: "Wall colour, second coat" },
  { key: "colour-3", name: "Wall colour, third coat" },
]

/** Clear coats by number. */
const clear: CoatKey[] = ["clear-1", "clear-2", "clear-3", "clear-4"]

/** Coats on painted wood, in order. */
export function woodSystem(state: "bare" | "primed" | "old-paint"): Coat[] {
  const prime: Coat[] =
    state === "bare" ? [{ key: "prime", name: "Knot and prime wood", stage: "fill", use: "primer" }] : []
  return [
    ...prime,
    { key: "undercoat", name: "Undercoat wood", stage: "woodwork", use: "undercoat" },
    { key: "finish", name: "Finish wood", stage: "woodwork", use: "trim" },
  ]
}

/** So many coats of clear finish (1 to 4) on wood left as wood. */
export function clearSystem(coats: number): Coat[] {
  return clear.slice(0, coats).map((key, index) => ({
    key,
    name: `Clear finish, coat ${index + 1}`,
    stage: "woodwork",
    use: "doorFinish",
  }))
}

/** The drying process of a coat, by its key and what its paint is thinned with. */
export function processOf(coat: Coat, base: "water" | "solvent" | "oil"): DryingProcessId {
  if (coat.key === "mist") return "mist"
  const wood = ["prime", "undercoat", "finish"].includes(coat.key)
  if (coat.key.startsWith("clear"))
    return base === "water" ? "varnish" : base === "oil" ? "oil" : "varnish-solvent"
  if (base !== "water") return "trim-solvent"
  return wood ? "trim-water" : "emulsion"
}

function firstCoats(state: SurfaceState, as: "wall" | "ceiling"): Coat[] {
  if (state === "new-plaster") {
    const mist: Coat = { key: "mist", name: "Mist coat", stage: "mist", use: "mist", mist: true }
    const white: Coat = { key: "white", name: "White on walls", stage: "white", use: "white" }
    return as === "wall" ? [mist, white] : [mist]
  }
  if (state === "old-gloss")
    return [{ key: "bond", name: "Bond coat on old gloss", stage: "white", use: "bond" }]
  if (state === "stained")
    return [{ key: "block", name: "Stain-blocking coat", stage: "white", use: "stainBlock" }]
  return []
}
