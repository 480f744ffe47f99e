import type { Task } from "../trade.ts"
import type { CoatLine } from "./coats.ts"
import { gateOf } from "./gates.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { type Planned, stepIn } from "./planned.ts"

/** Covering, washing, filling before the first coat. */
export function prepare(task: Task<DecoratingInputs>, lines: CoatLine[]): Planned {
  const { input, job } = task
  const old = [input.walls, input.ceiling, input.slopes].some((state) => state && state !== "new-plaster")
  const area = surfaceArea(lines)
  return whole(task, "prepare", {
    title: old ? "Cover, wash, fill and rub down" : "Cover and check",
    detail: old
      ? "Wash, let dry, rub down wet, fill. Dull old gloss. Mend the cause of a stain first."
      : "Mask pipes, boxes and windows; mark nicks to fill. No filler or paint on dark plaster.",
    stage: "prepare",
    hours: job.rules.value("decor-out-set-up") + (old ? area / job.rules.value("decor-out-prepare") : 0),
    dusty: old,
  })
}

/** The wait for new plaster, unless it was seen dry. */
export function plaster(task: Task<DecoratingInputs>): Planned[] {
  const { input } = task
  const isNew = [input.walls, input.ceiling, input.slopes].includes("new-plaster")
  if (!isNew || input.plasterDry) return []
  const gate = gateOf(task, "skim", input.plasterThickness)
  return [
    whole(task, "plaster-dry", {
      title: "New plaster drying",
      detail: "Windows ajar, steady gentle warmth, never strong heat. Write down air readings.",
      stage: "dry-out",
      hours: 0,
      ...(gate ? { gate } : {}),
    }),
  ]
}

/** Filling, caulking and rubbing down after second fix. */
export function fill(task: Task<DecoratingInputs>, lines: CoatLine[]): Planned {
  const length = beadLength(lines)
  const gate = gateOf(task, "caulk")
  return whole(task, "fill", {
    title: "Fill, caulk and rub down",
    detail: "Fill fixings and mitres, rub down; caulk trim to wall in thin beads, never to the floor.",
    stage: "fill",
    hours: length / task.job.rules.value("decor-out-caulk") + task.job.rules.value("decor-out-set-up"),
    ...(gate ? { gate } : {}),
    hold: "Floor, stairs and leaves covered before any rubbing down.",
    dusty: true,
  })
}

/** Covers off and touching in, last of all. */
export function uncover(task: Task<DecoratingInputs>): Planned {
  return whole(task, "uncover", {
    title: "Covers off, touch in, clean",
    detail: "Masking off or cut with a knife; touch in from the kept tin; the electrician puts plates back.",
    stage: "covers-off",
    hours: task.job.rules.value("decor-out-set-up"),
  })
}

/** Metres of trim that is caulked to the wall, each counted once however many coats: no leaves, no linings. */
export function beadLength(lines: CoatLine[]): number {
  const beads = lines.filter((line) => line.part === "trim")
  return [...new Map(beads.map((line) => [line.surface, line.length])).values()].reduce(
    (sum, each) => sum + each,
    0,
  )
}

function surfaceArea(lines: CoatLine[]): number {
  const plain = lines.filter((line) => line.as !== undefined)
  return [...new Map(plain.map((line) => [line.surface, line.area])).values()].reduce(
    (sum, each) => sum + each,
    0,
  )
}

function whole(...of: Parameters<typeof stepIn>): Planned {
  return { step: stepIn(...of), surfaces: null }
}
