import type { Rules } from "../../rulebook/rules.ts"

/** The rulebook as one calculation reads it: values, and the ids of what was asked for. */
export interface RulesRead {
  value(id: string): number
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
    ids: () => [...asked],
  }
}
