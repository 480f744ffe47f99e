import type { ElapsedHours } from "../../kernels/units.ts"
import { fixed } from "../../kernels/units.ts"
import { type DryingProcessId, dryingHours, dryingProcesses } from "../../rulebook/drying.ts"
import type { Gate, Step, Task } from "../trade.ts"
import { type CoatLine, dilutionOf } from "./coats.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { type CoatKey, coatOrder } from "./systems.ts"

/** The room's steps in order, each waiting for the one before; no step is offered before its gate. */
export function decoratingSteps(task: Task<DecoratingInputs>, lines: CoatLine[]): Step[] {
  const steps = [
    prepare(task, lines),
    ...plaster(task),
    ...coatSteps(task, lines, [
      "mist",
      "bond",
      "block",
      "white-1",
      "white-2",
      "colour-1",
      "colour-2",
      "colour-3",
      "prime",
    ]),
    ...fill(task, lines),
    ...coatSteps(task, lines, [
      "undercoat",
      "finish",
      "clear-1",
      "clear-2",
      "clear-3",
      "clear-4",
      "colour-last",
    ]),
    uncover(task),
  ]
  return steps.map((step, index) => ({
    ...step,
    after: [...step.after, ...(index > 0 ? [steps[index - 1]!.key] : [])],
  }))
}

/** Gate of a process in the job's air: whole hours, rounded up; none where the air forbids it (a finding says so). */
export function gateOf(
  task: Task<DecoratingInputs>,
  process: DryingProcessId,
  thickness?: number,
): Gate | undefined {
  const air = { ...task.job.climate, ...(thickness ? { thickness } : {}) }
  const hours = dryingHours(process, air, task.job.rules)
  if (hours === "do not") return undefined
  const { what, next, until, forbids } = dryingProcesses[process]
  return { process: `${what}, before ${next}`, hours: wholeHours(hours), until, forbids: [...forbids] }
}

/** Hours rounded up to whole ones, for paper: never sooner. */
export function wholeHours(hours: ElapsedHours): ElapsedHours {
  return Math.ceil(Number(hours.toPrecision(9)))
}

function coatSteps(task: Task<DecoratingInputs>, lines: CoatLine[], keys: CoatKey[]): Step[] {
  return coatOrder
    .filter((key) => keys.includes(key))
    .flatMap((key) => {
      const coat = lines.filter((line) => line.coat.key === key && line.area > 0)
      return coat.length > 0 ? [coatStep(task, coat)] : []
    })
}

function coatStep(task: Task<DecoratingInputs>, lines: CoatLine[]): Step {
  const { coat, process } = slowest(task, lines)
  const gate = gateOf(task, process)
  const solvent = lines.some((line) => line.product && line.product.base !== "water")
  return step(task, coat.key, {
    title: `${coat.name}${colours(lines)}`,
    detail: [...coatDetail(task, lines), ...(solvent ? [bedtime(task)] : [])].join(" "),
    stage: coat.stage,
    hours: coatHours(task, lines),
    ...(gate ? { gate } : {}),
    ...(coat.key === "colour-last"
      ? {
          hold: "Plates eased by the electrician with the supply off; walls filled and dry.",
          after: [`electrics/${task.room.id}/ease`],
        }
      : {}),
    ...(coat.key === "mist"
      ? { hold: "Plaster an even pale colour; air and surfaces read and written down." }
      : {}),
  })
}

/** Of the lines of one coat, the one whose process holds longest. */
function slowest(task: Task<DecoratingInputs>, lines: CoatLine[]): CoatLine {
  const hours = (line: CoatLine) => {
    const found = dryingHours(line.process, task.job.climate, task.job.rules)
    return found === "do not" ? Number.POSITIVE_INFINITY : found
  }
  return lines.reduce((worst, line) => (hours(line) > hours(worst) ? line : worst))
}

function colours(lines: CoatLine[]): string {
  const named = [...new Set(lines.map((line) => line.colour))].filter((colour) => colour !== "white")
  return named.length > 0 ? `: ${named.join(", ")}` : ""
}

