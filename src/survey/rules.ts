import type { RuleEntry } from "../rulebook/entry.ts"

/** How far measurements are trusted. */
export const surveyRules: RuleEntry[] = [
  {
    id: "survey-assumed-turn",
    what: "how far a turn taken for square without measuring may be out",
    value: 2,
    unit: "°",
    status: "common practice",
    source: null,
  },
  {
    id: "survey-measured-turn",
    what: "how far a turn measured with a bevel or protractor may be out",
    value: 1,
    unit: "°",
    status: "common practice",
    source: null,
  },
]
