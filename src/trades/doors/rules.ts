import type { RuleEntry } from "../../rulebook/entry.ts"
import { escapeRules } from "./escape/rules.ts"
import { hangingRules } from "./hanging/rules.ts"

/** Constants of the doors trade: gaps, hinges, masses, outputs, and what guidance asks of doors on an escape route. */
export const rules: RuleEntry[] = [...escapeRules, ...hangingRules]
