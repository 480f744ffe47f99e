const DECK_NOTE =
  "warranty bodies' technical notes on wood-based decking: 2 mm for each metre, 10 mm minimum (the minimum from memory)"
const DECK_CLAUSE = "national specification clause K11/325: 1.5 mm for each metre, 10 mm minimum"

/** Gap at each edge for a span, mm. */
export const GAPS = [
  { what: "4.0 m at 2 mm/m", span: 4000, perMetre: 2, value: 10, source: DECK_NOTE },
  { what: "4.0 m at 1.5 mm/m", span: 4000, perMetre: 1.5, value: 10, source: DECK_CLAUSE },
  { what: "8.0 m at 2 mm/m", span: 8000, perMetre: 2, value: 16, source: DECK_NOTE },
  { what: "8.0 m at 1.5 mm/m", span: 8000, perMetre: 1.5, value: 12, source: DECK_CLAUSE },
  {
    what: "5.0 m at 2 mm/m, where the two begin to differ",
    span: 5000,
    perMetre: 2,
    value: 10,
    source: DECK_NOTE,
  },
  { what: "6.66 m at 1.5 mm/m", span: 6660, perMetre: 1.5, value: 10, source: DECK_CLAUSE },
]

/** First row where first and last are to be equal: (remainder + board) / 2, mm. Worked by hand. */
export const FIRST_ROWS = [
  { what: "2,980 deep, boards 189: 15 whole and 145 over", depth: 2980, width: 189, value: 167 },
  { what: "2,000 deep, boards 180: 11 whole and 20 over", depth: 2000, width: 180, value: 100 },
  { what: "1,890 deep, boards 189: nothing over", depth: 1890, width: 189, value: 189 },
  { what: "150 deep, boards 189: one row", depth: 150, width: 189, value: 150 },
].map((row) => ({ ...row, source: "common practice" }))

/** Moisture of wood at rest, per cent: what limits on site are set by. */
export const AT_REST = [
  { temperature: 20, humidity: 40, value: 7.72 },
  { temperature: 20, humidity: 60, value: 11.0 },
  { temperature: 18, humidity: 55, value: 10.16 },
].map((row) => ({
  ...row,
  source: "Wood Handbook, FPL-GTR-190, chapter 4, equation 4-5, worked separately",
}))

/** Growth of solid flat-sawn white oak across 4 m, 8 to 10 %: 4,000 × 0.00365 × 2, mm. */
export const SOLID_GROWTH = {
  what: "4 m of solid flat-sawn white oak, 8 to 10 %",
  across: 4000,
  from: 8,
  to: 10,
  value: 29.2,
  source: "Wood Handbook, FPL-GTR-190, chapter 13, table 13-5 and its formula",
}

/** Screw lengths by the rule of 2.5 times the deck, mm. */
export const SCREWS = [
  { what: "18 mm deck", thickness: 18, value: 45 },
  { what: "22 mm deck", thickness: 22, value: 55 },
].map((row) => ({ ...row, source: "house-building standards, clause 6.4.19" }))

/** Screws along one joist of a particleboard deck 2.4 m long at 400, round its edge at 200. */
export const SHEET_SCREWS = { field: 400, edge: 200, source: "national specification clause K11/325" }

/** Underlay ordered: net × 1.05, rounded up to rolls of 10 m2. */
export const UNDERLAY = [
  { what: "12.00 m2 net", net: 12, gross: 12.6, rolls: 2 },
  { what: "9.50 m2 net", net: 9.5, gross: 9.975, rolls: 1 },
].map((row) => ({ ...row, source: "common practice" }))

/** Most a wood floor allows its base, and the older figure. */
export const BASE_HUMIDITY = {
  value: 65,
  older: 75,
  source: "BS 8201:2011 as quoted by a flooring contractor; clauses K21/260 citing the edition of 1987",
}