function coatDetail(task: Task<DecoratingInputs>, lines: CoatLine[]): string[] {
  const area = lines.reduce((sum, line) => sum + line.area, 0)
  const where = `${fixed(area, 1)} m2: ${lines
    .filter((line) => line.area > 0)
    .map((line) => line.surface)
    .join(", ")}.`
  switch (lines[0]!.coat.key) {
    case "mist": {
      const { paint, water } = dilutionOf(task.input, task.job.rules)
      return [
        where,
        `Thin ${paint} parts paint with ${water} of water, by measure; stir. No undercoat on plaster.`,
      ]
    }
    case "white-1":
      return [where, "Ceiling first. Behind radiators and pipes first, before they are hung."]
    case "colour-1":
      return [where, "Plates are off or not yet on. Cut in, then roll; one batch on a wall."]
    case "finish":
    case "undercoat":
      return [
        where,
        "Rub down between coats, dust off. Top down: leaves, linings, architraves, skirting last. Leave doors open on wedges.",
      ]
    case "colour-last":
      return [
        where,
        "Touch no wiring: the electrician eases the plates. One batch on a wall; keep the touch-up tin.",
      ]
    default:
      return [where]
  }
}

function bedtime(task: Task<DecoratingInputs>): string {
  const hours = task.job.rules.value("decor-solvent-before-bed")
  return `Solvent or oil: not on a storey where people sleep within ${hours} hours of bedtime; open windows.`
}

function coatHours(task: Task<DecoratingInputs>, lines: CoatLine[]): number {
  const out = (id: string) => task.job.rules.value(id)
  return lines.reduce((sum, line) => {
    if (line.surface.startsWith("Leaf") && line.length === 0) return sum + out("decor-out-leaf")
    if (line.length > 0) return sum + line.length / out("decor-out-trim")
    if (line.coat.mist) return sum + line.area / out("decor-out-mist")
    const ceiling = line.surface.includes("eiling") || line.surface.startsWith("Slope")
    return sum + line.area / out(ceiling ? "decor-out-ceiling" : "decor-out-wall")
  }, 0)
}

function prepare(task: Task<DecoratingInputs>, lines: CoatLine[]): Step {
  const { input, job } = task
  const old = [input.walls, input.ceiling, input.slopes].some((state) => state && state !== "new-plaster")
  const area = surfaceArea(lines)
  return step(task, "prepare", {
    title: old ? "Cover, wash, fill and rub down" : "Cover, check and fill",
    detail: old
      ? "Wash off dirt and grease, let dry, rub down wet, fill. Old gloss is dulled. Stains: find and mend their cause first."
      : "Mask pipes, boxes and windows. Cut back snots, fill nicks. No filler or paint on dark plaster.",
    stage: "prepare",
    hours: job.rules.value("decor-out-set-up") + (old ? area / job.rules.value("decor-out-prepare") : 0),
    dusty: old,
  })
}

function plaster(task: Task<DecoratingInputs>): Step[] {
  const { input } = task
  const isNew = [input.walls, input.ceiling, input.slopes].includes("new-plaster")
  if (!isNew || input.plasterDry) return []
  const gate = gateOf(task, "skim", input.plasterThickness)
  return [
    step(task, "plaster-dry", {
      title: "New plaster drying",
      detail:
        "Air the room, steady gentle warmth, windows ajar. Never force it with strong heat. Write down air readings.",
      stage: "dry-out",
      hours: 0,
      ...(gate ? { gate } : {}),
    }),
  ]
}

function fill(task: Task<DecoratingInputs>, lines: CoatLine[]): Step[] {
  const length = trimLength(lines)
  const gate = gateOf(task, "caulk")
  return [
    step(task, "fill", {
      title: "Fill, caulk and rub down",
      detail:
        "Fill fixings and mitres, rub down, dust off; caulk trim to wall in thin beads, not to the floor. Floor covered.",
      stage: "fill",
      hours: length / task.job.rules.value("decor-out-caulk") + task.job.rules.value("decor-out-set-up"),
      ...(gate ? { gate } : {}),
      hold: "Floor, stairs and leaves covered before any rubbing down.",
      dusty: true,
    }),
  ]
}

function uncover(task: Task<DecoratingInputs>): Step {
  return step(task, "uncover", {
    title: "Covers off, touch in, clean",
    detail:
      "Masking off while paint is soft or cut with a knife; touch in from the kept tin; plates back by the electrician.",
    stage: "covers-off",
    hours: task.job.rules.value("decor-out-set-up"),
  })
}

/** Metres of trim, each counted once however many coats. */
export function trimLength(lines: CoatLine[]): number {
  return [...new Map(lines.map((line) => [line.surface, line.length])).values()].reduce(
    (sum, each) => sum + each,
    0,
  )
}

function surfaceArea(lines: CoatLine[]): number {
  const plain = lines.filter((line) => line.length === 0 && !line.surface.startsWith("Leaf"))
  return [...new Map(plain.map((line) => [line.surface, line.area])).values()].reduce(
    (sum, each) => sum + each,
    0,
  )
}

function step(
  task: Task<DecoratingInputs>,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const { room } = task
  const common = { trade: "decorating", room: room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `decorating/${room.id}/${key}` }
}
