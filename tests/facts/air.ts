const MAGNUS_SOURCE =
  "Magnus form with the coefficients of WMO-No. 8 (6.112, 17.62, 243.12), recomputed by hand from the formula"

/** Saturation vapour pressure over water, hPa. */
export const SATURATION = [
  { what: 0, value: 6.112 },
  { what: 5, value: 8.717 },
  { what: 10, value: 12.26 },
  { what: 15, value: 17.017 },
  { what: 20, value: 23.326 },
  { what: 25, value: 31.601 },
  { what: 30, value: 42.337 },
].map((row) => ({ ...row, source: MAGNUS_SOURCE }))

const HUMIDITIES = [40, 50, 60, 65, 70, 75, 80, 85, 90]
const DEW_POINT_ROWS: [number, number[]][] = [
  [5, [-7.5, -4.58, -2.13, -1.04, -0.02, 0.93, 1.83, 2.69, 3.5]],
  [10, [-3.0, 0.04, 2.58, 3.72, 4.78, 5.77, 6.71, 7.59, 8.43]],
  [15, [1.49, 4.65, 7.29, 8.47, 9.57, 10.6, 11.58, 12.5, 13.37]],
  [18, [4.19, 7.41, 10.11, 11.32, 12.44, 13.5, 14.5, 15.44, 16.33]],
  [20, [5.98, 9.26, 12.0, 13.22, 14.36, 15.43, 16.44, 17.4, 18.31]],
  [25, [10.46, 13.85, 16.69, 17.96, 19.15, 20.26, 21.31, 22.3, 23.24]],
]

/** Dew points, °C, to two decimals. */
export const DEW_POINTS = DEW_POINT_ROWS.flatMap(([temperature, values]) =>
  values.map((value, column) => ({
    temperature,
    humidity: HUMIDITIES[column] ?? 0,
    value,
    source: MAGNUS_SOURCE,
  })),
)

const HANDBOOK =
  "Wood Handbook, FPL-GTR-190, table 4-2 (as quoted by a note that gives the chapter in both unit systems)"

/** Equilibrium moisture content of wood, per cent; `within` is the tolerance. */
export const WOOD_MOISTURE = [
  { temperature: 21.1, humidity: 5, value: 1.3, within: 0.06, source: HANDBOOK },
  { temperature: 21.1, humidity: 30, value: 6.2, within: 0.06, source: HANDBOOK },
  { temperature: 21.1, humidity: 50, value: 9.2, within: 0.06, source: HANDBOOK },
  { temperature: 21.1, humidity: 75, value: 14.4, within: 0.06, source: HANDBOOK },
  { temperature: 21.1, humidity: 85, value: 17.9, within: 0.06, source: HANDBOOK },
  { temperature: 21.1, humidity: 95, value: 23.9, within: 0.06, source: HANDBOOK },
  { temperature: -1.1, humidity: 75, value: 14.9, within: 0.06, source: HANDBOOK },
  { temperature: -1.1, humidity: 95, value: 24.3, within: 0.06, source: HANDBOOK },
  { temperature: 37.8, humidity: 50, value: 8.7, within: 0.06, source: HANDBOOK },
  { temperature: 37.8, humidity: 90, value: 19.5, within: 0.06, source: HANDBOOK },
  {
    temperature: 20,
    humidity: 50,
    value: 9.271141,
    within: 0.000001,
    source: "worked example in an open scientific library's documentation of the same equation",
  },
  { temperature: 21.1, humidity: 65, value: 12, within: 0.06, source: "common practice" },
]

/** Humidity that holds wood at a moisture content at 20 °C, per cent, to one decimal. */
export const HUMIDITY_AT_20 = [
  { moisture: 8, value: 41.8 },
  { moisture: 12, value: 65.0 },
  { moisture: 15, value: 76.8 },
  { moisture: 16, value: 79.9 },
  { moisture: 18, value: 85.0 },
  { moisture: 20, value: 89.1 },
].map((row) => ({
  ...row,
  source: "inverse of Wood Handbook equation 4-5, as quoted by the same note",
}))

const SHRINKAGE =
  "Wood Handbook, FPL-GTR-190, table 13-5 coefficients and the chapter's formula, worked by hand"

/** Movement across the grain, mm to three decimals: white oak and red oak, commercial. */
export const MOVEMENT = [
  {
    what: "white oak flat-sawn 180 mm, 12 to 8 %",
    size: 180,
    coefficient: 0.00365,
    from: 12,
    to: 8,
    value: -2.628,
  },
  {
    what: "white oak flat-sawn 150 mm, 8 to 10 %",
    size: 150,
    coefficient: 0.00365,
    from: 8,
    to: 10,
    value: 1.095,
  },
  {
    what: "white oak quarter-sawn 150 mm, 8 to 10 %",
    size: 150,
    coefficient: 0.0018,
    from: 8,
    to: 10,
    value: 0.54,
  },
  {
    what: "white oak flat-sawn 232 mm, 8 to 11 %",
    size: 232,
    coefficient: 0.00365,
    from: 8,
    to: 11,
    value: 2.54,
  },
  {
    what: "white oak quarter-sawn 232 mm, 8 to 11 %",
    size: 232,
    coefficient: 0.0018,
    from: 8,
    to: 11,
    value: 1.253,
  },
  {
    what: "red oak flat-sawn 232 mm, 8 to 11 %",
    size: 232,
    coefficient: 0.00369,
    from: 8,
    to: 11,
    value: 2.568,
  },
  {
    what: "red oak quarter-sawn 232 mm, 8 to 11 %",
    size: 232,
    coefficient: 0.00158,
    from: 8,
    to: 11,
    value: 1.1,
  },
].map((row) => ({ ...row, source: SHRINKAGE }))

const EXAMPLE = "Wood Handbook, FPL-GTR-190, chapter 13, the example after equation 13-2, as printed"

/** The handbook's own worked example in both units, to the printed digit: a flat-grained white fir board from 8 to 11 %. */
export const PRINTED_CHANGES = [
  { what: "232 mm", size: 232, change: 1.7, changeDigits: 1, end: 233.7, endDigits: 1 },
  { what: "9.15 in", size: 9.15, change: 0.067, changeDigits: 3, end: 9.217, endDigits: 3 },
].map((row) => ({ ...row, coefficient: 0.00245, from: 8, to: 11, source: EXAMPLE }))
