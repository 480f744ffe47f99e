import type { Caution } from "../trade.ts"
import { type HungDoor, makesLining } from "./hanging/hung-door.ts"
import type { RulesRead } from "./rules-read.ts"

const trade = "doors"

/** Cautions for the doors of one room; each stands once. */
export function doorCautions(doors: readonly HungDoor[], occupied: boolean, rules: RulesRead): Caution[] {
  const hung = doors.filter((each) => each.fitted !== null)
  const fire = doors.filter((each) => (each.leaf?.minutes ?? 0) > 0 || each.ask.minutes > 0)
  const heaviest = Math.max(0, ...hung.map((each) => each.leaf?.mass ?? 0))
  const twoPeople = rules.value("door-two-people")
  const list: Caution[] = []
  if (heaviest > twoPeople) list.push(heavy(heaviest, twoPeople))
  if (hung.length > 0) list.push(dust)
  if (fire.length > 0) list.push(fireLeaf, guidance)
  if (occupied && fire.length > 0) list.push(sameDay)
  if (doors.some((each) => makesLining(each.door) || each.door.lining === "keep") && hung.length > 0)
    list.push(services)
  if (doors.some((each) => each.door.lining !== "new" && each.work.hang !== "stays")) list.push(oldPaint)
  return list
}

/** Cautions in a line each for the foot of a door sheet; the room's own sheet of cautions has them in full. */
export function shortCautions(cautions: readonly Caution[]): { text: string; why: string; defer: string }[] {
  const isSaid = (id: string) => cautions.some((caution) => caution.id === id)
  const kept = cautions.filter(({ id }) => id !== "door-guidance" || !isSaid("door-fire-leaf"))
  return kept.map(({ id, text, why, defer }) => {
    const said = short[id]
    return said ? { text: said.text ?? text, why: said.rest, defer: "" } : { text, why, defer }
  })
}

/** The same cautions short; the heavy leaf's keeps its own text, with the weight. */
const short: Record<string, { text?: string; rest: string }> = {
  "door-two-people": { rest: "Your employer's handling assessment decides." },
  "door-dust": {
    text: "Plane and rout with extraction; fine-dust mask (from memory: FFP3).",
    rest: "COSHH assessment decides.",
  },
  "door-fire-leaf": {
    text: "Label, seals, latch: never off, cut or painted. No figure here certifies.",
    rest: "Data sheet; building control.",
  },
  "door-guidance": {
    text: "No figure here certifies a door.",
    rest: "England's guidance, partly from memory; building control decides.",
  },
  "door-same-day": {
    text: "Off the stair only when the new leaf hangs the same day.",
    rest: "People sleep here; ask the foreman.",
  },
  "door-services": {
    text: "Scan for cables before screwing or cutting.",
    rest: "A licensed electrician for anything live.",
  },
  "door-old-paint": {
    text: "Old paint may hold lead: sand wet, never dry or by flame.",
    rest: "Test first; lead regulations.",
  },
}

function heavy(mass: number, limit: number): Caution {
  return {
    trade,
    id: "door-two-people",
    text: `Two people carry and hang the leaf: it weighs up to ${Math.round(mass)} kg.`,
    why: `Over ${limit} kg is more than the handling filter for one man close in at his strongest; on stairs and at arm's length it is far less.`,
    defer: "The filter is no legal limit: your employer's handling assessment decides.",
  }
}

const dust: Caution = {
  trade,
  id: "door-dust",
  text: "Plane and rout with extraction on the tool; wear a mask for fine dust (from memory: FFP3); do not sweep dry.",
  why: "Hardwood and board dust harms lungs and nose.",
  defer: "COSHH assessment; the tool maker's instructions.",
}
const fireLeaf: Caution = {
  trade,
  id: "door-fire-leaf",
  text: "Fire-resisting leaf: do not take off its label, cut more than its data sheet allows, cut openings in it, or paint seals, label or latch.",
  why: "Its resistance was tested as a whole with frame, seals, hinges and gaps; one change can undo it.",
  defer: "The leaf's data sheet and certificate go before every figure here.",
}
const guidance: Caution = {
  trade,
  id: "door-guidance",
  text: "What guidance asks is England's, partly as quoted or from memory; no figure here certifies a door.",
  why: "Editions and regions differ, and building control decides for this house.",
  defer: "Building control before leaves are ordered.",
}
const sameDay: Caution = {
  trade,
  id: "door-same-day",
  text: "Take a door on the stair off only when its replacement hangs the same day; keep the way out, a working alarm and one exit usable each evening.",
  why: "People sleep in the house.",
  defer: "Foreman; building control.",
}
const services: Caution = {
  trade,
  id: "door-services",
  text: "Scan the wall beside the opening for cables and pipes before screwing or cutting.",
  why: "Switch drops run beside doors.",
  defer: "A licensed electrician for anything live.",
}
const oldPaint: Caution = {
  trade,
  id: "door-old-paint",
  text: "Old paint on linings and leaves may hold lead: do not dry-sand or burn it off; sand wet, wash hands.",
  why: "Lead paint was common before about 1960 and sold later.",
  defer: "Control of Lead at Work Regulations; test before work.",
}
