import { fixed, mmText } from "../../kernels/units.ts"
import type { Step, Task } from "../trade.ts"
import { leftBy } from "./hand.ts"
import type { FloorInputs } from "./inputs.ts"
import { oilFullDays, oilFumes, oilGate } from "./oil.ts"
import { type FloorPlan, floorAreas } from "./plan-floor.ts"
import { limitText } from "./readings.ts"
import { wholeUp } from "./whole-up.ts"

type Draft = Omit<Step, "trade" | "room" | "key"> & { name: string }

/** Steps of a floating floor, in order. */
export function floatingSteps(task: Task<FloorInputs>, plan: FloorPlan): Step[] {
  const { rules } = task.job
  const { whole } = floorAreas(plan)
  const { packs } = plan
  return keyed(task, [
    deckStep(task, plan),
    {
      name: "acclimatise",
      title: "Boards into the room",
      detail: `${packsText(packs)}, closed, flat, off the walls and spread out; heating on, room within limits ${rules.value("floor-heating-before")} working days before.`,
      stage: "acclimatise",
      hours: hoursOf(packs, rules.value("floor-pace-carrying")),
      after: [key(task, "deck")],
      gate: {
        process: "boards come to rest with the room's air",
        hours: rules.value("floor-acclimatise"),
        until: `boards read ${limitText(plan.limits.find((limit) => limit.what === "board")!)}, within ${rules.value("floor-moisture-difference-most")} points of the deck`,
        forbids: ["close", "wet"],
      },
      noisy: false,
      dusty: false,
    },
    {
      name: "underlay",
      title: "Underlay",
      detail: `${plan.underlayTake.strips} strips at right angles to the boards, butted, ${plan.underlay.foil ? "foil up, " : ""}joints taped, turned up at the walls.`,
      stage: "floor",
      hours: hoursOf(whole, rules.value("floor-pace-underlay")),
      after: [key(task, "acclimatise")],
      hold: "Boards, deck and air read and within limits; deck vacuumed.",
      noisy: false,
      dusty: false,
    },
    boardsStep(task, plan),
    coveringStep(task, whole),
    ...oilSteps(task, plan),
  ])
}

/** Steps where what lies in the room stays: covered before, uncovered at the end. */
export function stayingSteps(task: Task<FloorInputs>): Step[] {
  const { rules } = task.job
  const area = task.room.floorArea
  return keyed(task, [
    {
      name: "cover",
      title: "Cover the floor that stays",
      detail: `Vacuum, cover ${fixed(area, 1)} m2 wall to wall, edges taped down, doorway taped.`,
      stage: "prepare",
      hours: hoursOf(area, rules.value("floor-pace-covering")),
      after: [],
      noisy: false,
      dusty: false,
    },
    uncover(task, area),
  ])
}

function deckStep(task: Task<FloorInputs>, plan: FloorPlan): Draft {
  const { rules } = task.job
  const { whole } = floorAreas(plan)
  const flat = `flat within ${rules.value("floor-flatness")} mm under a ${rules.value("floor-flatness-straightedge") / 1000} m straightedge`
  const screws = plan.deck?.screws ?? 0
  const fixing = plan.deck
    ? `Scan. Screw the deck down: ${screws} screws ${plan.deck.screwLength} long, ${plan.deck.from}, heads below the surface. `
    : ""
  return {
    name: "deck",
    title: plan.deck ? "Deck screwed down, flat, read" : "Base made flat, read",
    detail: `${fixing}Plane high spots, pack hollows, vacuum.`,
    stage: "deck",
    hours:
      hoursOf(screws, rules.value("floor-pace-screws")) + hoursOf(whole, rules.value("floor-pace-levelling")),
    after: [],
    hold: `Deck ${flat}, quiet underfoot, ${limitText(plan.limits[0]!)}; hidden pipes and cables marked.`,
    noisy: true,
    dusty: true,
  }
}

