import { type Mm, mmText } from "../../../kernels/units.ts"
import type { DoorInputs } from "../inputs.ts"
import type { RulesRead } from "../rules-read.ts"
import type { GapRange } from "./gap.ts"

/** One demand on the gap under the foot. */
export interface ThresholdDemand {
  by: "air" | "smoke" | "certificate" | "carpet" | "floor" | "ordinary"
  /** In words, with what it rests on. */
  what: string
  least?: Mm
  most?: Mm
}

/** All demands on the gap under the foot, together, and the range they leave. */
export interface Threshold extends GapRange {
  demands: ThresholdDemand[]
  /** The two demands that cannot both be met, if any; the range is then the one that keeps fire and smoke back. */
  clash: [ThresholdDemand, ThresholdDemand] | null
}

/** What the demands depend on. */
export interface ThresholdCase {
  /** Width of the leaf as hung, mm. */
  leafWidth: Mm
  fire: boolean
  smoke: boolean
  finish: string
  work: Pick<DoorInputs, "undercutFor" | "thresholdSeal" | "certificate">
}

/** Half a millimetre: the finest a joiner marks. */
const halfMm = 0.5

/**
 * The gap under the foot over the finished floor: air, smoke, certificate, carpet and floor shown together.
 * @returns the range all leave; where two clash, both, and the range of the one that keeps fire and smoke back
 */
export function threshold(about: ThresholdCase, rules: RulesRead): Threshold {
  const demands = demandsOf(about, rules)
  const least = extreme(demands, "least", (a, b) => a > b)
  const most = extreme(demands, "most", (a, b) => a < b)
  const wished =
    about.finish === "carpet" ? rules.value("door-carpet-least") : rules.value("door-foot-target")
  const low = least?.least ?? 0
  const high = most?.most ?? rules.value("door-foot-most")
  const clash: Threshold["clash"] = least && most && low > high ? [least, most] : null
  const floor = clash ? 0 : low
  return { demands, clash, least: floor, most: high, target: Math.min(high, Math.max(floor, wished)) }
}

/** Undercut that gives a transfer area under a leaf, mm, unrounded: area over width. */
export function undercutForArea(areaInSquareMm: number, leafWidth: Mm): Mm {
  return areaInSquareMm / leafWidth
}

function demandsOf(about: ThresholdCase, rules: RulesRead): ThresholdDemand[] {
  const { fire, smoke, finish, work } = about
  const demands: ThresholdDemand[] = []
  if (work.undercutFor === "air") demands.push(air(about.leafWidth, rules))
  if (smoke && !work.thresholdSeal) {
    const most = rules.value("door-smoke-threshold-most")
    demands.push({ by: "smoke", what: "smoke control without a seal at the foot", most })
  } else if (smoke) {
    demands.push({
      by: "smoke",
      what: "smoke control: met by the seal at the foot, set by its maker's sheet",
    })
  }
  if (fire) demands.push(certificate(work.certificate?.threshold, rules))
  else demands.push({ by: "ordinary", what: "ordinary leaf", most: rules.value("door-foot-most") })
  if (finish === "carpet") {
    demands.push({
      by: "carpet",
      what: "clear of the carpet's pile",
      least: rules.value("door-carpet-least"),
    })
  } else if (!smoke || work.thresholdSeal) {
    demands.push({
      by: "floor",
      what: "clear of the hard finished floor",
      least: rules.value("door-foot-least"),
    })
  }
  return demands
}

function air(leafWidth: Mm, rules: RulesRead): ThresholdDemand {
  const byHeight = rules.value("door-air-undercut")
  const area = rules.value("door-air-area")
  const recalled = rules.isFromMemory("door-air-area") ? " (Approved Document F, from memory)" : ""
  const byArea = Math.ceil(undercutForArea(area, leafWidth) / halfMm) * halfMm
  const least = Math.max(byHeight, byArea)
  return {
    by: "air",
    what: `air under the leaf: ${byHeight} mm, or ${mmText(area)} mm²${recalled} under ${mmText(leafWidth)} mm, whichever is more`,
    least,
  }
}

function certificate(own: Mm | undefined, rules: RulesRead): ThresholdDemand {
  const most = own ?? rules.value("door-fire-threshold-most")
  return {
    by: "certificate",
    what: own === undefined ? "fire leaf, in general; its data sheet decides" : "the leaf's data sheet",
    most,
  }
}

function extreme(
  demands: readonly ThresholdDemand[],
  key: "least" | "most",
  beats: (a: Mm, b: Mm) => boolean,
): ThresholdDemand | undefined {
  return demands.reduce<ThresholdDemand | undefined>((best, each) => {
    const value = each[key]
    if (value === undefined) return best
    const held = best?.[key]
    return held === undefined || beats(value, held) ? each : best
  }, undefined)
}
