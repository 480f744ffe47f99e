/** A drying or cure time, hours, in air of 20 °C and 60 % unless said. */
export interface DryingFact {
  what: string
  process: string
  thickness?: number
  temperature?: number
  humidity?: number
  /** Least and most hours that the source gives. */
  from: number
  to: number
  source: string
}

const PRACTICE = "common practice"
const SCREED =
  "two-slope screed rule of BS 8203 (from memory), worked by hand: t to 50 mm, then 50 + 2 (t - 50) days"
const day = 24

/** Drying times from outside the project. */
export const DRYING: DryingFact[] = [
  {
    what: "skim on board, planning 1 to 4 weeks",
    process: "skim",
    thickness: 3,
    from: 7 * day,
    to: 28 * day,
    source: PRACTICE,
  },
  {
    what: "backing 5 mm, 4 weeks",
    process: "backing",
    thickness: 5,
    from: 28 * day,
    to: 28 * day,
    source: PRACTICE,
  },
  { what: "screed 40 mm", process: "screed", thickness: 40, from: 40 * day, to: 40 * day, source: SCREED },
  { what: "screed 50 mm", process: "screed", thickness: 50, from: 50 * day, to: 50 * day, source: SCREED },
  { what: "screed 65 mm", process: "screed", thickness: 65, from: 80 * day, to: 80 * day, source: SCREED },
  { what: "screed 75 mm", process: "screed", thickness: 75, from: 100 * day, to: 100 * day, source: SCREED },
  {
    what: "screed 100 mm",
    process: "screed",
    thickness: 100,
    from: 150 * day,
    to: 150 * day,
    source: SCREED,
  },
  {
    what: "levelling 3 mm, 12 to 24 h",
    process: "levelling",
    thickness: 3,
    from: 12,
    to: 24,
    source: PRACTICE,
  },
  {
    what: "levelling 8 mm, 24 h for 3 to 5 mm",
    process: "levelling",
    thickness: 8,
    from: 38.4,
    to: 64,
    source: PRACTICE,
  },
  { what: "powder filler 5 mm, 1 to 2 h", process: "filler", thickness: 5, from: 1, to: 2, source: PRACTICE },
  {
    what: "two-part wood filler, 15 to 30 min",
    process: "wood-filler",
    from: 0.25,
    to: 0.5,
    source: PRACTICE,
  },
  { what: "caulk, paint after 1 to 4 h", process: "caulk", thickness: 4, from: 1, to: 4, source: PRACTICE },
  { what: "caulk, thick bead 24 h", process: "caulk", thickness: 10, from: 24, to: 24, source: PRACTICE },
  { what: "wood glue clamp 30 to 60 min", process: "wood-glue-clamp", from: 0.5, to: 1, source: PRACTICE },
  { what: "wood glue full 24 to 48 h", process: "wood-glue", from: 24, to: 48, source: PRACTICE },
  {
    what: "sealant 10 mm at 2.5 mm a day: 4 days",
    process: "sealant",
    thickness: 10,
    from: 96,
    to: 96,
    source: PRACTICE,
  },
  {
    what: "floor adhesive traffic 24 to 48 h",
    process: "floor-adhesive",
    from: 24,
    to: 48,
    source: PRACTICE,
  },
  { what: "tile adhesive to grout 16 to 24 h", process: "tile-adhesive", from: 16, to: 24, source: PRACTICE },
  { what: "grout wet 7 days", process: "grout-wet", from: 168, to: 168, source: PRACTICE },
  { what: "emulsion recoat 2 to 4 h", process: "emulsion", from: 2, to: 4, source: PRACTICE },
  {
    what: "emulsion at 10 °C, double",
    process: "emulsion",
    temperature: 10,
    from: 4,
    to: 8,
    source: PRACTICE,
  },
  { what: "emulsion at 80 %, double", process: "emulsion", humidity: 80, from: 4, to: 8, source: PRACTICE },
  { what: "water-borne trim recoat 6 h", process: "trim-water", from: 6, to: 6, source: PRACTICE },
  { what: "solvent gloss recoat 16 to 24 h", process: "trim-solvent", from: 16, to: 24, source: PRACTICE },
  { what: "hardwax oil recoat 8 to 12 h", process: "oil", from: 8, to: 12, source: PRACTICE },
  {
    what: "hardwax oil full 7 to 14 days",
    process: "oil-full",
    from: 7 * day,
    to: 14 * day,
    source: PRACTICE,
  },
  { what: "water-borne varnish recoat 2 to 4 h", process: "varnish", from: 2, to: 4, source: PRACTICE },
]

/** What must not be started. */
export const DO_NOT = [
  {
    what: "water-borne paint at 8 °C",
    process: "emulsion",
    temperature: 8,
    humidity: 60,
    source: "from memory: BS 6150, 8 to 10 °C",
  },
  {
    what: "water-borne paint at 86 %",
    process: "emulsion",
    temperature: 20,
    humidity: 86,
    source: "from memory: BS 6150, 80 to 85 %",
  },
  { what: "solvent gloss at 4 °C", process: "trim-solvent", temperature: 4, humidity: 60, source: PRACTICE },
  { what: "white wood glue at 4 °C", process: "wood-glue", temperature: 4, humidity: 50, source: PRACTICE },
  {
    what: "screed rule at 150 mm",
    process: "screed",
    temperature: 20,
    humidity: 60,
    thickness: 150,
    source: PRACTICE,
  },
]
