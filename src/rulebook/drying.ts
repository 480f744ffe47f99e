import { layerHours, timesForCold, timesForDamp } from "../kernels/drying.ts"
import type { Celsius, ElapsedHours, Mm } from "../kernels/units.ts"
import type { Rules } from "./rules.ts"

/** What must not be done to a thing while it dries. */
export type Forbidden = "walk" | "load" | "coat" | "close" | "wet"

/** Goods that dry or cure alike: they share the air they may be used in. */
export type DryingFamily = "plaster" | "water" | "solvent" | "glue"

/** One process that takes its own time, whoever works. */
export interface DryingProcess {
  /** What was put on. */
  what: string
  /** What may follow. */
  next: string
  family: DryingFamily
  /** What ends it besides the hours: a reading, a look, a touch. */
  until: string
  forbids: Forbidden[]
  /** False for what cures rather than dries: damp air does not slow it within its range. */
  losesWater: boolean
  /** Ids of the entries for its layer; without `thickest` its thickness does not matter. */
  rules: {
    hours?: string
    thin?: string
    perMm?: string
    knee?: string
    slow?: string
    usual?: string
    thickest?: string
  }
}

/** The air a process stands in. */
export interface DryingAir {
  temperature: Celsius
  /** Relative humidity, %. */
  humidity: number
  /** Thickness of the layer or bead, mm; the usual one of the process where it is not given. */
  thickness?: Mm
  /** True for a closed room without moving air. */
  still?: boolean
}

/** Every process that a trade may wait for, by id. */
export const dryingProcesses = {
  skim: {
    ...dries("Skim plaster", "mist coat", "plaster", "even pale colour, no dark patch; never forced", [
      "coat",
    ]),
    rules: {
      hours: "drying-skim-hours",
      thin: "drying-skim-thin",
      perMm: "drying-skim-per-mm",
      thickest: "drying-plaster-thickest",
    },
  },
  backing: {
    ...dries("Backing plaster", "mist coat", "plaster", "even pale colour, no dark patch; never forced", [
      "coat",
    ]),
    rules: {
      perMm: "drying-backing-per-mm",
      usual: "drying-backing-usual",
      thickest: "drying-plaster-thickest",
    },
  },
  screed: {
    ...dries(
      "Sand and cement screed",
      "floor covering",
      "plaster",
      "a reading within the floor maker's limit",
      ["coat"],
    ),
    rules: {
      perMm: "drying-screed-per-mm",
      knee: "drying-screed-knee",
      slow: "drying-screed-slow-per-mm",
      usual: "drying-screed-usual",
      thickest: "drying-screed-thickest",
    },
  },
  levelling: {
    ...dries("Levelling compound", "floor covering", "plaster", "a reading within the floor maker's limit", [
      "load",
      "coat",
    ]),
    rules: {
      hours: "drying-levelling-hours",
      thin: "drying-levelling-thin",
      perMm: "drying-levelling-per-mm",
      thickest: "drying-levelling-thickest",
    },
  },
  filler: {
    ...dries("Powder filler", "rubbing down, coat", "water", "dry and hard to the nail", ["coat"]),
    rules: { hours: "drying-filler-hours", thickest: "drying-filler-thin" },
  },
  "deep-filler": {
    ...dries("Deep fill", "rubbing down, coat", "water", "dry and hard to the nail", ["coat"]),
    rules: { hours: "drying-deep-filler-hours", thickest: "drying-deep-fill-thickest" },
  },
  "wood-filler": {
    ...cures("Two-part wood filler", "rubbing down", "solvent", "hard to the nail", ["coat"]),
    rules: { hours: "drying-wood-filler-hours" },
  },
  caulk: {
    ...dries("Acrylic caulk", "paint", "water", "skinned, not soft under the thumb", ["coat"]),
    rules: {
      hours: "drying-caulk-hours",
      thin: "drying-caulk-thin",
      perMm: "drying-caulk-per-mm",
      thickest: "drying-bead-thickest",
    },
  },
  "wood-glue-clamp": {
    ...dries("Wood glue in clamps", "clamps off", "glue", "squeezed-out bead is firm", ["load"]),
    rules: { hours: "drying-wood-glue-clamp-hours" },
  },
  "wood-glue": {
    ...dries("Wood glue", "load", "glue", "full time by the maker", ["load"]),
    rules: { hours: "drying-wood-glue-hours" },
  },
  "floor-adhesive": {
    ...cures("Floor adhesive", "walking", "solvent", "boards do not move underfoot", ["walk", "load"]),
    rules: { hours: "drying-floor-adhesive-hours" },
  },
  "floor-adhesive-sand": {
    ...cures("Floor adhesive", "sanding", "solvent", "boards do not move underfoot", ["load"]),
    rules: { hours: "drying-floor-adhesive-sand-hours" },
  },
  "grab-adhesive": {
    ...cures("Grab adhesive", "load", "solvent", "full time by the maker", ["load"]),
    rules: { hours: "drying-grab-adhesive-hours" },
  },
  "tile-adhesive": {
    ...dries("Tile adhesive", "grout", "plaster", "tiles do not move", ["walk", "load", "wet"]),
    rules: { hours: "drying-tile-adhesive-hours" },
  },
  grout: {
    ...dries("Grout", "foot, fixings, sealant", "plaster", "even colour, hard to the nail", ["walk", "wet"]),
    rules: { hours: "drying-grout-hours" },
  },
  "grout-wet": {
    ...dries("Grout", "shower and standing water", "plaster", "even colour, hard to the nail", ["wet"]),
    rules: { hours: "drying-grout-wet-hours" },
  },
  sealant: {
    ...cures("Polymer sealant", "water", "solvent", "firm through its depth", ["wet"]),
    rules: {
      perMm: "drying-sealant-per-mm",
      usual: "drying-sealant-usual",
      thickest: "drying-bead-thickest",
    },
  },
  mist: {
    ...dries("Mist coat", "next coat", "water", "dry to the back of the hand", ["coat"]),
    rules: { hours: "drying-mist-hours" },
  },
  emulsion: {
    ...dries("Emulsion", "next coat", "water", "dry to the back of the hand", ["coat"]),
    rules: { hours: "drying-emulsion-hours" },
  },
  "trim-water": {
    ...dries("Water-borne wood paint", "next coat", "water", "does not drag under a dry finger", [
      "coat",
      "close",
    ]),
    rules: { hours: "drying-trim-water-hours" },
  },
  "trim-solvent": {
    ...cures("Solvent-borne wood paint", "next coat", "solvent", "does not drag under a dry finger", [
      "coat",
      "close",
    ]),
    rules: { hours: "drying-trim-solvent-hours" },
  },
  oil: {
    ...cures("Floor oil", "next coat", "solvent", "dry to a dry cloth", ["walk", "coat"]),
    rules: { hours: "drying-oil-hours" },
  },
  "oil-walk": {
    ...cures("Floor oil", "light use in socks", "solvent", "dry to a dry cloth", ["walk"]),
    rules: { hours: "drying-oil-walk-hours" },
  },
  "oil-full": {
    ...cures("Floor oil", "rugs, furniture, water", "solvent", "full time by the maker", ["load", "wet"]),
    rules: { hours: "drying-oil-full-hours" },
  },
  varnish: {
    ...dries("Water-borne varnish", "next coat", "water", "dry to the back of the hand", ["walk", "coat"]),
    rules: { hours: "drying-varnish-hours" },
  },
  "varnish-walk": {
    ...dries("Water-borne varnish", "light use in socks", "water", "dry to the back of the hand", ["walk"]),
    rules: { hours: "drying-varnish-walk-hours" },
  },
  "varnish-solvent": {
    ...cures("Solvent-borne varnish", "next coat", "solvent", "does not drag under a dry finger", [
      "walk",
      "coat",
    ]),
    rules: { hours: "drying-varnish-solvent-hours" },
  },
} satisfies Record<string, DryingProcess>

