/** Leaf sizes sold, mm; the metric ones are the coordinating set width less 74. */
export const LEAF_SIZES = [
  { what: "1'6\" x 6'6\"", feet: [18, 78], width: 457, height: 1981, source: "UK trade size table" },
  { what: "1'9\" x 6'6\"", feet: [21, 78], width: 533, height: 1981, source: "UK trade size table" },
  { what: "2'0\" x 6'6\"", feet: [24, 78], width: 610, height: 1981, source: "UK trade size table" },
  { what: "2'3\" x 6'6\"", feet: [27, 78], width: 686, height: 1981, source: "UK trade size table" },
  { what: "2'6\" x 6'6\"", feet: [30, 78], width: 762, height: 1981, source: "UK trade size table" },
  { what: "2'9\" x 6'6\"", feet: [33, 78], width: 838, height: 1981, source: "UK trade size table" },
  { what: "2'10\" x 6'6\"", feet: [34, 78], width: 864, height: 1981, source: "UK trade size table" },
  { what: "2'8\" x 6'8\"", feet: [32, 80], width: 813, height: 2032, source: "UK trade size table" },
]
export const METRIC_SETS = [600, 700, 800, 900, 1000].map((set) => ({
  what: `leaf of a ${set} door set`,
  set,
  width: set - 74,
  height: 2040,
  source: "BS 4787-1 (from memory)",
}))

/** Structural openings for lining 32, gaps 3, undercut 10, packing 12 in width and 6 in height, mm: arithmetic of common practice. */
export const STRUCTURAL_OPENINGS = [
  { what: "610 x 1981", leaf: [610, 1981], opening: [692, 2032], source: "common practice" },
  { what: "686 x 1981", leaf: [686, 1981], opening: [768, 2032], source: "common practice" },
  { what: "762 x 1981", leaf: [762, 1981], opening: [844, 2032], source: "common practice" },
  { what: "838 x 1981", leaf: [838, 1981], opening: [920, 2032], source: "common practice" },
  { what: "864 x 1981", leaf: [864, 1981], opening: [946, 2032], source: "common practice" },
  { what: "813 x 2032", leaf: [813, 2032], opening: [895, 2083], source: "common practice" },
  { what: "726 x 2040", leaf: [726, 2040], opening: [808, 2091], source: "common practice" },
  { what: "826 x 2040", leaf: [826, 2040], opening: [908, 2091], source: "common practice" },
  { what: "926 x 2040", leaf: [926, 2040], opening: [1008, 2091], source: "common practice" },
] as const

/** Undercut that gives 7,600 mm2 under a leaf, mm to two places: area over width. */
export const UNDERCUTS = [
  {
    what: "leaf 826",
    width: 826,
    undercut: 9.2,
    source: "Approved Document F vol 1, 2021 (area from memory)",
  },
  {
    what: "leaf 762",
    width: 762,
    undercut: 9.97,
    source: "Approved Document F vol 1, 2021 (area from memory)",
  },
  {
    what: "leaf 760",
    width: 760,
    undercut: 10,
    source: "Approved Document F vol 1, 2021 (area from memory)",
  },
  {
    what: "leaf 726",
    width: 726,
    undercut: 10.47,
    source: "Approved Document F vol 1, 2021 (area from memory)",
  },
  {
    what: "leaf 626",
    width: 626,
    undercut: 12.14,
    source: "Approved Document F vol 1, 2021 (area from memory)",
  },
  {
    what: "leaf 526",
    width: 526,
    undercut: 14.45,
    source: "Approved Document F vol 1, 2021 (area from memory)",
  },
]

/** Worked examples of hinge guides after BS EN 1935: leaf, what is added, mass on the hinges, kg. They work in whole per cent: half of one is allowed. */
export const ADJUSTED_MASSES = [
  {
    what: "1150 x 2040, 80 kg, closer without backcheck, hard use: 80 + 23 % + 20 % + 10 %",
    leaf: { width: 1150, height: 2040, mass: 80 },
    closer: true,
    backcheck: false,
    heavyUse: true,
    adjusted: 122.4,
    within: 80 * 0.005,
    source: "a hinge guide's worked example",
  },
  {
    what: "838 x 1981, 55 kg, closer with backcheck: 55 x 1.75",
    leaf: { width: 838, height: 1981, mass: 55 },
    closer: true,
    backcheck: true,
    heavyUse: false,
    adjusted: 96.25,
    within: 1e-9,
    source: "a hinge guide's worked example",
  },
  {
    what: "1200 x 2000, 50 kg, wide: + 33 %",
    leaf: { width: 1200, height: 2000, mass: 50 },
    closer: false,
    backcheck: false,
    heavyUse: false,
    adjusted: 66.5,
    within: 50 * 0.005,
    source: "another hinge guide's worked example",
  },
]

