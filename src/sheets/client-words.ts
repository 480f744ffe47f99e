/** A word of the trade and what it means, for someone who has never built. */
interface Word {
  /** As it is found in text, in any capitals; endings are matched too. */
  word: string
  /** What is found: the word with its endings, unless given otherwise. */
  found?: RegExp
  means: string
}

/**
 * Words of the trade and of paper work that a client's sheet may use. Where one stands on a sheet, the sheet explains it at its own foot:
 * nobody should have to turn pages for a word.
 */
const words: readonly Word[] = [
  { word: "VAT", means: "value added tax: a tax on sales that the builder collects for the state" },
  {
    word: "provisional sum",
    means: "an allowance for work nobody can measure yet; you pay what it really costs, more or less",
  },
  {
    word: "retention",
    found: /\bretention\b|\bheld back\b/i,
    means: "a small part of the price that you keep until faults have been put right",
  },
  { word: "variation", means: "a change to the agreed work, written down with its price before it is done" },
  { word: "handover", means: "the day the finished rooms are given back to you, with keys and papers" },
  { word: "leaf", found: /\bleaf\b|\bleaves\b/i, means: "the door itself, without its frame" },
  { word: "primed", means: "with a first coat of paint from the factory" },
  { word: "butt hinge", means: "the plain folding hinge let into the edge of a door" },
  { word: "thumb-turn", means: "a bolt turned by hand inside; a coin opens it from outside" },
  { word: "door stop", means: "the strip that the door shuts against" },
  { word: "collar", means: "the ring that covers the hole round a pipe" },
  { word: "mixer", means: "a tap that mixes hot and cold water" },
  { word: "matt", means: "without shine" },
  { word: "water-borne", means: "thinned with water: little smell, brushes rinse under the tap" },
  {
    word: "trim",
    found: /\btrim\b/i,
    means: "narrow boards that cover joints: skirting and the boards round doors",
  },
  { word: "joinery", found: /\bjoinery\b/i, means: "woodwork: skirting, door surrounds, stair parts" },
  {
    word: "decorating",
    found: /\bdecorating\b/i,
    means: "painting, with the filling and rubbing down before it",
  },
  { word: "tiling", means: "tiles on floor and walls" },
  { word: "structural engineer", means: "the specialist who works out what beams and floors can carry" },
  {
    word: "public liability",
    found: /\bpublic liability\b/i,
    means: "insurance that pays if the builder harms people or damages things",
  },
  { word: "handrail", means: "the rail one holds on a stair" },
  { word: "skip", found: /\bskips?\b/i, means: "a big open container for rubbish" },
  { word: "projection", means: "how far a thing stands out from the wall" },
  { word: "skirting", means: "the board along the foot of a wall" },
  { word: "architrave", means: "the trim round a door opening" },
  {
    word: "door frame",
    found: /\bdoor frames?\b/i,
    means: "the timber round an opening that the door hangs in and shuts against",
  },
  { word: "threshold", means: "the bar on the floor under a door" },
  { word: "nosing", means: "the front edge of a stair step or landing" },
  { word: "underlay", means: "the thin sheet under floorboards that evens and quietens the floor" },
  { word: "grout", means: "the hard filling between tiles" },
  { word: "sealant", means: "the soft waterproof joint between tiles and shower, basin or bath" },
  { word: "satin", found: /\bsatin\b/i, means: "a paint with a slight shine, used on wood" },
  { word: "emulsion", means: "water-based paint for walls and ceilings" },
  { word: "undercoat", means: "the layer of paint below the last one on wood" },
  { word: "varnish", means: "a clear hard coat on wood" },
  { word: "engineered", means: "boards of real wood on top, glued on layers below so that they move less" },
  {
    word: "batch",
    means: "goods made in one go, with one number on the pack; colours can differ between batches",
  },
  {
    word: "building control",
    means: "the inspectors who check that the work keeps to the building regulations",
  },
  { word: "building regulations", means: "the law on how homes must be built and altered" },
  {
    word: "completion certificate",
    means:
      "building control’s paper that the work, as far as they saw it, keeps to the regulations; you need it to sell the house",
  },
  { word: "electrical certificate", means: "the electrician’s paper on what was put in and how it tested" },
  {
    word: "asbestos survey",
    means: "a specialist’s look for asbestos, a harmful fibre found in materials put in before 2000",
  },
  { word: "construction-phase plan", means: "the builder’s written plan for doing the work safely" },
  { word: "safety data sheet", means: "the maker’s page on how to use a paint, glue or oil without harm" },
  { word: "fire-resisting", means: "made and tested to hold back fire for a stated time when shut" },
  { word: "door closer", found: /\bdoor closers?\b/i, means: "a device that pulls a door shut" },
  { word: "latch", means: "the part that clicks and holds a door shut" },
  { word: "plant", found: /\bplant\b/i, means: "machines, skips and hired things" },
  { word: "party wall", means: "a wall that you share with a neighbour" },
  { word: "storey", means: "one floor of the house with its rooms" },
  { word: "dwarf wall", means: "the low wall under a sloping ceiling" },
  { word: "roof window", means: "a window that lies in the slope of the roof" },
  { word: "radiator valve", means: "the tap at a radiator" },
  {
    word: "make good, making good, made good",
    found: /\bmak(?:e|ing|es) good\b|\bmade good\b/i,
    means: "to mend plaster and finishes round new work so that it does not show",
  },
  { word: "guarding", means: "rails and panels that keep people from falling at stairs and edges" },
  { word: "lining", means: "builders’ word for a door’s frame" },
  { word: "landing", means: "the level space at the head of a stair" },
  { word: "eaves", means: "the low space where the roof meets the outside wall" },
]

const alone = words.map((each) => ({
  ...each,
  found: each.found ?? new RegExp(`\\b${each.word.replace(/y$/, "(?:y|ies)")}(?:s|es|ed|ing)?\\b`, "i"),
}))

/** The words of a text that are explained, each with what it means: `grout: the hard filling between tiles`, in order of the word. */
export function wordsExplained(text: string): string[] {
  return alone
    .filter(({ found }) => found.test(text))
    .map(({ word, means }) => `${word[0]!.toUpperCase()}${word.slice(1)}: ${means}.`)
    .sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1))
}
