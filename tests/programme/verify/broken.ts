import type { Instant } from "../../../src/kernels/calendar/instant.ts"
import type { Checked, DatedStep } from "../../../src/programme/programme.ts"
import { programmeRules } from "../../../src/programme/rules.ts"
import type { Step } from "../../../src/trades/trade.ts"
import { datedOf, programmeOf, siteOf } from "../../fixtures/programme.ts"
import { rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** Steps dated in one room, then one of them changed by hand. */
export function brokenAt(
  steps: readonly Step[],
  key: string,
  change: (step: DatedStep) => Partial<DatedStep>,
): Checked {
  const rooms = [surveyed()]
  const programme = datedOf(steps, rooms)
  return {
    programme: {
      ...programme,
      steps: programme.steps.map((each) => (each.step.key === key ? { ...each, ...change(each) } : each)),
    },
    steps,
    site: siteOf(rooms),
    file: programmeOf(),
    rules: rulesOf(programmeRules),
  }
}

/** A step moved by so many hours. */
export function movedBy(hours: number) {
  const by = (moment: Instant) => (moment + hours * 3_600_000) as Instant
  return ({ start, finish, ready }: DatedStep) => ({ start: by(start), finish: by(finish), ready: by(ready) })
}
