import type { RuleEntry } from "../../../rulebook/entry.ts"

const en1154 = "BS EN 1154, table of power sizes, as reproduced by a hardware guide"

/** Power sizes of closers: widest and heaviest leaf of each; the least size for fire doors. */
export const closerRules: RuleEntry[] = [
  ...size(1, 750, 20),
  ...size(2, 850, 40),
  ...size(3, 950, 60),
  ...size(4, 1100, 80),
  ...size(5, 1250, 100),
  ...size(6, 1400, 120),
  ...size(7, 1600, 160),
  {
    id: "door-closer-fire-size",
    what: "power size of the closer of a fire door, least",
    value: 3,
    unit: "size",
    status: "from memory",
    source: "BS EN 1154 and trade guidance on fire door closers",
    safetyFloor: { least: 3 },
  },
]

function size(number: number, width: number, mass: number): RuleEntry[] {
  return [
    {
      id: `door-closer-${number}-width`,
      what: `widest leaf of a closer of power size ${number}`,
      value: width,
      unit: "mm",
      status: "published",
      source: en1154,
    },
    {
      id: `door-closer-${number}-mass`,
      what: `heaviest leaf of a closer of power size ${number}`,
      value: mass,
      unit: "kg",
      status: "published",
      source: en1154,
    },
  ]
}
