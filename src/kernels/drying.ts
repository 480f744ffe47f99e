import type { Celsius, ElapsedHours, Mm } from "./units.ts"

/** How long a layer takes at the reference air, by its thickness: a first part, then so much more for each mm. */
export interface LayerLaw {
  /** Hours of a layer up to the thickness `upTo`. */
  hours: ElapsedHours
  upTo: Mm
  /** Hours for each mm beyond `upTo`. */
  perMm: number
  /** Where a steeper part begins, and its hours for each mm. */
  knee?: { at: Mm; perMm: number }
}

/** How many times as long something takes in colder air: doubled for each `doubling` °C below the reference; never less than once. */
export function timesForCold(temperature: Celsius, reference: Celsius, doubling: Celsius): number {
  return Math.max(1, 2 ** ((reference - temperature) / doubling))
}

/**
 * How many times as long water takes to leave in damper air: in proportion to what the air can still take up
 * (100 less the humidity); never less than once, infinite in saturated air.
 */
export function timesForDamp(humidity: number, reference: number): number {
  if (humidity >= 100) return Number.POSITIVE_INFINITY
  return Math.max(1, (100 - reference) / (100 - humidity))
}

/** Hours of a layer at the reference air: flat up to `upTo`, then straight, then steeper beyond the knee. */
export function layerHours(thickness: Mm, law: LayerLaw): ElapsedHours {
  const knee = law.knee ?? { at: Number.POSITIVE_INFINITY, perMm: law.perMm }
  const first = Math.max(0, Math.min(thickness, knee.at) - law.upTo)
  const second = Math.max(0, thickness - Math.max(knee.at, law.upTo))
  return law.hours + first * law.perMm + second * knee.perMm
}
