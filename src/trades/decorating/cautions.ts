import type { Caution, Task } from "../trade.ts"
import type { CoatLine } from "./coats.ts"
import type { DecoratingInputs } from "./inputs.ts"

/** What can hurt the decorator or the house in this room. */
export function decoratingCautions(task: Task<DecoratingInputs>, lines: CoatLine[]): Caution[] {
  const { input, job, room } = task
  const old = [input.walls, input.ceiling, input.slopes].some((state) => state && state !== "new-plaster")
  const oldWood = input.woodwork.state === "old-paint"
  const built = job.house.built ?? 0
  const solvent = lines.some((line) => line.product && line.product.base !== "water")
  const stairs = room.use === "landing" || room.use === "hall" || room.holes.some((hole) => !hole.floored)
  return [
    ...((old || oldWood) && built < job.rules.value("decor-lead-before") ? [lead] : []),
    ...((old || input.texture) && built < job.rules.value("decor-asbestos-before")
      ? [asbestos(input.texture)]
      : []),
    ...(solvent ? [fumes, rags] : []),
    solventLimit(task),
    ventilation,
    ...(stairs ? [stairwell] : []),
    plates,
  ].map((each) => ({ trade: "decorating", ...each }))
}

/** Entries that decide on the cautions. */
export const cautionRests = [
  "decor-lead-before",
  "decor-asbestos-before",
  "decor-voc-matt",
  "decor-voc-trim-water",
  "decor-voc-trim-solvent",
]

type Plain = Omit<Caution, "trade">

const lead: Plain = {
  id: "old-paint-lead",
  text: "Treat old paint as lead paint until tested. No dry sanding, no burning off; rub down wet, wash hands, bag the waste.",
  why: "Houses of this age often have lead in their paint.",
  defer: "A test by a laboratory; the law on lead at work.",
}

function asbestos(texture: boolean): Plain {
  return {
    id: "old-texture-asbestos",
    text: texture
      ? "Do not scrape, sand or drill the textured coating before the survey report is in hand."
      : "Old textures, boards and flue linings: stop and ask before scraping, sanding or drilling.",
    why: "Buildings older than the ban may hold asbestos.",
    defer: "A refurbishment survey and a licensed contractor.",
  }
}

function solventLimit({ job }: Task<DecoratingInputs>): Plain {
  const most = (id: string) => job.rules.value(`decor-voc-${id}`)
  return {
    id: "solvent-limit",
    text: `Read the tin before it goes up: at most ${most("matt")} g/l of solvent for walls and ceilings, ${most("trim-water")} for water-borne and ${most("trim-solvent")} for solvent-borne paint on trim.`,
    why: "More is not sold for this use and fills the house.",
    defer: "The maker's label.",
  }
}

const fumes: Plain = {
  id: "solvent",
  text: "Solvent or oil paint: windows open, no flame or spark, lids on, mask by the tin's label.",
  why: "Vapour burns and harms; people sleep in the house.",
  defer: "The maker's safety sheet.",
}

const rags: Plain = {
  id: "oily-rags",
  text: "Oily rags: hang singly outdoors to dry, or soak in water and seal in a metal container. Never leave them in a heap or a bin indoors.",
  why: "Drying oils heat themselves and catch fire hours later.",
  defer: "Fire service advice; the maker's label.",
}

const ventilation: Plain = {
  id: "ventilate",
  text: "Air the room while painting and drying, but no draught and no heater that burns gas.",
  why: "Wet paint and burnt gas load the air with water and fumes.",
  defer: "The maker's instructions.",
}

const stairwell: Plain = {
  id: "stairwell-access",
  text: "Over a stair: a platform made for stairs, no ladder on treads, edges guarded; never alone.",
  why: "A fall down a stairwell is a fall through a storey.",
  defer: "The rules for work at height; the scaffolder.",
}

const plates: Plain = {
  id: "plates",
  text: "Never loosen a switch or socket plate. The electrician eases it with the supply off.",
  why: "Bare terminals sit a finger's breadth behind it.",
  defer: "The electrician.",
}
