import type { Caution } from "../trade.ts"

/** What can hurt at the saw and along the skirting, by what is sawn and glued. */
export function joineryCautions(
  goods: readonly { material: string; primed: boolean }[],
  { adhesive }: { adhesive: boolean },
): Caution[] {
  const made = (material: string) => goods.some((good) => good.material === material)
  return [
    ...(made("mdf") ? [mdfDust] : []),
    ...(made("hardwood") ? [hardwoodDust] : []),
    ...(goods.length > 0 ? [mitreSaw, nailer, scanWalls] : []),
    ...(adhesive ? [grabAdhesive] : []),
  ]
}

const mdfDust: Caution = {
  trade: "joinery",
  id: "mdf-dust",
  text: "MDF: saw outside or with extraction at the tool, wear a fitted dust mask.",
  why: "Its dust is fine, and counts as hardwood dust unless the maker says otherwise.",
  defer: "Keep below the workplace limit for wood dust; ask the maker for the safety data sheet.",
}

const hardwoodDust: Caution = {
  trade: "joinery",
  id: "hardwood-dust",
  text: "Hardwood: extraction at the tool, fitted dust mask; sweep nothing dry, vacuum it.",
  why: "Hardwood dust can bring on asthma, and cancer of the nose after years.",
  defer: "Keep below the workplace limit for wood dust.",
}

const mitreSaw: Caution = {
  trade: "joinery",
  id: "mitre-saw",
  text: "Mitre saw: guard working, piece clamped, hands well clear, let the blade stop before lifting.",
  why: "Most saw injuries happen at the end of the cut and when clearing offcuts.",
  defer: "Follow the saw maker's instructions; unplug to change the blade.",
}

const nailer: Caution = {
  trade: "joinery",
  id: "nailer",
  text: "Nail gun: finger off the trigger, disconnect before clearing a jam.",
  why: "Nails glance off knots and metal.",
  defer: "Follow the maker's instructions.",
}

const scanWalls: Caution = {
  trade: "joinery",
  id: "scan-walls",
  text: "Scan walls before every fixing.",
  why: "Cables and pipes run behind skirting and beside doors.",
  defer: "Mark what is found; ask the licensed trade before fixing near it.",
}

const grabAdhesive: Caution = {
  trade: "joinery",
  id: "grab-adhesive",
  text: "Grab adhesive: air the room, keep it off the skin and off the floor; none between skirting and floor.",
  why: "Some kinds give off solvent; glue to the floor stops it from moving.",
  defer: "Follow the maker's instructions and safety data sheet.",
}
