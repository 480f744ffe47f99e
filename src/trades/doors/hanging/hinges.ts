import type { Kilograms, Mm } from "../../../kernels/units.ts"
import type { DoorInputs } from "../inputs.ts"
import type { RulesRead } from "../rules-read.ts"

/** Mass of a leaf as its hinges feel it. */
export interface AdjustedMass {
  leaf: Kilograms
  /** Each share added, in per cent; they add up, they do not multiply. */
  added: { what: string; percent: number }[]
  adjusted: Kilograms
}

/** Hinges of one leaf. */
export interface Hinges {
  count: number
  length: Mm
  /** From the top of the leaf as hung to the top of each hinge, mm, from the top down. */
  tops: Mm[]
  grade: number | null
  /** Depth of the recess of one flap: the flap, and a pad under it where the certificate asks, mm. */
  recess: Mm
  mass: AdjustedMass
  /** A hinge that lies in a zone it must keep off. */
  clashes: { top: Mm; zone: HingeZone }[]
}

/** A zone of the hinge edge, from the top of the leaf, mm. */
export interface HingeZone {
  from: Mm
  to: Mm
  what: string
}

/** A leaf as its hinges see it. */
export interface HingeCase {
  width: Mm
  height: Mm
  thickness: Mm
  mass: Kilograms
  fire: boolean
  external: boolean
  closer: boolean
  work: Pick<DoorInputs, "backcheck" | "heavyUse" | "hingeLength" | "hingeThickness" | "certificate">
  zones: readonly HingeZone[]
}

/** Grades for doors, from the weakest up. */
const grades = [
  { grade: 4, id: "door-hinge-grade-4" },
  { grade: 7, id: "door-hinge-grade-7" },
  { grade: 10, id: "door-hinge-grade-10" },
  { grade: 11, id: "door-hinge-grade-11" },
  { grade: 12, id: "door-hinge-grade-12" },
  { grade: 13, id: "door-hinge-grade-13" },
  { grade: 14, id: "door-hinge-grade-14" },
] as const
/** Steps by which the middle hinge is moved in search of a free place, mm. */
const searchStep: Mm = 1

/** Number, length, grade and places of the hinges of a leaf as hung. */
export function hingesOf(about: HingeCase, rules: RulesRead): Hinges {
  const mass = adjustedMass(about, rules)
  const count = Math.max(hingeCount(about, rules), about.work.certificate?.hinges ?? 0)
  const length = about.work.hingeLength ?? hingeLength(about, rules)
  const tops = hingeTops({ ...about, count, length }, rules)
  const clear = rules.value("door-hinge-clear")
  const clashes = tops.flatMap((top) =>
    about.zones.filter((zone) => overlaps(top, length, zone, clear)).map((zone) => ({ top, zone })),
  )
  const grade = hingeGrade(mass.adjusted, about.fire, rules)
  return { count, length, tops, grade, recess: recessDepth(about, rules), mass, clashes }
}

/**
 * Leaf mass with what a closer, a wide leaf and hard use add, as per cent of the leaf's own mass that add up.
 * A leaf less than twice as high as wide adds (2 - height / width) x 100 % (hinge guides after BS EN 1935).
 */
export function adjustedMass(
  about: Pick<HingeCase, "width" | "height" | "mass" | "closer" | "work">,
  rules: RulesRead,
): AdjustedMass {
  const added: AdjustedMass["added"] = []
  const slender = rules.value("door-mass-slender")
  const shape = about.height / about.width
  if (shape < slender) added.push({ what: "wide for its height", percent: (slender - shape) * 100 })
  if (about.closer) {
    const id = about.work.backcheck ? "door-mass-backcheck" : "door-mass-closer"
    const what = about.work.backcheck ? "closer with backcheck" : "closer"
    added.push({ what, percent: rules.value(id) })
  }
  if (about.work.heavyUse) added.push({ what: "hard use", percent: rules.value("door-mass-heavy-use") })
  const percent = added.reduce((sum, each) => sum + each.percent, 0)
  return { leaf: about.mass, added, adjusted: about.mass * (1 + percent / 100) }
}

