/** Grout, kg a m2, worked by hand from (L + W) / (L × W) × depth × joint × 1.6, lengths in mm (common practice of grout makers). */
export const GROUT = [
  { what: "200 × 200 × 8, joint 3", width: 200, height: 200, thickness: 8, joint: 3, value: 0.384 },
  { what: "300 × 600 × 10, joint 3", width: 300, height: 600, thickness: 10, joint: 3, value: 0.24 },
  { what: "100 × 100 × 6, joint 2", width: 100, height: 100, thickness: 6, joint: 2, value: 0.384 },
].map((row) => ({ ...row, source: "common practice" }))

/** Adhesive, kg a m2, least and most by notch. */
export const ADHESIVE = [
  { rule: "tile-adhesive-wall", from: 2, to: 3, source: "common practice" },
  { rule: "tile-adhesive-floor", from: 3, to: 5, source: "common practice" },
]
