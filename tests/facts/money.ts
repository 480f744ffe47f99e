/** Tax on a net amount, worked by hand: exact product, then half up to the penny. */
export const TAX = [
  {
    what: "20 % on 1,234.56 (exact 246.912)",
    net: "1234.56",
    percent: 20,
    tax: "246.91",
    gross: "1481.47",
    source: "arithmetic",
  },
  {
    what: "5 % on 1,234.56 (exact 61.728)",
    net: "1234.56",
    percent: 5,
    tax: "61.73",
    gross: "1296.29",
    source: "arithmetic",
  },
  {
    what: "0 % on 1,234.56",
    net: "1234.56",
    percent: 0,
    tax: "0.00",
    gross: "1234.56",
    source: "arithmetic",
  },
]

/** Half a penny goes up, never to the even penny. */
export const HALF_UP = [
  { what: "2.345 (to even would be 2.34)", exact: "2.345", pence: "2.35", source: "common practice" },
  { what: "2.355", exact: "2.355", pence: "2.36", source: "common practice" },
  {
    what: "1.005 (as a binary fraction it lies below)",
    exact: "1.005",
    pence: "1.01",
    source: "common practice",
  },
  { what: "2.3449", exact: "2.3449", pence: "2.34", source: "common practice" },
  { what: "a credit of 2.345", exact: "-2.345", pence: "-2.35", source: "common practice" },
]
