import { mmText } from "../../kernels/units.ts"
import type { Step } from "../trade.ts"
import { type Fitted, type HungDoor, hasCloser, makesLining } from "./hanging/hung-door.ts"
import { halfText } from "./messages.ts"
import type { RulesRead } from "./rules-read.ts"

const trade = "doors"

/** Steps at one doorway, in working order; a leaf that stays is only checked where guidance asks something of it. */
export function doorSteps(hung: HungDoor, rules: RulesRead): Step[] {
  const { door, work, ask } = hung
  if (work.hang === "stays") return ask.minutes > 0 ? [look(hung, rules)] : []
  const steps: Step[] = []
  if (door.leafNow || door.lining === "replace") steps.push(takeOff(hung, rules))
  if (door.lining !== "none") steps.push(lining(hung, rules))
  if (hung.fitted && isBareOak(hung)) steps.push(sealFaces(hung, rules))
  steps.push(hang(hung, rules), remeasure(hung, rules))
  return steps
}

/** True for a leaf of unfinished oak. */
export function isBareOak(hung: HungDoor): boolean {
  return hung.leaf?.face === "oak" && hung.work.hang === "new"
}

interface Draft {
  step: string
  title: string
  detail: string
  stage: Step["stage"]
  hours: number
  noisy?: boolean
  after?: string[]
  hold?: string
}

function step(hung: HungDoor, draft: Draft): Step {
  const { hold, after, noisy, step: name, ...rest } = draft
  return {
    ...rest,
    key: key(hung, name),
    trade,
    room: hung.home.id,
    after: after ?? [],
    ...(hold ? { hold } : {}),
    noisy: noisy ?? false,
    dusty: noisy ?? false,
  }
}

function key(hung: HungDoor, name: string): string {
  return `${trade}/${hung.door.id}/${name}`
}

function look(hung: HungDoor, rules: RulesRead): Step {
  return step(hung, {
    step: "look",
    title: `Look at door ${hung.door.id}: does it show ${hung.ask.minimumText}?`,
    detail:
      "Open it, look for a label or plug on the top or hinge edge, measure its thickness and gaps; write in what is found.",
    stage: "prepare",
    hours: rules.value("door-hours-check"),
    hold: "What it shows is written down and building control's answer is known.",
  })
}

function takeOff(hung: HungDoor, rules: RulesRead): Step {
  const { door, work } = hung
  const old = door.leafNow ?? "old leaf"
  const goes =
    work.hang === "rehang" ? "Mark it with the door's number and store it flat." : "Take it out of the house."
  const comesOut = door.lining === "replace"
  return step(hung, {
    step: "take-off",
    title: `Door ${door.id}: take off the old leaf${comesOut ? " and lining" : ""}`,
    detail: `${old}. ${goes}${comesOut ? " Take out lining and stops; tape the opening stud to stud at three heights." : ""}${hung.ask.onStair ? " Only when the new leaf can hang the same day." : ""}`,
    stage: comesOut ? "prepare" : "linings",
    hours:
      (door.leafNow ? rules.value("door-hours-strip") : 0) +
      (comesOut ? rules.value("door-hours-strip-lining") : 0),
    noisy: comesOut,
  })
}

function lining(hung: HungDoor, rules: RulesRead): Step {
  const { door, fitted } = hung
  const isMade = makesLining(door)
  return step(hung, {
    step: "lining",
    title: isMade
      ? `Door ${door.id}: make and fix the lining`
      : `Door ${door.id}: make the kept lining ready`,
    detail: isMade ? newLining(hung, rules) : keptLining(hung, fitted),
    stage: "linings",
    hours: rules.value(isMade ? "door-hours-lining" : "door-hours-ease"),
    noisy: true,
    hold: isMade ? "Legs plumb and out of twist, head level, size checked at three heights." : undefined,
  } as Draft)
}

function newLining({ fitted, leaf }: HungDoor, rules: RulesRead): string {
  const centres = rules.value("door-lining-fixing-centres")
  const end = rules.value("door-lining-fixing-end")
  const hold = rules.value("door-screw-hold")
  const size = fitted?.lining
    ? `${halfText(fitted.lining.internalWidth)} wide x ${halfText(fitted.lining.internalHeight)} high inside, over the finished floor. `
    : ""
  const fire =
    leaf && leaf.minutes > 0
      ? " Fill the space to the wall as the leaf's data sheet says (mineral wool, tested mastic)."
      : ""
  return `${size}Packers in pairs at each fixing; first fixing ${end} from the ends, then at most ${centres} apart, at least ${hold} into the wall.${fire}`
}

function keptLining(hung: HungDoor, fitted: Fitted | null): string {
  const { floors, work, door } = hung
  const parts: string[] = []
  if (floors.rise > 0) {
    parts.push(
      `Cut the foot of the lining ${mmText(floors.buildUp)} mm above the deck, so that the new floor runs under.`,
    )
  }
  if (fitted && fitted.proud !== null && fitted.proud > 0) parts.push(proudText(fitted.proud, work.rebateBy))
  parts.push(
    "Splice timber into old hinge and keep recesses that are not used again; filler does not hold there.",
  )
  if (door.plumb > 0)
    parts.push(`The lining is ${halfText(door.plumb)} mm out of plumb: set the hinge jamb true first.`)
  return parts.join(" ")
}

/** What is done where a leaf stands proud of a kept rebate. */
export function proudText(proud: number, by: HungDoor["work"]["rebateBy"]): string {
  const figure = halfText(proud)
  switch (by) {
    case "move-stop":
      return `Move the stop back by ${figure} mm.`
    case "deepen":
      return `Deepen the rebate by ${figure} mm.`
    case "replace-lining":
      return "Take this lining out and make a new one."
    default:
      return `The leaf would stand ${figure} mm proud: ask the foreman before hanging.`
  }
}

function sealFaces(hung: HungDoor, rules: RulesRead): Step {
  return step(hung, {
    step: "seal-faces",
    title: `Door ${hung.door.id}: seal the oak leaf on all six faces`,
    detail:
      "After trimming and cutting in, on the same day: both faces, both edges, top, foot and every recess. No plain steel on oak: brass or stainless screws. Leave label and seals bare.",
    stage: "hang",
    hours: rules.value("door-hours-seal-faces"),
    after: [key(hung, "hang")],
  })
}

function hang(hung: HungDoor, rules: RulesRead): Step {
  const { fitted, door, work, leaf } = hung
  const fire = (leaf?.minutes ?? 0) > 0
  const closer = hasCloser(work) ? rules.value("door-hours-closer") : 0
  const size = fitted ? `Leaf as hung ${halfText(fitted.size.width)} x ${halfText(fitted.size.height)}; ` : ""
  return step(hung, {
    step: "hang",
    title: `Door ${door.id}: hang the leaf`,
    detail: `${size}trims, hinges and latch by the door sheet, in its order of work.`,
    stage: "hang",
    hours: rules.value(fire ? "door-hours-hang-fire" : "door-hours-hang") + closer,
    noisy: true,
  })
}

function remeasure(hung: HungDoor, rules: RulesRead): Step {
  return step(hung, {
    step: "gaps",
    title: `Door ${hung.door.id}: measure the gaps again after paint and floor`,
    detail: "At each point of the door sheet: write in, compare with the limits beside, ease or pack.",
    stage: "snag",
    hours: rules.value("door-hours-check"),
    after: [key(hung, "hang")],
    hold: "All gaps written in and within their limits; leaf latches by itself where a closer is fitted.",
  })
}