function boardsStep(task: Task<FloorInputs>, plan: FloorPlan): Draft {
  const { rules } = task.job
  const { layout, movement } = plan
  const glued = task.input.joints === "glued"
  return {
    name: "boards",
    title: `Boards, ${layout.rows.length} rows`,
    detail: `First row along wall ${plan.direction.wall.number}, ${mmText(movement.gap)} mm gap all round on spacers, rows as on the sheet; linings undercut by ${buildUpUndercut(task, plan)} mm.${breakText(plan)} Spacers out at the end.`,
    stage: "floor",
    hours:
      hoursOf(floorAreas(plan).laid, rules.value("floor-pace-boards")) +
      plan.breaks.length * rules.value("floor-break-hours"),
    after: [key(task, "underlay"), ...lenders(plan).map((room) => `floors/${room}/boards`)],
    ...(glued
      ? {
          gate: {
            process: "glue in the joints",
            hours: rules.value("floor-glued-walk"),
            forbids: ["walk" as const, "load" as const],
          },
        }
      : {}),
    hold: `Gap ${mmText(movement.gap)} mm free everywhere, also at linings and pipes; joints tight; nothing fixed through the floor.`,
    noisy: true,
    dusty: true,
  }
}

/** Packs to bring in besides what is left open of rooms before. */
export function packsText(packs: number): string {
  if (packs === 0) return "What is left of the packs opened"
  return `${packs} pack${packs === 1 ? "" : "s"}`
}

/** Rooms whose offcuts are laid here: they are laid before. */
function lenders({ layout }: FloorPlan): string[] {
  return [...new Set(layout.brought.map(leftBy))].sort()
}

function breakText({ breaks, movement }: FloorPlan): string {
  if (breaks.length === 0) return ""
  const at = breaks.map((each) => `${mmText(each.fromLeft)} along wall ${each.wall}`).join("; ")
  return ` Movement break at ${at}: boards end ${mmText(movement.gap)} mm on both sides of the line; profile fixed to the deck in the gap.`
}

/** Undercut of linings for this floor, mm. */
export function buildUpUndercut(task: Task<FloorInputs>, plan: FloorPlan): number {
  return plan.buildUp + task.job.rules.value("floor-undercut-allowance")
}

function coveringStep(task: Task<FloorInputs>, area: number): Draft {
  return {
    name: "cover",
    title: "Cover the new floor",
    detail: `Vacuum; cover ${fixed(area, 1)} m2 with board or breathing paper, taped to itself, never to the oak; no sheet that holds damp.`,
    stage: "floor",
    hours: hoursOf(area, task.job.rules.value("floor-pace-covering")),
    after: [key(task, "boards")],
    noisy: false,
    dusty: false,
  }
}

function uncover(task: Task<FloorInputs>, area: number): Draft {
  return {
    name: "uncover",
    title: "Floor covering up",
    detail: "Lift edges inward so that dust stays in it; vacuum.",
    stage: "covers-off",
    hours: hoursOf(area, task.job.rules.value("floor-pace-covering")),
    after: [key(task, "cover")],
    noisy: false,
    dusty: true,
  }
}

function oilSteps(task: Task<FloorInputs>, plan: FloorPlan): Draft[] {
  const { rules } = task.job
  const { laid, whole } = floorAreas(plan)
  const coats = task.input.oilCoats
  const full = oilFullDays(task)
  const steps: Draft[] = [uncover(task, whole)]
  for (let coat = 1; coat <= coats; coat++) {
    const last = coat === coats
    const gate = oilGate(task, last)
    steps.push({
      name: `oil-${coat}`,
      title: coats > 1 ? `Oil, coat ${coat} of ${coats}` : "Oil, one coat",
      detail: `${fixed(laid, 1)} m² from the far wall to the door, thin, buffed; windows open.${last && full !== null ? ` No rugs or water for ${full} days.` : ""}`,
      stage: "oil",
      hours: hoursOf(laid, rules.value("floor-pace-oil")),
      after: [key(task, coat === 1 ? "uncover" : `oil-${coat - 1}`)],
      ...(gate ? { gate } : {}),
      noisy: false,
      dusty: false,
      ...(oilFumes(plan) ? { fumes: true } : {}),
    })
  }
  return steps
}

function keyed(task: Task<FloorInputs>, drafts: readonly Draft[]): Step[] {
  return drafts.map(({ name, ...step }) => ({
    key: key(task, name),
    trade: "floors",
    room: task.room.id,
    ...step,
  }))
}

function key(task: Task<FloorInputs>, name: string): string {
  return `floors/${task.room.id}/${name}`
}

/** Working hours for an amount at a pace, to the quarter hour, rounded up. */
function hoursOf(amount: number, pace: number): number {
  const quarters = 4
  return wholeUp((amount / pace) * quarters) / quarters
}
