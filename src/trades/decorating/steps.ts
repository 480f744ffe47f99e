import type { Step, Task } from "../trade.ts"
import { coatSteps } from "./coat-steps.ts"
import type { CoatLine } from "./coats.ts"
import type { DecoratingInputs } from "./inputs.ts"
import type { Planned } from "./planned.ts"
import { fill, plaster, prepare, uncover } from "./room-steps.ts"
import { type CoatKey, coatOrder } from "./systems.ts"

/**
 * The room's steps in order. A coat waits for the coat before it on any of its surfaces, with that coat's gate; what
 * concerns the whole room waits for everything before it, and everything after waits for it.
 */
export function decoratingSteps(task: Task<DecoratingInputs>, lines: CoatLine[]): Step[] {
  const coats = (keys: CoatKey[]) => coatSteps(task, lines, keys)
  const planned = [
    prepare(task, lines),
    ...plaster(task),
    ...coats(beforeFilling),
    fill(task, lines),
    ...coats(afterFilling),
    uncover(task),
  ]
  return planned.map(({ step }, index) => ({ ...step, after: [...step.after, ...before(planned, index)] }))
}

const beforeFilling: CoatKey[] = [
  "mist",
  "bond",
  "block",
  "ceiling-1",
  "white",
  "ceiling-2",
  "colour-1",
  "colour-2",
  "colour-3",
  "prime",
]
const afterFilling: CoatKey[] = coatOrder.filter((key) => !beforeFilling.includes(key))

/** Keys of the steps that the step at an index waits for. */
function before(planned: readonly Planned[], index: number): string[] {
  const { surfaces } = planned[index]!
  const earlier = planned.slice(0, index)
  const lastOfRoom = earlier.findLastIndex((each) => each.surfaces === null)
  if (surfaces === null) return earlier.slice(Math.max(0, lastOfRoom)).map((each) => each.step.key)
  const lasts = surfaces.map((name) =>
    Math.max(
      lastOfRoom,
      earlier.findLastIndex((each) => each.surfaces?.includes(name)),
    ),
  )
  return [...new Set(lasts)].filter((last) => last >= 0).map((last) => earlier[last]!.step.key)
}
