import type { RuleEntry } from "../../../rulebook/entry.ts"

const guidance = {
  status: "published",
  source:
    "Approved Document K (England, 2013), private stairs, as quoted by a trade guide and a textbook abstract",
} as const
const recalled = {
  status: "from memory",
  source: "Approved Document K (England, 2013), sections 1 and 3",
} as const

/** What guidance asks of a stair in a dwelling. */
export const stairRules: RuleEntry[] = [
  {
    id: "joinery-stair-rise-most",
    what: "rise of a private stair at most",
    value: 220,
    unit: "mm",
    ...guidance,
    safetyFloor: { most: 220 },
  },
  {
    id: "joinery-stair-going-least",
    what: "going of a private stair at least",
    value: 220,
    unit: "mm",
    ...guidance,
    safetyFloor: { least: 220 },
  },
  {
    id: "joinery-stair-pitch-most",
    what: "pitch of a private stair at most",
    value: 42,
    unit: "°",
    ...guidance,
    safetyFloor: { most: 42 },
  },
  {
    id: "joinery-stair-sum-least",
    what: "twice the rise and the going at least",
    value: 550,
    unit: "mm",
    ...guidance,
  },
  {
    id: "joinery-stair-sum-most",
    what: "twice the rise and the going at most",
    value: 700,
    unit: "mm",
    ...guidance,
  },
  {
    id: "joinery-stair-unequal",
    what: "difference between rises of a flight above which building control is asked",
    value: 5,
    unit: "mm",
    range: "guidance says that all rises of a flight are the same",
    status: "common practice",
    source: null,
  },
  {
    id: "joinery-stair-handrail-least",
    what: "handrail over the pitch line or landing at least",
    value: 900,
    unit: "mm",
    ...recalled,
  },
  {
    id: "joinery-stair-handrail-most",
    what: "handrail over the pitch line or landing at most",
    value: 1000,
    unit: "mm",
    ...recalled,
  },
  {
    id: "joinery-stair-guarding-least",
    what: "guarding of stairs and landings in a dwelling at least",
    value: 900,
    unit: "mm",
    ...recalled,
    safetyFloor: { least: 900 },
  },
  {
    id: "joinery-stair-opening",
    what: "a ball of this size must not pass between parts of a guarding or open risers",
    value: 100,
    unit: "mm",
    ...recalled,
    safetyFloor: { most: 100 },
  },
  {
    id: "joinery-stair-out-guarding",
    what: "guarding taken off and put back by one joiner",
    value: 1.5,
    unit: "h",
    status: "common practice",
    source: null,
  },
  {
    id: "joinery-stair-out-part",
    what: "part of a stair cut and fixed by one joiner, each length",
    value: 0.5,
    unit: "h",
    status: "common practice",
    source: null,
  },
]
