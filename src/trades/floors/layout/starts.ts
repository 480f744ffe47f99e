import type { Mm } from "../../../kernels/units.ts"
import { kept, lengthOf } from "./boards.ts"
import { type EndLimits, type Run, same } from "./end-plan.ts"
import type { State } from "./floor-state.ts"

/**
 * Starter lengths worth trying in a run: offcuts as they are, cuts that make a finisher fit, cuts that use a board up, and a spread of
 * fresh cuts; of these the ones that keep the rules, or all where none does.
 * @param steps how many fresh cuts are spread from the least end to a whole board
 */
export function startLengths(state: State, run: Run, limits: EndLimits, steps: number): Mm[] {
  const tried = triedLengths(state, run, limits, steps)
  const good = tried.filter((start) => keepsRules(start, state, run, limits))
  return good.length > 0 ? good : tried
}

function triedLengths(state: State, run: Run, limits: EndLimits, steps: number): Mm[] {
  const { boardLength, boardWidth, leastEnd, kerf } = limits
  const length = run.right - run.left
  const tried = new Set<Mm>()
  const add = (start: Mm) => {
    if (start > same && start <= boardLength && start < length) tried.add(start)
  }
  const addFinish = (finish: Mm) => {
    const start = (((length - finish) % boardLength) + boardLength) % boardLength
    add(start < same ? boardLength : start)
  }
  add(boardLength)
  addFinish(boardLength)
  const rest = length % boardLength
  for (const offcut of state.offcuts) {
    const { left, right } = kept(offcut, boardWidth)
    if (right) add(lengthOf(offcut))
    if (left) addFinish(lengthOf(offcut))
    if (right) add(lengthOf(offcut) - kerf - leastEnd)
    if (left) addFinish(lengthOf(offcut) - kerf - leastEnd)
  }
  add(rest / 2)
  add(boardLength - kerf - leastEnd)
  addFinish(boardLength - kerf - leastEnd)
  add(leastEnd)
  addFinish(leastEnd)
  if (rest + kerf <= boardLength) add(rest - leastEnd)
  for (const joint of state.last) {
    for (const at of [joint - limits.stagger, joint + limits.stagger]) {
      const start = (at - run.left) % boardLength
      if (start >= leastEnd) add(start)
    }
  }
  const span = boardLength - leastEnd
  for (let step = 0; step < steps; step++) add(Math.round(leastEnd + (span * step) / steps))
  return [...tried]
}

/** True if a starter of this length leaves both ends long enough and every joint far enough from the last row's. */
function keepsRules(start: Mm, state: State, run: Run, limits: EndLimits): boolean {
  const { boardLength, leastEnd, stagger } = limits
  if (start < leastEnd - same) return false
  let at = run.left + start
  for (; ; at += boardLength) {
    for (const joint of state.last) if (Math.abs(joint - at) < stagger) return false
    if (run.right - at <= boardLength + same) return run.right - at >= leastEnd - same
  }
}
