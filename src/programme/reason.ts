import type { Cause } from "./place.ts"
import type { Unit, UnitPlan } from "./units.ts"

/** What the calendar alone put off: loud work to an hour that is not quiet, solvent to one far enough from bedtime. */
export type Delay = { kind: "loud" } | { kind: "fumes"; aired: string }

/** Why a unit cannot start sooner, in plain words. */
export function reasonOf(unit: Unit, cause: Cause, plan: UnitPlan, delay: Delay | null): string {
  return `${cannot(unit, cause, plan)}${delay ? put(delay) : ""}`
}

function put(delay: Delay): string {
  return delay.kind === "loud"
    ? ", then for the next hours in which it may be loud"
    : `, then for the next morning: where people sleep, solvent and oil are done by ${delay.aired}`
}

function cannot(unit: Unit, cause: Cause, plan: UnitPlan): string {
  if ("before" in cause) return `${cannot(unit, cause.before, plan)}; then ${wholeDay(unit, cause.kind)}`
  if (cause.kind === "hold") return unit.hold?.because ?? "waits for what it needs"
  if (!("unit" in cause)) return "first of its line: waits only for the start of the job"
  const other = plan.units[cause.unit]!
  const crew = plan.crews[other.crew]!.name.toLowerCase()
  switch (cause.kind) {
    case "crew":
      return `waits for the ${crew}, busy until then with: ${named(other)}`
    case "room":
      return `waits for the ${crew} to leave the room: ${named(other)}`
    case "wet-coat":
      return `makes dust, so waits until this is dry: ${named(other)}`
    case "dust":
      return `a wet coat, so waits until the dust is over: ${named(other)}`
    case "wet-floor":
      return unit.shuts
        ? `shuts the way, so waits for those behind it: ${named(other)}`
        : `the way there is wet until then: ${named(other)}`
    case "visit":
      return `saved up for one visit, which waits for: ${named(other)}${dry(other)}`
    default: {
      const own = unit.waits.find((wait) => wait.unit === cause.unit)
      return `waits for: ${named(other)}${own?.until === "finish" ? "" : dry(other)}`
    }
  }
}

function wholeDay(unit: Unit, kind: "day" | "night"): string {
  if (kind === "night") return "for the next morning: it must be dry before bedtime, people sleep behind it"
  return unit.steps[0]!.stage === "nosings"
    ? "for a day that holds it all: people go to bed by this stair"
    : "for a day that holds it all, so that no doorway stands open in the evening"
}

function named({ steps }: Unit): string {
  const last = steps[steps.length - 1]!
  return last.room ? `${last.title} (${last.room})` : last.title
}

function dry({ steps }: Unit): string {
  const gate = steps[steps.length - 1]!.gate
  return gate && gate.hours > 0 ? ` and ${gate.process}` : ""
}
