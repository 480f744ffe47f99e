import type { RuleEntry } from "../../rulebook/entry.ts"

const practice = { status: "common practice", source: null } as const

/** Constants of plumbing. */
export const plumbingRules: RuleEntry[] = [
  {
    id: "plumb-radiator-foot",
    what: "finished floor to the lower edge of a radiator",
    value: 150,
    unit: "mm",
    range: "so that skirting and a broom pass",
    ...practice,
  },
  {
    id: "plumb-tail-beside",
    what: "centre of a pipe beyond the radiator's end",
    value: 40,
    unit: "mm",
    range: "valves at both lower ends; the valve's maker goes first",
    ...practice,
  },
  {
    id: "plumb-tail-off",
    what: "centre of a pipe off the finished wall",
    value: 55,
    unit: "mm",
    range: "usual brackets; the maker goes first",
    ...practice,
  },
  {
    id: "plumb-pipe-gap",
    what: "gap round a pipe through a floating floor",
    value: 10,
    unit: "mm",
    range: "where the floor gives no gap of its own",
    ...practice,
  },
  {
    id: "plumb-bath-depth",
    what: "depth of a bath out from its wall, where none is written",
    value: 700,
    unit: "mm",
    range: "usual baths",
    ...practice,
  },
  {
    id: "plumb-out-first-fix",
    what: "first fix of pipes for one radiator or piece of sanitaryware",
    value: 3,
    unit: "h",
    range: "one plumber",
    ...practice,
  },
  {
    id: "plumb-out-check",
    what: "checking first-fixed tails of one piece",
    value: 0.25,
    unit: "h",
    range: "one plumber",
    ...practice,
  },
  {
    id: "plumb-out-radiator",
    what: "hanging and connecting a radiator",
    value: 1.5,
    unit: "h",
    range: "one plumber",
    ...practice,
  },
  {
    id: "plumb-out-ware",
    what: "fixing and connecting a piece of sanitaryware",
    value: 2.5,
    unit: "h",
    range: "one plumber",
    ...practice,
  },
  {
    id: "plumb-out-test",
    what: "pressure and leak check of a room",
    value: 1,
    unit: "h",
    range: "one plumber",
    ...practice,
  },
]
