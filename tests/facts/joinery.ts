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
}
