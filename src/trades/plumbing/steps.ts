import { dryingHours, dryingProcesses } from "../../rulebook/drying.ts"
import type { Step, Task } from "../trade.ts"
import type { PlumbingInputs, Ware } from "./inputs.ts"
import type { HungRadiator } from "./radiators.ts"

/** Words for a piece of sanitaryware. */
export const wareWords: Record<Ware["kind"], string> = {
  wc: "WC",
  basin: "basin",
  shower: "shower",
  bath: "bath",
  "towel-rail": "towel rail",
  sink: "sink",
}

/** Steps of plumbing a room: pipes proved, radiators behind dry white and the room warm, sanitaryware on cured tile. */
export function plumbingSteps(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Step[] {
  const out = (id: string) => task.job.rules.value(id)
  const count = radiators.length + task.input.sanitaryware.length
  const toDo = task.input.firstFix === "to-do"
  return [
    step(task, "first-fix", {
      title: toDo ? "First fix pipes, caps on, pressure test" : "Tails checked, caps on, pressure test",
      detail:
        radiators.length > 0
          ? `Tails at their places by the schedule; holes ${holeWords(radiators)} through the floor.`
          : "Tails and wastes at their places by the schedule.",
      stage: "prepare",
      hours: count * out(toDo ? "plumb-out-first-fix" : "plumb-out-check") + out("plumb-out-test"),
      hold: "Pressure held, written on the sheet, before anything is covered.",
      noisy: toDo,
      dusty: toDo,
    }),
    ...(radiators.length > 0 ? radiatorSteps(task, radiators) : []),
    ...(task.input.sanitaryware.length > 0 ? wareSteps(task) : []),
  ]
}

function holeWords(radiators: HungRadiator[]): string {
  return [...new Set(radiators.map((each) => `${each.hole} mm`))].join(", ")
}

function radiatorSteps(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Step[] {
  const { rules } = task.job
  return [
    step(task, "radiators", {
      title: "Hang radiators",
      detail: `${radiators.length} by the schedule, heights from the finished floor. Fill, vent, balance; no leak at any joint.`,
      stage: "heat",
      hours: radiators.length * rules.value("plumb-out-radiator"),
      hold: "White behind each radiator is on and dry before it is hung.",
    }),
    step(task, "heating-on", {
      title: "Heating on, room brought to its steady warmth",
      detail: `Steady, gentle warmth, ${rules.value("floor-heating-before")} working days; write down air readings morning and evening. No wood comes in before the limits hold.`,
      stage: "heat",
      hours: rules.value("plumb-out-test"),
      after: [`plumbing/${task.room.id}/radiators`],
      gate: {
        process: "Room warm and steady, before wood comes in",
        hours: elapsedHours(rules.value("floor-heating-before")),
        until: "air within the limits on every reading",
        forbids: [],
      },
    }),
  ]
}

/** Elapsed hours of so many working days, the free days between them counted in. */
export function elapsedHours(workingDays: number): number {
  return Math.ceil((workingDays * daysInWeek) / workingDaysInWeek) * hoursInDay
}

const daysInWeek = 7
const workingDaysInWeek = 5
const hoursInDay = 24

function wareSteps(task: Task<PlumbingInputs>): Step[] {
  const { rules, climate } = task.job
  const { sanitaryware } = task.input
  const hours = dryingHours("sealant", climate, rules)
  const { what, next, until, forbids } = dryingProcesses.sealant
  const gate =
    hours === "do not"
      ? {}
      : {
          gate: {
            process: `${what}, before ${next}`,
            hours: Math.ceil(Number(hours.toPrecision(9))),
            until,
            forbids: [...forbids],
          },
        }
  return [
    step(task, "sanitaryware", {
      title: `Fix sanitaryware: ${sanitaryware.map((each) => wareWords[each.kind]).join(", ")}`,
      detail:
        "On cured tile only; drill tile slowly without hammer; connect, run water, look and feel at every joint.",
      stage: "second-fix",
      hours: sanitaryware.length * rules.value("plumb-out-ware"),
      hold: "Grout has had its full time before load and fixings.",
    }),
    step(task, "seal", {
      title: "Seal sanitaryware to tile",
      detail: "Clean and dry joints, bath filled with water before it is sealed; one smooth bead.",
      stage: "second-fix",
      hours: rules.value("plumb-out-test"),
      after: [`plumbing/${task.room.id}/sanitaryware`],
      ...gate,
    }),
    step(task, "leak-check", {
      title: "Last leak check",
      detail: "Fill and empty everything; dry paper under every joint; hot and cold on the right side.",
      stage: "covers-off",
      hours: rules.value("plumb-out-test"),
      hold: "No drop on the paper; foreman signs.",
    }),
  ]
}

function step(
  task: Task<PlumbingInputs>,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const common = { trade: "plumbing", room: task.room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `plumbing/${task.room.id}/${key}` }
}