/** Id of a drying process. */
export type DryingProcessId = keyof typeof dryingProcesses

/**
 * Hours from putting on until the next step may follow, or "do not" where the air or the thickness lies outside what the
 * rule is good for. Twice as long for each 10 °C colder than the reference; in proportion to the dryness left in damper
 * air for what loses water; longer in still air; by thickness. Warmer and drier than the reference is never taken as sooner.
 * Unrounded; the touch or reading named in `until` decides on site.
 */
export function dryingHours(id: DryingProcessId, air: DryingAir, rules: Rules): ElapsedHours | "do not" {
  const process: DryingProcess = dryingProcesses[id]
  if (whyNot(process, air, rules)) return "do not"
  const layer = layerTime(process, air.thickness, rules)
  const cold = timesForCold(
    air.temperature,
    rules.value("drying-reference-temperature"),
    rules.value("drying-doubling"),
  )
  if (!process.losesWater) return layer * cold
  const damp = timesForDamp(air.humidity, rules.value("drying-reference-humidity"))
  return layer * cold * damp * (air.still ? rules.value("drying-still-air") : 1)
}

/** Why a process must not be started in this air, in words for the sheet; null where it may. */
export function dryingForbidden(id: DryingProcessId, air: DryingAir, rules: Rules): string | null {
  return whyNot(dryingProcesses[id], air, rules)
}

/** Ids of the rulebook entries that the time of a process rests on. */
export function dryingRests(id: DryingProcessId): string[] {
  const process: DryingProcess = dryingProcesses[id]
  const air = ["drying-reference-temperature", "drying-doubling", "drying-hottest"]
  const water = process.losesWater ? ["drying-reference-humidity", "drying-still-air"] : []
  const range = [`drying-${process.family}-coldest`, `drying-${process.family}-dampest`]
  return [...Object.values(process.rules), ...air, ...water, ...range]
}

function whyNot(process: DryingProcess, air: DryingAir, rules: Rules): string | null {
  const coldest = rules.value(`drying-${process.family}-coldest`)
  const dampest = rules.value(`drying-${process.family}-dampest`)
  const hottest = rules.value("drying-hottest")
  const thickest = process.rules.thickest ? rules.value(process.rules.thickest) : Number.POSITIVE_INFINITY
  if (!(air.temperature >= coldest)) return `colder than ${coldest} °C`
  if (!(air.temperature <= hottest)) return `warmer than ${hottest} °C`
  if (!(air.humidity >= 0 && air.humidity <= dampest)) return `damper than ${dampest} %`
  if (air.thickness !== undefined && !(air.thickness > 0 && air.thickness <= thickest)) {
    return `thicker than ${thickest} mm`
  }
  return null
}

function layerTime(process: DryingProcess, thickness: Mm | undefined, rules: Rules): ElapsedHours {
  const value = (id: string | undefined) => (id ? rules.value(id) : 0)
  const { hours, thin, perMm, knee, slow, usual } = process.rules
  const law = {
    hours: value(hours),
    upTo: value(thin),
    perMm: value(perMm),
    ...(knee ? { knee: { at: value(knee), perMm: value(slow) } } : {}),
  }
  return layerHours(thickness ?? (usual ? value(usual) : law.upTo), law)
}

function dries(what: string, next: string, family: DryingFamily, until: string, forbids: Forbidden[]) {
  return { what, next, family, until, forbids, losesWater: true }
}

function cures(what: string, next: string, family: DryingFamily, until: string, forbids: Forbidden[]) {
  return { what, next, family, until, forbids, losesWater: false }
}
