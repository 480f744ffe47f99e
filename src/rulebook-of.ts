import { orderRules } from "./orders/rules.ts"
import { programmeRules } from "./programme/rules.ts"
import { dryingRules } from "./rulebook/drying-rules.ts"
import type { RuleEntry } from "./rulebook/entry.ts"
import { sharedRules } from "./rulebook/shared-rules.ts"
import { surveyRules } from "./survey/rules.ts"
import type { Trade } from "./trades/trade.ts"

/** The whole rulebook: shared entries, the survey's, the programme's and the orders', then each trade's own. */
export function allRules(trades: readonly Trade[]): RuleEntry[] {
  return [
    ...sharedRules,
    ...dryingRules,
    ...surveyRules,
    ...programmeRules,
    ...orderRules,
    ...trades.flatMap((trade) => trade.rules),
  ]
}
