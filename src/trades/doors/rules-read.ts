import type { Rules } from "../../rulebook/rules.ts"

/** The rulebook as one calculation reads it: values, and the ids of what was asked for. */
export interface RulesRead {
  value(id: string): number
  /** Its value, status and source in words, for a sheet: `4500 mm (published: ...)`. */
  standing(id: string): string
  /** Ids asked for so far, in order. */
  ids(): string[]
}

/** A reader of the rulebook that keeps a list of what it was asked for. */
export function rulesRead(rules: Rules): RulesRead {
  const asked = new Set<string>()
  return {
    value(id) {
      asked.add(id)
      return rules.value(id)
    },
    standing(id) {
      asked.add(id)
      const { value, unit, status, source } = rules.entry(id)
      return `${value} ${unit} (${status}${source ? `: ${source}` : ""})`
    },
    ids: () => [...asked],
  }
}
