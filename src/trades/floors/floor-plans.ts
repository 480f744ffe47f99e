import type { Work } from "../trade.ts"
import type { FloorPlan } from "./plan-floor.ts"

const plans = new WeakMap<Work, FloorPlan>()

/** Keeps with a work the plan it was made of, for the sheets across rooms. */
export function withPlan(work: Work, plan: FloorPlan): Work {
  plans.set(work, plan)
  return work
}

/** The plan that a work was made of; undefined where no floor is laid. */
export function planOfWork(work: Work): FloorPlan | undefined {
  return plans.get(work)
}
