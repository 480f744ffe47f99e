import type { RuleEntry } from "../../../rulebook/entry.ts"

const common = { status: "common practice", source: null, unit: "h" } as const

/** Hours of work at a doorway. */
export const outputRules: RuleEntry[] = [
  { ...common, id: "door-hours-hang", what: "hang an ordinary leaf with latch and hinges", value: 1.75 },
  { ...common, id: "door-hours-hang-fire", what: "hang a fire-resisting leaf with seals", value: 2.75 },
  { ...common, id: "door-hours-closer", what: "fit a closer", value: 0.75 },
  { ...common, id: "door-hours-lining", what: "make and fix a lining with its stops", value: 1.5 },
  { ...common, id: "door-hours-ease", what: "make a kept lining ready: foot, recesses, stop", value: 0.75 },
  { ...common, id: "door-hours-strip", what: "take off an old leaf", value: 0.25 },
  { ...common, id: "door-hours-strip-lining", what: "take out an old lining", value: 0.5 },
  {
    ...common,
    id: "door-hours-seal-faces",
    what: "seal an unfinished oak leaf on all six faces",
    value: 0.5,
  },
  { ...common, id: "door-hours-check", what: "measure and write in the gaps of one leaf", value: 0.25 },
  { ...common, id: "door-hours-light", what: "close a glazed light over a door onto the stair", value: 1.5 },
  {
    ...common,
    id: "door-hours-enclosure",
    what: "walk round the stair enclosure and stop its gaps",
    value: 1,
  },
]
