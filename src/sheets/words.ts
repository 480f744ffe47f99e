import type { Room } from "../survey/room.ts"

const datumWords: Record<Room["measured"]["heightsFrom"], string> = {
  deck: "the bare deck",
  "finished-floor": "the finished floor",
  "old-floor": "the floor as it was",
  ground: "the ground",
}

/** Datum of heights and face of lengths of a room, for the head of its sheets. */
export function datumText(room: Room): string {
  return `Heights from ${datumWords[room.measured.heightsFrom]}. Lengths to ${room.measured.lengthsTo}. Millimetres.`
}

/** A quantity for the reader: two decimals for areas, lengths and litres, whole numbers for counts. */
export function quantityText(value: number, unit: string): string {
  const rounded =
    unit === "nr" ? Math.ceil(value - 1e-9).toString() : (Math.round(value * 100) / 100).toFixed(2)
  return `${rounded} ${unitWords[unit] ?? unit}`
}

const unitWords: Record<string, string> = { m2: "m²", m: "m", l: "l", nr: "no.", kg: "kg" }