/** How many hinges: two for a light small leaf, three for one over 20 kg, outside or fire-resisting, four for a very tall or wide one. */
export function hingeCount(
  about: Pick<HingeCase, "width" | "height" | "mass" | "fire" | "external">,
  rules: RulesRead,
): number {
  const { width, height } = about
  if (width > rules.value("door-three-hinges-width") || height > rules.value("door-three-hinges-height")) {
    return rules.value("door-hinges-tall")
  }
  const isLight = about.mass <= rules.value("door-two-hinges-mass")
  const isSmall =
    width <= rules.value("door-two-hinges-width") && height <= rules.value("door-two-hinges-height")
  const isPlain = !about.fire && !about.external
  return isLight && isSmall && isPlain ? rules.value("door-hinges-few") : rules.value("door-hinges-usual")
}

/** The weakest grade that carries the adjusted mass, never under the one asked for fire doors; null if none carries it. */
export function hingeGrade(adjusted: Kilograms, fire: boolean, rules: RulesRead): number | null {
  const floor = fire ? rules.value("door-hinge-grade-fire") : 0
  const carrying = grades.find(({ grade, id }) => grade >= floor && adjusted <= rules.value(id))
  return carrying?.grade ?? null
}

/**
 * Tops of the hinges from the top of the leaf. Upper and lower at their usual places; a third in the middle, or under the upper
 * one where a closer pulls; more are spread evenly. A hinge between the two moves to the nearest place clear of every zone.
 */
export function hingeTops(
  about: Pick<HingeCase, "height" | "closer" | "zones"> & { count: number; length: Mm },
  rules: RulesRead,
): Mm[] {
  const { height, length, count } = about
  const first = rules.value("door-hinge-from-top")
  const last = height - rules.value("door-hinge-from-foot") - length
  if (count <= 2) return [first, last]
  const wished =
    about.closer && count === 3
      ? [first + rules.value("door-hinge-under-top")]
      : Array.from({ length: count - 2 }, (_, n) =>
          Math.round(first + ((last - first) * (n + 1)) / (count - 1)),
        )
  const clear = rules.value("door-hinge-clear")
  const placed: Mm[] = [first]
  for (const top of wished) placed.push(freeTop(top, { first, last, length, clear, zones: about.zones }))
  return [...placed, last]
}

interface Between {
  first: Mm
  last: Mm
  length: Mm
  clear: Mm
  zones: readonly HingeZone[]
}

function freeTop(wished: Mm, about: Between): Mm {
  const { first, last, length, clear, zones } = about
  const low = first + length + clear
  const high = last - length - clear
  for (let off = 0; off <= high - low; off += searchStep) {
    const free = [wished - off, wished + off].find(
      (top) => top >= low && top <= high && !zones.some((zone) => overlaps(top, length, zone, clear)),
    )
    if (free !== undefined) return free
  }
  return wished
}

function overlaps(top: Mm, length: Mm, zone: HingeZone, clear: Mm): boolean {
  return top < zone.to + clear && top + length > zone.from - clear
}

function recessDepth(about: Pick<HingeCase, "thickness" | "fire" | "work">, rules: RulesRead): Mm {
  const { certificate, hingeThickness } = about.work
  const flap =
    hingeThickness ?? rules.value(isHeavy(about, rules) ? "door-hinge-flap-heavy" : "door-hinge-flap")
  return flap + (certificate?.pads ? rules.value("door-pad-thickness") : 0)
}

function hingeLength(about: Pick<HingeCase, "thickness" | "fire">, rules: RulesRead): Mm {
  return rules.value(isHeavy(about, rules) ? "door-hinge-length-heavy" : "door-hinge-length")
}

function isHeavy(about: Pick<HingeCase, "thickness" | "fire">, rules: RulesRead): boolean {
  return about.fire || about.thickness >= rules.value("door-hinge-heavy-from")
}
