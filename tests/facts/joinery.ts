const approvedDocument =
  "Approved Document K (England, 2013), private stairs, as quoted by a trade guide and a textbook abstract"
const trigonometry = "common practice"

/** Facts of second-fix joinery from outside the project, each with where it comes from. */
export const joineryFacts = {
  /** Long point at an external corner beyond the corner, t tan(turn / 2): computed by plane trigonometry. */
  externalMitres: [
    {
      what: "a right angle adds the board's thickness",
      turn: 90,
      thickness: 18,
      reach: 18.0,
      source: "common practice",
    },
    {
      what: "a 45 degree turn adds 7.46 to an 18 mm board",
      turn: 45,
      thickness: 18,
      reach: 7.456,
      source: "common practice",
    },
  ],
  /** Architrave set of a 762 leaf: lining inside 768 wide and 1,994 high from the floor, margin 6, architrave 70 (common practice arithmetic). */
  architraveSet: {
    insideWidth: 768,
    insideHeight: 1994,
    margin: 6,
    width: 70,
    head: 920,
    leg: 2070,
    source: "common practice",
  },
  /** What is usual on site; values outside would be odd. */
  ranges: [
    { id: "joinery-architrave-margin", least: 5, most: 10, source: "common practice" },
    { id: "joinery-skirting-fixing", least: 400, most: 600, source: "common practice" },
    { id: "joinery-architrave-fixing", least: 200, most: 300, source: "common practice" },
    { id: "joinery-adhesive-run", least: 6, most: 8, source: "common practice" },
    { id: "joinery-waste", least: 10, most: 15, source: "common practice" },
    { id: "joinery-lining-thickness", least: 27, most: 32, source: "common practice" },
    {
      id: "joinery-frame-centres",
      least: 600,
      most: 600,
      source: "NHBC Standards chapter 6.7, fixings of frames at most 600 apart",
    },
    {
      id: "joinery-paint-moisture",
      least: 18,
      most: 18,
      source: "NHBC Standards chapter 8.5 D2 (2006 text), not above 18 % at painting",
    },
  ],
  /** Private stair. */
  stairLimits: [
    { id: "joinery-stair-rise-most", what: "rise at most", value: 220, source: approvedDocument },
    { id: "joinery-stair-going-least", what: "going at least", value: 220, source: approvedDocument },
    { id: "joinery-stair-pitch-most", what: "pitch at most", value: 42, source: approvedDocument },
    { id: "joinery-stair-sum-least", what: "2R + G at least", value: 550, source: approvedDocument },
    { id: "joinery-stair-sum-most", what: "2R + G at most", value: 700, source: approvedDocument },
  ],
  /** Pitch and 2R + G worked out from the tangent. */
  pitches: [
    { rise: 220, going: 220, pitch: 45.0, sum: 660, source: trigonometry },
    { rise: 220, going: 245, pitch: 41.92, sum: 685, source: trigonometry },
    { rise: 200, going: 225, pitch: 41.63, sum: 625, source: trigonometry },
  ],
  /** Which limits a stair of equal rises lies outside of. */
  stairCases: [
    { rise: 220, going: 220, outside: ["pitch"], source: approvedDocument },
    { rise: 220, going: 245, outside: [] as string[], source: approvedDocument },
    { rise: 200, going: 225, outside: [] as string[], source: approvedDocument },
    { rise: 225, going: 260, outside: ["rise", "sum"], source: approvedDocument },
    { rise: 150, going: 215, outside: ["going", "sum"], source: approvedDocument },
  ],
}
