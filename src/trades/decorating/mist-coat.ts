import type { Litres, SquareMetres } from "../../kernels/units.ts"

/** How a mist coat is thinned, by volume. */
export interface Dilution {
  paint: number
  water: number
}

/** The mix that a mist coat takes, and what goes into it, litres, unrounded. */
export interface MistMix {
  mix: Litres
  paint: Litres
  water: Litres
}

/**
 * Mist coat for an area. The rate is m2 for each litre of the thinned mix; neat paint is the mix times the paint's parts
 * over all parts, the rest is water.
 * @param rate m2 a litre of mix
 */
export function mistCoat(area: SquareMetres, rate: number, dilution: Dilution): MistMix {
  const mix = area / rate
  const paint = (mix * dilution.paint) / (dilution.paint + dilution.water)
  return { mix, paint, water: mix - paint }
}

/** What an amount of neat paint becomes when thinned, litres, unrounded. */
export function thinned(paint: Litres, dilution: Dilution): MistMix {
  const water = (paint * dilution.water) / dilution.paint
  return { mix: paint + water, paint, water }
}
