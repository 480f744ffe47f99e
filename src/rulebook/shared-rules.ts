import type { RuleEntry } from "./entry.ts"

/** Constants that several trades and stages share. */
export const sharedRules: RuleEntry[] = [
  {
    id: "saw-kerf",
    what: "width that the mitre saw turns to dust at each cut",
    value: 3,
    unit: "mm",
    range: "mitre saw blades 216 to 254 mm",
    status: "common practice",
    source: null,
  },
  {
    id: "saw-end-trim",
    what: "squared off each factory end of a bought length",
    value: 5,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "saw-offcut-keep",
    what: "shortest offcut of a moulding worth keeping",
    value: 600,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "lift-one-person",
    what: "load close in at elbow height above which two people lift",
    value: 25,
    unit: "kg",
    range: "a filter for adults used to lifting, not a legal limit",
    status: "published",
    source: "HSE manual handling guidance L23, lifting filter, as quoted by a training provider",
    safetyFloor: { most: 25 },
  },
]
