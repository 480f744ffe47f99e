/** Length in millimetres. */
export type Mm = number
/** Area in square metres. */
export type SquareMetres = number
/** Volume of liquid in litres. */
export type Litres = number
/** Mass in kilograms. */
export type Kilograms = number
/** Angle in degrees. */
export type Degrees = number
/** Temperature in degrees Celsius. */
export type Celsius = number
/** Elapsed time in hours, running through nights and weekends (drying, cure, acclimatisation). */
export type ElapsedHours = number
/** Working time in hours of one person (labour). */
export type WorkingHours = number
/** A calendar day, `YYYY-MM-DD`. */
export type IsoDate = string

/** Square millimetres as square metres, unrounded. */
export function squareMetres(areaInSquareMm: number): SquareMetres {
  return areaInSquareMm / 1_000_000
}

/** Millimetres as metres, unrounded. */
export function metres(length: Mm): number {
  return length / 1000
}

/**
 * A figure rounded half up (away from zero) to a number of decimals, as text with that many decimals.
 * The value is first cleared of binary noise, so 2.345 at 2 decimals reads 2.35.
 */
export function fixed(value: number, decimals: number): string {
  return roundHalfUp(value, decimals).toFixed(decimals)
}

/** A figure rounded half up (away from zero) to a number of decimals, cleared of binary noise first. */
export function roundHalfUp(value: number, decimals: number): number {
  const scale = 10 ** decimals
  const scaled = Math.abs(value) * scale
  const rounded = Math.floor(Number(scaled.toPrecision(13)) + 0.5)
  return rounded === 0 ? 0 : (Math.sign(value) * rounded) / scale
}

/** A length for the reader: whole millimetres, thousands set apart, e.g. `3,940`. */
export function mmText(length: Mm): string {
  const whole = roundHalfUp(length, 0)
  const digits = String(Math.abs(whole)).replace(/\B(?=(\d{3})+$)/g, ",")
  return whole < 0 ? `−${digits}` : digits
}
