import type { Rules } from "../../rulebook/rules.ts"

/** The rulebook as one calculation reads it: values, and the ids of what was asked for. */
export interface RulesRead {
  value(id: string): number
  /** True if the entry is recalled and was not read again. */
  isFromMemory(id: string): boolean
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
    isFromMemory: (id) => rules.entry(id).status === "from memory",
    ids: () => [...asked],
  }
}

/** A reader with a list of its own that also fills the list of the one it reads through. */
export function readThrough(rules: RulesRead): RulesRead {
  const asked = new Set<string>()
  return {
    ...rules,
    value(id) {
      asked.add(id)
      return rules.value(id)
    },
    ids: () => [...asked],
  }
}
