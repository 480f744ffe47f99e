import { fixed, type Mm, metres } from "../kernels/units.ts"

/** A quantity for the reader: two decimals for areas, lengths and litres, whole numbers for counts. */
export function quantityText(value: number, unit: string): string {
  const rounded =
    unit === "nr" ? Math.ceil(value - 1e-9).toString() : (Math.round(value * 100) / 100).toFixed(2)
  return `${rounded} ${unitWords[unit] ?? unit}`
}

const unitWords: Record<string, string> = { m2: "m²", m: "m", l: "l", nr: "no.", kg: "kg" }

/** What a floor area counted only under enough headroom is called. */
export function headroomLabel(height: Mm): string {
  return `Floor with over ${fixed(metres(height), 1)} m`
}

/** True for adhesives, sealants and the like, which are counted by the tube: their name tells. */
export function isPaste({ name }: { name: string }): boolean {
  return /adhesive|sealant|glue|grout|caulk|filler/i.test(name)
}
