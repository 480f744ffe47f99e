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
  {
    id: "survey-pitch",
    what: "how far a pitch measured with a level or an angle finder may be out",
    value: 1,
    unit: "°",
    status: "common practice",
    source: null,
  },
  {
    id: "survey-shape-looseness",
    what: "most that a distance between corners may be open while a shape with measured turns or a diagonal counts as fixed",
    value: 40,
    unit: "mm",
    range: "rooms with a breast, bay or splay, whose small turns nobody tapes diagonals over",
    status: "common practice",
    source: null,
  },
  {
    id: "survey-storey-overlap",
    what: "plan area that two rooms of a storey may seem to share before their openings are taped again",
    value: 0.1,
    unit: "m2",
    status: "common practice",
    source: null,
  },
  {
    id: "survey-no-fix-half-width",
    what: "no fixing nearer than this to a known pipe or cable, either side",
    value: 50,
    unit: "mm",
    range: "where its line is known; else scan",
    status: "common practice",
    source: null,
  },
  {
    id: "survey-no-fix-depth",
    what: "how far into the room a floor's no-fix zone is drawn from the wall it was found at",
    value: 300,
    unit: "mm",
    range: "where it runs beyond is not known",
    status: "common practice",
    source: null,
  },
]
