import { dewPoint } from "../../kernels/air.ts"
import type { Celsius } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"

/** The coldest surface that may be coated in this air, °C, unrounded: the dew point and the margin above it. */
export function coldestToCoat(air: { temperature: Celsius; humidity: number }, rules: Rules): Celsius {
  return dewPoint(air.temperature, air.humidity) + rules.value("decor-above-dew-point")
}