/** What a wide leaf adds, per cent, at a height of 2,000 mm. */
export const WIDE_LEAVES = [
  { what: "1050 wide", width: 1050, percent: 10, source: "a hinge guide's table after BS EN 1935" },
  { what: "1100 wide", width: 1100, percent: 18, source: "a hinge guide's table after BS EN 1935" },
  { what: "1150 wide", width: 1150, percent: 26, source: "a hinge guide's table after BS EN 1935" },
  { what: "1200 wide", width: 1200, percent: 33, source: "a hinge guide's table after BS EN 1935" },
  { what: "1250 wide", width: 1250, percent: 40, source: "a hinge guide's table after BS EN 1935" },
]

/** Hinge grades of doors and the mass they carry, kg. */
export const HINGE_GRADES = [
  { what: "40 kg", mass: 40, grade: 7, source: "BS EN 1935:2002, Table 1 (from memory)" },
  { what: "60 kg", mass: 60, grade: 10, source: "BS EN 1935:2002, Table 1 (from memory)" },
  { what: "80 kg", mass: 80, grade: 11, source: "BS EN 1935:2002, Table 1 (from memory)" },
  { what: "100 kg", mass: 100, grade: 12, source: "BS EN 1935:2002, Table 1 (from memory)" },
  { what: "120 kg", mass: 120, grade: 13, source: "BS EN 1935:2002, Table 1 (from memory)" },
  { what: "160 kg", mass: 160, grade: 14, source: "BS EN 1935:2002, Table 1 (from memory)" },
]

/** Clear opening with a gap of 3 and a stop of 12, mm; which of the widths of Approved Document M vol 1 it passes. */
export const CLEAR_WIDTHS = [
  {
    what: "762, 35 thick",
    leaf: 762,
    thickness: 35,
    clear: 718,
    source: "a construction reference page after Approved Document M vol 1",
  },
  {
    what: "813, 35 thick",
    leaf: 813,
    thickness: 35,
    clear: 769,
    source: "a construction reference page after Approved Document M vol 1",
  },
  {
    what: "838, 35 thick",
    leaf: 838,
    thickness: 35,
    clear: 794,
    source: "a construction reference page after Approved Document M vol 1",
  },
  {
    what: "864, 35 thick",
    leaf: 864,
    thickness: 35,
    clear: 820,
    source: "a construction reference page after Approved Document M vol 1",
  },
  {
    what: "826, 40 thick",
    leaf: 826,
    thickness: 40,
    clear: 777,
    source: "a construction reference page after Approved Document M vol 1",
  },
  {
    what: "926, 40 thick",
    leaf: 926,
    thickness: 40,
    clear: 877,
    source: "a construction reference page after Approved Document M vol 1",
  },
]

/** Gaps round a fire door, mm. */
export const FIRE_GAPS = {
  what: "head, jambs: 2 to 4, aimed at 3; foot with smoke control and no seal: 3",
  least: 2,
  target: 3,
  most: 4,
  smokeFoot: 3,
  source: "BS 8214:2016, as quoted by a door inspector and fire-door guides",
}

/** Closers: least power size for a leaf's width and mass, both at their limits. */
export const CLOSER_SIZES = [
  {
    what: "750 wide, 20 kg: 1",
    width: 750,
    mass: 20,
    size: 1,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
  {
    what: "850 wide, 40 kg: 2",
    width: 850,
    mass: 40,
    size: 2,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
  {
    what: "762 wide, 41 kg: 3",
    width: 762,
    mass: 41,
    size: 3,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
  {
    what: "951 wide, 20 kg: 4",
    width: 951,
    mass: 20,
    size: 4,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
  {
    what: "1250 wide, 100 kg: 5",
    width: 1250,
    mass: 100,
    size: 5,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
  {
    what: "1400 wide, 120 kg: 6",
    width: 1400,
    mass: 120,
    size: 6,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
  {
    what: "1600 wide, 160 kg: 7",
    width: 1600,
    mass: 160,
    size: 7,
    source: "BS EN 1154, as reproduced by a hardware guide",
  },
]
