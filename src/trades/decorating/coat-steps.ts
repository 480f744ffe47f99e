import { fixed } from "../../kernels/units.ts"
import { dryingHours } from "../../rulebook/drying.ts"
import type { Step, Task } from "../trade.ts"
import { type CoatLine, dilutionOf } from "./coats.ts"
import { gateOf } from "./gates.ts"
import { coatGroups, groupWords } from "./groups.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { type Planned, stepIn } from "./planned.ts"
import { type CoatKey, coatOrder } from "./systems.ts"

/** The steps of some coats of a room, in the order they go on; a coat that nothing takes is left out. */
export function coatSteps(task: Task<DecoratingInputs>, lines: CoatLine[], keys: CoatKey[]): Planned[] {
  return coatOrder
    .filter((key) => keys.includes(key))
    .flatMap((key) => {
      const coat = lines.filter((line) => line.coat.key === key && line.area > 0)
      if (coat.length === 0) return []
      return [{ step: coatStep(task, coat), surfaces: coat.map((line) => line.surface) }]
    })
}

function coatStep(task: Task<DecoratingInputs>, lines: CoatLine[]): Step {
  const { coat, process } = slowest(task, lines)
  const gate = gateOf(task, process)
  const solvent = lines.some((line) => line.product && line.product.base !== "water")
  return stepIn(task, coat.key, {
    title: `${coat.name}${colours(lines)}`,
    detail: [...coatDetail(task, lines), ...(solvent ? [bedtime(task)] : [])].join(" "),
    stage: coat.stage,
    hours: coatHours(task, lines),
    ...(gate ? { gate } : {}),
    ...(solvent ? { fumes: true } : {}),
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
  const groups = coatGroups(lines.filter((line) => line.area > 0))
  const area = groups.reduce((sum, group) => sum + group.area, 0)
  return [`${fixed(area, 1)} m²: ${groupWords(groups)}.`, ...wordsFor(task, lines[0]!)]
}

/** What to mind at a coat, in a line. */
function wordsFor(task: Task<DecoratingInputs>, { coat }: CoatLine): string[] {
  switch (coat.key) {
    case "mist": {
      const { paint, water } = dilutionOf(task.input, task.job.rules)
      return [`Thin ${paint} parts of paint with ${water} of water. No undercoat on plaster.`]
    }
    case "ceiling-1":
      return ["Before the walls; cut in where colours meet."]
    case "white":
      return ["Behind radiators and pipes first."]
    case "colour-1":
      return ["Plates off or not yet on; one batch on a wall."]
    case "finish":
    case "undercoat":
      return ["Rub down, dust off; top down, skirting last; doors open on wedges."]
    case "colour-last":
      return ["One batch on a wall; keep the touch-up tin. Touch no wiring."]
    default:
      return []
  }
}

function bedtime(task: Task<DecoratingInputs>): string {
  const hours = task.job.rules.value("solvent-before-bed")
  return `Solvent or oil: done ${hours} hours before bedtime where people sleep; windows open.`
}

function coatHours(task: Task<DecoratingInputs>, lines: CoatLine[]): number {
  const out = (id: string) => task.job.rules.value(id)
  return lines.reduce((sum, line) => {
    if (line.part === "leaf" && line.length === 0) return sum + out("decor-out-leaf")
    if (line.length > 0) return sum + line.length / out("decor-out-trim")
    if (line.coat.mist) return sum + line.area / out("decor-out-mist")
    const overhead = line.part === "ceiling" || line.part === "slope"
    return sum + line.area / out(overhead ? "decor-out-ceiling" : "decor-out-wall")
  }, 0)
}
