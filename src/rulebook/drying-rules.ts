import type { RuleEntry, RuleStatus } from "./entry.ts"

/** What a drying figure rests on: common practice, or a document. */
type Basis = "common practice" | { status: RuleStatus; source: string }

const practice: Basis = "common practice"
const screedAnnex: Basis = { status: "from memory", source: "BS 8203, annex on drying of screeds" }
const recalled = (source: string): Basis => ({ status: "from memory", source })

/** Drying and cure times of the trades' processes at about 20 °C and 60 % humidity, and the air each may be used in. */
export const dryingRules: readonly RuleEntry[] = [
  ...hours([
    ["skim", "skim plaster up to 3 mm, to an even pale colour", 168, practice],
    ["filler", "powder filler up to 5 mm, to rubbing down", 2, practice],
    ["deep-filler", "deep fill, to rubbing down", 24, practice],
    ["wood-filler", "two-part wood filler, to rubbing down", 0.5, practice],
    ["caulk", "acrylic caulk up to 5 mm, to painting", 4, practice],
    ["wood-glue-clamp", "white wood glue, to taking off clamps", 1, practice],
    ["wood-glue", "white wood glue, to load", 24, practice],
    ["floor-adhesive", "whole-bed floor adhesive, to walking", 48, practice],
    ["floor-adhesive-sand", "whole-bed floor adhesive, to sanding", 72, practice],
    ["grab-adhesive", "grab adhesive, to full strength", 72, practice],
    ["levelling", "levelling compound up to 5 mm, to covering", 24, practice],
    ["tile-adhesive", "tile adhesive, to grouting", 24, practice],
    ["grout", "grout, to foot and to fixings", 24, practice],
    ["grout-wet", "grout, to a shower or standing water", 168, practice],
    ["mist", "mist coat, to the next coat", 4, practice],
    ["emulsion", "emulsion, to the next coat", 4, practice],
    ["trim-water", "water-borne primer, undercoat or finish on wood, to the next coat", 6, practice],
    ["trim-solvent", "solvent-borne primer, undercoat or gloss, to the next coat", 24, practice],
    ["oil", "hardwax oil, to the next coat", 12, practice],
    ["oil-walk", "hardwax oil, to light use", 24, practice],
    ["oil-full", "hardwax oil, to full use, rugs and water", 336, practice],
    ["varnish", "water-borne floor varnish, to the next coat", 4, practice],
    ["varnish-walk", "water-borne floor varnish, to light use", 24, practice],
    ["varnish-solvent", "solvent-borne varnish, to the next coat", 24, practice],
  ]),
  rule("drying-skim-per-mm", "each mm of plaster beyond the skim", 134.4, "h/mm", practice),
  rule("drying-skim-thin", "thickness that counts as skim", 3, "mm", practice),
  rule("drying-backing-per-mm", "backing plaster, each mm (4 weeks for 5 mm)", 134.4, "h/mm", practice),
  rule("drying-backing-usual", "backing plaster where its thickness is not known", 10, "mm", practice),
  rule("drying-screed-per-mm", "sand and cement screed, each mm up to the knee", 24, "h/mm", screedAnnex),
  rule("drying-screed-knee", "thickness beyond which a screed dries at half the rate", 50, "mm", screedAnnex),
  rule("drying-screed-slow-per-mm", "screed, each mm beyond the knee", 48, "h/mm", practice),
  rule("drying-screed-usual", "screed where its thickness is not known", 65, "mm", practice),
  rule("drying-filler-thin", "thickest fill in one layer of powder filler", 5, "mm", practice),
  rule("drying-levelling-thin", "levelling compound that counts as thin", 5, "mm", practice),
  rule(
    "drying-levelling-per-mm",
    "levelling compound, each mm beyond thin (24 h for 3 mm)",
    8,
    "h/mm",
    practice,
  ),
  rule("drying-caulk-thin", "caulk bead that counts as thin", 5, "mm", practice),
  rule("drying-caulk-per-mm", "caulk, each mm beyond thin", 4, "h/mm", practice),
  rule("drying-sealant-per-mm", "polymer sealant, each mm of depth (2.5 mm a day)", 9.6, "h/mm", practice),
  rule("drying-sealant-usual", "sealant bead where its depth is not known", 6, "mm", practice),
  rule("drying-plaster-thickest", "thickest plaster the rule is good for", 25, "mm", practice),
  rule("drying-screed-thickest", "thickest screed the rule is good for", 100, "mm", practice),
  rule("drying-levelling-thickest", "thickest levelling the rule is good for", 15, "mm", practice),
  rule("drying-deep-fill-thickest", "thickest deep fill the rule is good for", 15, "mm", practice),
  rule("drying-bead-thickest", "deepest bead the rule is good for", 15, "mm", practice),
  rule("drying-reference-temperature", "air that the drying times are stated for", 20, "°C", practice),
  rule("drying-reference-humidity", "air that the drying times are stated for", 60, "%", practice),
  rule(
    "drying-doubling",
    "drop in temperature that doubles a drying or cure time",
    10,
    "°C",
    recalled("planning rule after Arrhenius: a reaction runs half as fast 10 °C colder"),
  ),
  rule("drying-still-air", "times as long in a closed room without moving air", 1.5, "ratio", practice),
  rule("drying-hottest", "warmest air any of the rules is good for", 30, "°C", practice),
  rule("drying-plaster-coldest", "coldest air for plaster, screed and cement goods", 5, "°C", practice),
  rule("drying-plaster-dampest", "dampest air for plaster, screed and cement goods", 85, "%", practice),
  rule(
    "drying-water-coldest",
    "coldest air for water-borne paint, varnish, caulk and filler",
    10,
    "°C",
    recalled("BS 6150, conditions for water-borne paint (8 to 10 °C)"),
  ),
  rule(
    "drying-water-dampest",
    "dampest air for water-borne paint, varnish, caulk and filler",
    80,
    "%",
    recalled("BS 6150, humidity for painting (80 to 85 %)"),
  ),
  rule("drying-solvent-coldest", "coldest air for solvent paint, oil and sealant", 5, "°C", practice),
  rule("drying-solvent-dampest", "dampest air for solvent paint, oil and sealant", 85, "%", practice),
  rule("drying-glue-coldest", "coldest air for wood glue", 10, "°C", practice),
  rule("drying-glue-dampest", "dampest air for wood glue", 80, "%", practice),
]

function hours(rows: [string, string, number, Basis][]): RuleEntry[] {
  return rows.map(([id, what, value, basis]) => rule(`drying-${id}-hours`, what, value, "h", basis))
}

function rule(id: string, what: string, value: number, unit: string, basis: Basis): RuleEntry {
  const rest = basis === "common practice" ? { status: basis, source: null } : basis
  return { id, what, value, unit, range: "rooms, see the coldest and dampest air", ...rest }
}
