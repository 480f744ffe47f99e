/** A classical cutting-stock example with its known optimum. Lengths in the example's own unit, all of them whole. */
export interface CuttingFact {
  what: string
  stock: number
  kerf: number
  items: [length: number, count: number][]
  /** Optimal number of equal lengths. */
  value: number
  source: string
}

/** Worked examples with one stock length: the least number of lengths. */
export const cuttingFacts: CuttingFact[] = [
  {
    what: "lumber, 17 unit boards: material bound is tight",
    stock: 17,
    kerf: 0,
    items: [
      [3, 25],
      [5, 20],
      [9, 15],
    ],
    value: 19,
    source:
      "university lecture notes on column generation (timber example); optimum recomputed over the full pattern list",
  },
  {
    what: "lumber yard, 25 ft boards",
    stock: 25,
    kerf: 0,
    items: [
      [7, 5000],
      [9, 1200],
      [11, 300],
    ],
    value: 2167,
    source:
      "operations research textbook exercise with six patterns; optimum recomputed over the full pattern list",
  },
  {
    what: "100 in raws",
    stock: 100,
    kerf: 0,
    items: [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    value: 453,
    source: "V. Chvatal, Linear Programming, 1983, chapter 13 (data from memory)",
  },
  {
    what: "paper machine, 5600 mm, 308 patterns, 0.401 % waste",
    stock: 5600,
    kerf: 0,
    items: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    value: 73,
    source:
      "open encyclopaedia, article on the cutting stock problem (widths from memory; 308 patterns and 73 rolls as quoted)",
  },
  {
    what: "110 in, where rounding the linear program up piece by piece needs more",
    stock: 110,
    kerf: 0,
    items: [
      [20, 48],
      [45, 35],
      [50, 24],
      [55, 10],
      [75, 8],
    ],
    value: 47,
    source: "textbook of an algebraic modelling language, chapter on column generation (data from memory)",
  },
  {
    what: "100 in reels",
    stock: 100,
    kerf: 0,
    items: [
      [60, 30],
      [48, 50],
      [36, 25],
      [24, 90],
    ],
    value: 77,
    source: "published university homework; optimum recomputed over the full pattern list",
  },
  {
    what: "logs of 2000, where the material bound (8) is not enough",
    stock: 2000,
    kerf: 0,
    items: [
      [255, 10],
      [750, 7],
      [550, 13],
    ],
    value: 9,
    source: "published mathematics question and answer; optimum recomputed over the full pattern list",
  },
  {
    what: "six 800 from 2400, no kerf",
    stock: 2400,
    kerf: 0,
    items: [[800, 6]],
    value: 2,
    source: "by hand: 3 x 800 = 2400",
  },
  {
    what: "six 800 from 2400, kerf 3",
    stock: 2400,
    kerf: 3,
    items: [[800, 6]],
    value: 3,
    source: "by hand: 3 x 800 + 2 x 3 > 2400",
  },
  {
    what: "4200 without waste, no kerf",
    stock: 4200,
    kerf: 0,
    items: [
      [2100, 2],
      [1400, 3],
      [1050, 4],
    ],
    value: 3,
    source: "by hand: three bars, each of one length, come out even",
  },
  {
    what: "4200, kerf 3: one more bar",
    stock: 4200,
    kerf: 3,
    items: [
      [2100, 2],
      [1400, 3],
      [1050, 4],
    ],
    value: 4,
    source: "by hand: pieces fill three bars to the millimetre, so any kerf needs a fourth",
  },
  {
    what: "six door faces from 5100, no kerf",
    stock: 5100,
    kerf: 0,
    items: [
      [2070, 12],
      [920, 6],
    ],
    value: 6,
    source: "by hand: at most two legs of 2070 to a bar",
  },
  {
    what: "six door faces from 5100, kerf 3",
    stock: 5100,
    kerf: 3,
    items: [
      [2070, 12],
      [920, 6],
    ],
    value: 6,
    source: "by hand: 2 x 2070 + 920 + 2 x 3 = 5066",
  },
  {
    what: "mixed run, 4200 only, kerf 3",
    stock: 4200,
    kerf: 3,
    items: [
      [3980, 1],
      [3180, 2],
      [2400, 2],
      [1560, 1],
      [640, 2],
      [450, 3],
    ],
    value: 5,
    source: "by hand: 3980, 3180, 3180, 2400 and 2400 are each over half a bar",
  },
]

/** A run where the lengths may be mixed and the bought length is least: total 19 800 at kerf 0 and at kerf 3. */
export const mixedStockFact = {
  what: "mixed run from any of five lengths, least bought length",
  stocks: [2400, 3000, 3600, 4200, 4800],
  items: [
    [3980, 1],
    [3180, 2],
    [2400, 2],
    [1560, 1],
    [640, 2],
    [450, 3],
  ] as [number, number][],
  value: 19_800,
  source: "exact integer program over the full pattern list",
}
