const PRACTICE = "common practice"

/** Mist coat dilution: litres of water to add to a tin, and the mix that gives. */
export const MIST = [
  { what: "5 l at 3 to 1", paint: 5, parts: [3, 1], water: 1.667, mix: 6.667, source: PRACTICE },
  { what: "5 l at 70 to 30", paint: 5, parts: [70, 30], water: 2.143, mix: 7.143, source: PRACTICE },
  { what: "5 l at 1 to 1", paint: 5, parts: [1, 1], water: 5, mix: 10, source: PRACTICE },
  { what: "5 l at 10 to 1", paint: 5, parts: [10, 1], water: 0.5, mix: 5.5, source: PRACTICE },
  { what: "8 l at 4 to 1", paint: 8, parts: [4, 1], water: 2, mix: 10, source: PRACTICE },
]

/** Spreading rates, m2 a litre and coat, that practice gives as least and most. */
export const RATES = [
  {
    rule: "decor-rate-emulsion",
    from: 11,
    to: 17,
    source: "from memory: BS 6150, table of spreading rates, emulsion",
  },
  {
    rule: "decor-rate-undercoat",
    from: 11,
    to: 15,
    source: "from memory: BS 6150, table of spreading rates, undercoat",
  },
  {
    rule: "decor-rate-trim",
    from: 13,
    to: 17,
    source: "from memory: BS 6150, table of spreading rates, gloss",
  },
  { rule: "decor-rate-mist", from: 8, to: 10, source: PRACTICE },
  { rule: "decor-rate-primer", from: 8, to: 12, source: PRACTICE },
]

/** Least number of coats on bare painted joinery. */
export const COATS_ON_BARE_WOOD = {
  what: "primer, undercoat, finish",
  value: 3,
  source: "NHBC Standards (2006), chapter 8.5, D2",
}

const GIRTH = "article on measuring painting work to SMM7 and NRM2, door frame example"

/** Painting a door frame by girth: 2 architraves and a lining round one doorway of 5.2 m. */
export const GIRTHS = [
  {
    what: "whole frame as one item, 870 girth",
    length: 5200,
    girth: 870,
    billed: "m2",
    area: 4.524,
    source: GIRTH,
  },
  { what: "architraves, 282 girth", length: 10400, girth: 282, billed: "m", area: 2.933, source: GIRTH },
  { what: "lining, 306 girth", length: 5200, girth: 306, billed: "m2", area: 1.591, source: GIRTH },
  {
    what: "girth of 300 is still by length",
    length: 1000,
    girth: 300,
    billed: "m",
    area: 0.3,
    source: GIRTH,
  },
]

/** Openings: whether they are taken off a painted wall. */
export const VOIDS = [
  {
    what: "0.51 m2 is taken off when ordering",
    width: 1020,
    height: 500,
    off: 0.51,
    source: PRACTICE,
  },
  {
    what: "0.50 m2 stays in",
    width: 1000,
    height: 500,
    off: 0,
    source: "SMM7, no deduction for voids up to 0.50 m2, as quoted by teaching notes",
  },
]

/** Coldest surface that may be coated, °C: dew point and 3 °C. */
export const COLDEST = [
  {
    temperature: 20,
    humidity: 65,
    value: 16.22,
    source: "Magnus form, WMO-No. 8 (13.22), and 3 °C of common practice",
  },
  {
    temperature: 20,
    humidity: 80,
    value: 19.44,
    source: "Magnus form, WMO-No. 8 (16.44), and 3 °C of common practice",
  },
  {
    temperature: 10,
    humidity: 70,
    value: 7.78,
    source: "Magnus form, WMO-No. 8 (4.78), and 3 °C of common practice",
  },
]

/** 40 m2 of wall, two coats at 12 m2/l and a tenth more. */
export const WALL_FORTY = { area: 40, coats: 2, rate: 12, litres: 7.33, tins: [5, 2.5], source: PRACTICE }

const CHART = "dew point chart for coatings and adhesives, °F, as published on a form site"
const CHART_ROWS: [number, number[]][] = [
  [90, [47, 57, 67, 77]],
  [85, [45, 55, 64, 75]],
  [80, [44, 54, 63, 73]],
  [75, [42, 52, 62, 71]],
  [70, [40, 50, 60, 68]],
  [65, [38, 47, 57, 66]],
  [60, [36, 45, 55, 64]],
  [55, [34, 43, 53, 61]],
  [50, [31, 40, 50, 59]],
]
const CHART_AIR = [50, 60, 70, 80]

/** Dew points that painters read from a chart, in whole °F; the chart is rough, cells are off by up to 1.4 °F. */
export const DEW_POINT_CHART = CHART_ROWS.flatMap(([humidity, values]) =>
  values.map((value, column) => ({
    fahrenheit: CHART_AIR[column] ?? 0,
    humidity,
    value,
    within: 1.4,
    source: CHART,
  })),
)

const BUILDING = "from memory: DIN 4108-3, table of dew points of air"
const BUILDING_ROWS: [number, number[]][] = [
  [20, [6.0, 7.7, 9.3, 10.7, 12.0, 13.2, 14.4, 15.4, 16.4, 17.4, 18.3]],
  [25, [10.5, 12.2, 13.9, 15.3, 16.7, 18.0, 19.1, 20.3, 21.3, 22.3, 23.2]],
  [30, [14.9, 16.8, 18.4, 20.0, 21.4, 22.7, 23.9, 25.1, 26.2, 27.2, 28.2]],
]

/** Dew points to one decimal, °C, at 40 to 90 % in steps of 5. */
export const DEW_POINT_TABLE = BUILDING_ROWS.flatMap(([temperature, values]) =>
  values.map((value, column) => ({
    temperature,
    humidity: 40 + 5 * column,
    value,
    within: 0.1,
    source: BUILDING,
  })),
)

/** Dew points told in words by those who make and inspect coatings, to the whole °C. */
export const DEW_POINT_TOLD = [
  {
    temperature: 16,
    humidity: 71,
    value: 11,
    within: 0.5,
    source: "section on ambient conditions of a painting manual, worked example",
  },
  {
    temperature: 30,
    humidity: 55,
    value: 20,
    within: 0.5,
    source: "glossary of a maker of coatings, worked example",
  },
]
