/** One fact about paper, print or the formats that carry it. */
export interface PaperFact {
  what: string
  value: number
  unit: string
  source: string
}

/** Sizes of sheets and type. */
export const paperFacts = {
  a4Short: { what: "A4, short side", value: 210, unit: "mm", source: "ISO 216:2007" },
  a4Long: { what: "A4, long side", value: 297, unit: "mm", source: "ISO 216:2007" },
  point: { what: "points to the inch", value: 72, unit: "1/in", source: "ISO 32000-1:2008, 8.3.2.3" },
  inch: { what: "millimetres to the inch", value: 25.4, unit: "mm", source: "ISO 31-1" },
  smallestType: { what: "smallest type on a sheet", value: 9, unit: "pt", source: "common practice" },
} satisfies Record<string, PaperFact>

/** One row of the table of QR code capacities: characters in byte mode, and what of the symbol may be lost. */
export interface QrCapacity {
  version: number
  level: "Q" | "H"
  characters: number
}

/** ISO/IEC 18004:2015, table 7 (byte mode), from memory. */
export const qrCapacities: readonly QrCapacity[] = [
  { version: 2, level: "H", characters: 14 },
  { version: 3, level: "H", characters: 24 },
  { version: 4, level: "H", characters: 34 },
  { version: 5, level: "H", characters: 44 },
  { version: 5, level: "Q", characters: 60 },
  { version: 6, level: "Q", characters: 74 },
  { version: 7, level: "Q", characters: 86 },
]

/** Modules along one side of a QR code of a version: 17 + 4 × version (ISO/IEC 18004:2015, 6.3.1, from memory). */
export function qrModules(version: number): number {
  return 17 + 4 * version
}

/** White modules a QR code needs on each side (ISO/IEC 18004:2015, 6.3.8, from memory). */
export const qrQuietZone = 4

/**
 * The colorants of sRGB adapted to the white of the profile connection space: rows X, Y, Z; columns red, green, blue.
 * The values of the sRGB v4 display profile of the ICC and of most published v2 profiles, from memory.
 */
export const srgbColorants = [
  [0.4361, 0.3851, 0.1431],
  [0.2225, 0.7169, 0.0606],
  [0.0139, 0.0971, 0.7141],
] as const
