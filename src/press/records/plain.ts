import { roundHalfUp } from "../../kernels/units.ts"

/** Decimals kept of figures in records: a thousandth of any unit. */
const decimals = 3

/**
 * Any value as plain data for a record: keys sorted, figures rounded to three decimals, money as text, maps as objects,
 * functions and what is absent left out. The same value gives the same text.
 */
export function plain(value: unknown): unknown {
  if (typeof value === "number") return Number.isInteger(value) ? value : roundHalfUp(value, decimals)
  if (typeof value === "function" || value === undefined) return undefined
  if (value === null || typeof value !== "object") return value
  if (Array.isArray(value)) return value.map((item) => plain(item) ?? null)
  if (value instanceof Map) return plain(Object.fromEntries(value))
  if (value instanceof Set) return plain([...value])
  if ("toFixed" in value) return String(value)
  const entries = Object.entries(value)
    .map(([key, item]) => [key, plain(item)] as const)
    .filter(([, item]) => item !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
  return Object.fromEntries(entries)
}

/** Plain data as JSON text, two spaces a level, with a line end at the end. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(plain(value), null, 2)}\n`
}
