import type { Celsius } from "./units.ts"

/** Relative humidity of air in per cent, 0 to 100. */
export type RelativeHumidity = number
/** Moisture content of wood in per cent of its dry mass. */
export type MoistureContent = number

/** Magnus constants over water, −45 to 60 °C, as recommended by the World Meteorological Organization (Guide to Instruments, WMO-No. 8). */
const MAGNUS = { pressureAtZero: 6.112, slope: 17.62, offset: 243.12 }

/** Bisection halves the range of humidity this often: finer than the last bit of the result. */
const HALVINGS = 60

/**
 * Saturation vapour pressure over water, hPa, for −45 to 60 °C.
 * Magnus form: 6.112 exp(17.62 T / (243.12 + T)), coefficients of WMO-No. 8.
 */
export function saturationPressure(temperature: Celsius): number {
  return MAGNUS.pressureAtZero * Math.exp(magnus(temperature))
}

/**
 * Dew point of air, °C, unrounded: the temperature of a surface on which it begins to condense.
 * Inverse of the Magnus form with the coefficients of WMO-No. 8.
 * @param humidity per cent, above 0
 */
export function dewPoint(temperature: Celsius, humidity: RelativeHumidity): Celsius {
  const exponent = Math.log(humidity / 100) + magnus(temperature)
  return (MAGNUS.offset * exponent) / (MAGNUS.slope - exponent)
}

/**
 * Equilibrium moisture content of wood in still air, per cent of dry mass, unrounded.
 * Wood Handbook (Forest Products Laboratory, FPL-GTR-190 and its 2021 edition), chapter 4, equation 4-5, constants for °C;
 * good for about −1 to 132 °C and 5 to 95 % humidity; the handbook gives one decimal only to show trends.
 */
export function woodMoisture(temperature: Celsius, humidity: RelativeHumidity): MoistureContent {
  const t = temperature
  const w = 349 + 1.29 * t + 0.0135 * t ** 2
  const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2
  const kh = (k * humidity) / 100
  const hydrates = (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2)
  return (1800 / w) * (kh / (1 - kh) + hydrates)
}

/**
 * The humidity at which wood comes to rest at a moisture content: the inverse of `woodMoisture`, by bisection.
 * @returns per cent, or null if no humidity from 0 to 100 holds wood there at that temperature
 */
export function humidityForMoisture(
  temperature: Celsius,
  moisture: MoistureContent,
): RelativeHumidity | null {
  if (moisture < 0 || moisture > woodMoisture(temperature, 100)) return null
  let low = 0
  let high = 100
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2
    if (woodMoisture(temperature, middle) < moisture) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * How much a piece of wood grows (positive) or shrinks (negative) across the grain, in the unit of `size`, unrounded.
 * Wood Handbook chapter 13: change = size × coefficient × (final − initial), for moisture from 6 to 14 %.
 * @param coefficient per per cent of moisture: tangential for flat-sawn width, radial for quarter-sawn
 */
export function dimensionalChange(
  size: number,
  coefficient: number,
  from: MoistureContent,
  to: MoistureContent,
): number {
  return size * coefficient * (to - from)
}

function magnus(temperature: Celsius): number {
  return (MAGNUS.slope * temperature) / (MAGNUS.offset + temperature)
}
