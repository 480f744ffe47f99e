import type { Caution } from "../trade.ts"

const MAKER = "the maker's instructions"

/** Cautions for a floor: which apply depends on the work. */
export function floorCautions(work: {
  laysBoards: boolean
  screwsDeck: boolean
  oils: boolean
  builtBefore2000: boolean
}): Caution[] {
  return [
    ...(work.screwsDeck || work.laysBoards ? [hidden] : []),
    ...(work.screwsDeck && work.builtBefore2000 ? [oldMaterials] : []),
    ...(work.laysBoards ? [dust, saw, packs] : []),
    ...(work.oils ? [rags, solvents] : []),
  ]
}

const hidden: Caution = {
  trade: "floors",
  id: "floor-hidden",
  text: "Scan first: pipes and cables lie under old decks. No screw longer than given, none in a marked zone; turn water and circuit off where in doubt.",
  why: "A screw through a pipe or cable floods, shocks or burns, often only weeks later.",
  defer: "a licensed electrician or plumber for anything found",
}
const oldMaterials: Caution = {
  trade: "floors",
  id: "floor-old-materials",
  text: "Old floor tiles, their glue and boards over pipes may hold asbestos. Stop, leave it alone and ask, before lifting or sanding.",
  why: "In a house built before 2000 it may be there; disturbed fibres harm for life.",
  defer: "an asbestos survey and a licensed contractor",
}
const dust: Caution = {
  trade: "floors",
  id: "floor-dust",
  text: "Oak dust: cut with an extractor on the saw, wear a fitted mask (FFP3), vacuum, never sweep dry.",
  why: "Hardwood dust harms the nose and lungs; the exposure limit is 3 mg/m3.",
  defer: "the workplace exposure limits (EH40) and the saw's instructions",
}
const saw: Caution = {
  trade: "floors",
  id: "floor-saw",
  text: "Saw: guard working, piece clamped, hands 150 mm clear, let the blade stop, unplug to change it. Ear and eye protection.",
  why: "Short and narrow pieces pull the hand to the blade.",
  defer: MAKER,
}
const packs: Caution = {
  trade: "floors",
  id: "floor-packs",
  text: "Carry packs by two on stairs; lay them flat, spread out, not in one stack in mid-span.",
  why: "Heavy and long; a stack of packs overloads joists.",
  defer: "the manual handling guidance and the weight printed on the pack",
}
const rags: Caution = {
  trade: "floors",
  id: "floor-oily-rags",
  text: "Oily rags and pads take fire by themselves. Hang them singly outdoors, or soak in water and seal in a lidded metal tin. Never leave them in a heap, a bin or the house overnight.",
  why: "Drying oil heats itself as it dries.",
  defer: "the oil maker's data sheet and fire service advice",
}
const solvents: Caution = {
  trade: "floors",
  id: "floor-solvents",
  text: "Oil: windows open, no flame, spark or smoking, gloves; nobody sleeps in the room that night.",
  why: "Vapours make giddy and can burn.",
  defer: "the oil maker's data sheet",
}
