import type { RuleEntry } from "../../../rulebook/entry.ts"

const en1935 = "BS EN 1935:2002, Table 1"
const annex = "BS EN 1935 annex, as quoted by four hardware guides"

const adjusted: RuleEntry[] = [
  {
    id: "door-mass-closer",
    what: "added to the leaf's mass for a closer without backcheck",
    value: 20,
    unit: "%",
    status: "published",
    source: annex,
  },
  {
    id: "door-mass-backcheck",
    what: "added to the leaf's mass for a closer with backcheck",
    value: 75,
    unit: "%",
    status: "published",
    source: annex,
  },
  {
    id: "door-mass-heavy-use",
    what: "added to the leaf's mass for hard use",
    value: 10,
    unit: "%",
    status: "common practice",
    source: null,
  },
  {
    id: "door-mass-slender",
    what: "height over width of a leaf under which mass is added: the shortfall, as per cent",
    value: 2,
    unit: "ratio",
    status: "published",
    source: "a hinge guide's table after BS EN 1935",
  },
]

const number: RuleEntry[] = [
  {
    id: "door-hinges-few",
    what: "hinges of a light leaf",
    value: 2,
    unit: "nr",
    range: "up to 813 x 2032",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinges-usual",
    what: "hinges of a leaf over 20 kg, of an outside door, of a fire door",
    value: 3,
    unit: "nr",
    status: "common practice",
    source: null,
    safetyFloor: { least: 3 },
  },
  {
    id: "door-hinges-tall",
    what: "hinges of a leaf over 2500 high or over 900 wide",
    value: 4,
    unit: "nr",
    status: "common practice",
    source: null,
  },
  {
    id: "door-two-hinges-mass",
    what: "heaviest leaf on two hinges",
    value: 20,
    unit: "kg",
    status: "common practice",
    source: null,
  },
  {
    id: "door-two-hinges-width",
    what: "widest leaf on two hinges",
    value: 813,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-two-hinges-height",
    what: "tallest leaf on two hinges",
    value: 2032,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-three-hinges-width",
    what: "widest leaf on three hinges",
    value: 900,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-three-hinges-height",
    what: "tallest leaf on three hinges",
    value: 2500,
    unit: "mm",
    status: "common practice",
    source: null,
  },
]

const places: RuleEntry[] = [
  {
    id: "door-hinge-from-top",
    what: "top of leaf to top of the upper hinge",
    value: 150,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinge-from-foot",
    what: "foot of leaf to foot of the lower hinge",
    value: 225,
    unit: "mm",
    status: "from memory",
    source: "trade handbooks: 6 inches down, 9 inches up",
  },
  {
    id: "door-hinge-under-top",
    what: "top of the upper hinge to top of the third, where a closer pulls",
    value: 200,
    unit: "mm",
    status: "published",
    source: "hinge guides after BS EN 1935, as quoted by hardware guides",
  },
  {
    id: "door-hinge-clear",
    what: "hinge clear of an old recess or of glass",
    value: 20,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinge-length",
    what: "length of hinges for ordinary leaves",
    value: 75,
    unit: "mm",
    range: "leaves 35 thick",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinge-length-heavy",
    what: "length of hinges for leaves 40 thick or more, and of fire doors",
    value: 100,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinge-heavy-from",
    what: "thickness of leaf from which the longer hinge is used",
    value: 40,
    unit: "mm",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinge-flap",
    what: "thickness of a flap of hinges for ordinary leaves, and so depth of its recess",
    value: 2,
    unit: "mm",
    range: "the hinge in hand decides",
    status: "common practice",
    source: null,
  },
  {
    id: "door-hinge-flap-heavy",
    what: "thickness of a flap of hinges 100 long, and so depth of its recess",
    value: 3,
    unit: "mm",
    range: "the hinge in hand decides",
    status: "common practice",
    source: null,
  },
  {
    id: "door-pad-thickness",
    what: "intumescent pad under a hinge flap, by which its recess is deepened",
    value: 1,
    unit: "mm",
    range: "only where the leaf's certificate asks for pads",
    status: "from memory",
    source: "certificates of fire-resisting leaves",
  },
  {
    id: "door-hinge-screws",
    what: "screws in one hinge",
    value: 8,
    unit: "nr",
    range: "4 in each flap; first in each long enough for the stud",
    status: "common practice",
    source: null,
  },
]

/** Hinge grades of doors: greatest adjusted mass of each, and the least grade for fire doors. */
const grades: RuleEntry[] = [
  grade("door-hinge-grade-4", 20, "published", `${en1935}, as quoted by hardware guides`),
  grade("door-hinge-grade-7", 40, "from memory", en1935),
  grade("door-hinge-grade-10", 60, "from memory", en1935),
  grade("door-hinge-grade-11", 80, "from memory", en1935),
  grade("door-hinge-grade-12", 100, "from memory", en1935),
  grade("door-hinge-grade-13", 120, "from memory", en1935),
  grade("door-hinge-grade-14", 160, "from memory", en1935),
  {
    id: "door-hinge-grade-fire",
    what: "hinge grade of a fire door, least",
    value: 11,
    unit: "grade",
    range: "fire-rated, melting over 800 °C; the leaf's data sheet decides",
    status: "from memory",
    source: "trade guidance on fire door hinges",
    safetyFloor: { least: 11 },
  },
]

/** Adjusted mass, number, places and grades of hinges. */
export const hingeRules: RuleEntry[] = [...adjusted, ...number, ...places, ...grades]

function grade(id: string, mass: number, status: RuleEntry["status"], source: string): RuleEntry {
  return {
    id,
    what: `greatest adjusted mass on hinges of grade ${id.split("-").at(-1)}`,
    value: mass,
    unit: "kg",
    status,
    source,
  }
}
