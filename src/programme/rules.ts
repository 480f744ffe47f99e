import type { RuleEntry } from "../rulebook/entry.ts"

/** Constants of the programme. */
export const programmeRules: RuleEntry[] = [
  {
    id: "programme-crews-in-room",
    what: "crews that work in one room at a time; a licensed trade's clean, dry visit beside other clean, dry work does not count",
    value: 1,
    unit: "crews",
    status: "common practice",
    source: null,
  },
  {
    id: "programme-dust-reach",
    what: "doorways that dust passes on its way to a wet coat: 0 only within the room, 1 into the rooms next to it too",
    value: 1,
    unit: "doorways",
    status: "common practice",
    source: null,
  },
  {
    id: "programme-one-person-most",
    what: "longest step that one person of a crew does alone while the others work elsewhere",
    value: 2,
    unit: "h",
    status: "common practice",
    source: null,
  },
]
