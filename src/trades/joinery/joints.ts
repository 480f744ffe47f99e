import type { Mm } from "../../kernels/units.ts"

/** A run to be jointed: its sawn ends along the wall, and what limits its parts. */
export interface JointTask {
  /** Long points of the whole run along the wall, mm from the wall's left end. */
  from: Mm
  to: Mm
  /** Longest part to be handled. */
  longest: Mm
  /** How much two boards share at a scarf: thickness by the tangent of its setting. */
  overlap: Mm
  /** Spacing of fixings from the wall's left end: a joint lies over one. */
  spacing: Mm
  /** Least distance of a joint from the run's ends and from the next joint. */
  clear: Mm
}

/** Where a run is jointed, and whether each joint lies over a fixing as spaced. */
export interface Joints {
  /** Middles of the scarfs, mm from the wall's left end. */
  at: Mm[]
  overFixing: boolean
}

/** Lengths are compared to within this, mm. */
const nought: Mm = 1e-6

/**
 * Joints in a run longer than can be handled: as few as will do, clear of its ends and of each other, each over a fixing; where no
 * spacing of the fixings allows that without one more joint, the parts are made equal, and a block goes behind each joint.
 */
export function jointsOf(task: JointTask): Joints {
  const length = task.to - task.from
  if (length <= task.longest + nought) return { at: [], overFixing: true }
  const parts = Math.ceil((length - task.overlap) / (task.longest - task.overlap) - nought)
  return overFixings(task, parts) ?? { at: equalParts(task, parts), overFixing: false }
}

/** Long-point lengths of the parts of a run, left to right, mm; together the run and one overlap a joint. */
export function partsOf(task: Pick<JointTask, "from" | "to" | "overlap">, joints: readonly Mm[]): Mm[] {
  const half = task.overlap / 2
  const lefts = [task.from, ...joints.map((at) => at - half)]
  const rights = [...joints.map((at) => at + half), task.to]
  return lefts.map((left, index) => rights[index]! - left)
}

/** The furthest fixing that a part reaches, again and again; null where that takes more parts or comes too near an end. */
function overFixings(task: JointTask, parts: number): Joints | null {
  const { longest, overlap, spacing, clear, from, to } = task
  const at: Mm[] = []
  for (let left = from; to - left > longest + nought; ) {
    const furthest = Math.min(left + longest - overlap / 2, to - clear)
    const joint = Math.floor((furthest + nought) / spacing) * spacing
    const nearest = (at[at.length - 1] ?? from) + clear
    if (joint < nearest - nought) return null
    at.push(joint)
    left = joint - overlap / 2
  }
  return at.length < parts ? { at, overFixing: true } : null
}

function equalParts({ from, to, overlap }: JointTask, parts: number): Mm[] {
  const part = (to - from + overlap * (parts - 1)) / parts
  return Array.from({ length: parts - 1 }, (_, index) => from + (index + 1) * (part - overlap) + overlap / 2)
}
