import { Fault } from "../kernels/fault.ts"
import type { At, Finding } from "../kernels/finding.ts"
import type { RuleEntry, RuleOverride } from "./entry.ts"

/** An entry as it stands for one job: its value may be the job's own. */
export interface RuleInForce extends RuleEntry {
  /** The rulebook's value, where the job overrides it. */
  standard?: number
  /** The job's reason, where it overrides. */
  reason?: string
}

/** The rulebook of one job: every entry, with the job's overrides applied. */
export class Rules {
  readonly #entries: Map<string, RuleInForce>

  constructor(entries: readonly RuleInForce[]) {
    this.#entries = new Map()
    for (const entry of entries) {
      if (this.#entries.has(entry.id)) throw new Fault(`rulebook entry ${entry.id} stands twice`)
      this.#entries.set(entry.id, entry)
    }
  }

  /** The entry in force; a `Fault` if the rulebook has none of that id (only we can cause that). */
  entry(id: string): RuleInForce {
    const found = this.#entries.get(id)
    if (!found) throw new Fault(`no rulebook entry ${id}`)
    return found
  }

  /** The value in force of an entry, in the entry's own unit. */
  value(id: string): number {
    return this.entry(id).value
  }

  /** All entries in the order they were given. */
  all(): RuleInForce[] {
    return [...this.#entries.values()]
  }
}

/**
 * The rulebook with a job's overrides applied.
 * @param at where the list of overrides stands; the index is appended for each
 * @returns rules in force, and a finding for an unknown id or a value beyond a safety floor (which is then not taken)
 */
export function rulesInForce(
  entries: readonly RuleEntry[],
  overrides: readonly RuleOverride[],
  at: At,
): { rules: Rules; findings: Finding[] } {
  const findings: Finding[] = []
  const byId = new Map<string, RuleOverride>()
  const known = new Map(entries.map((entry) => [entry.id, entry]))
  overrides.forEach((override, index) => {
    const finding = refusal(override, known.get(override.id), { file: at.file, path: [...at.path, index] })
    if (finding) findings.push(finding)
    else byId.set(override.id, override)
  })
  const rules = new Rules(
    entries.map((entry) => {
      const override = byId.get(entry.id)
      return override
        ? { ...entry, value: override.value, standard: entry.value, reason: override.reason }
        : entry
    }),
  )
  return { rules, findings }
}

function refusal(override: RuleOverride, entry: RuleEntry | undefined, at: At): Finding | null {
  if (!entry) {
    return {
      code: "override-unknown-rule",
      severity: "error",
      at: { ...at, path: [...at.path, "id"] },
      message: `The rulebook has no entry "${override.id}".`,
      mend: "Take the id from the foot of a sheet, or from the rulebook in the archive pack.",
    }
  }
  const { least, most } = entry.safetyFloor ?? {}
  const tooLow = least !== undefined && override.value < least
  const tooHigh = most !== undefined && override.value > most
  if (!tooLow && !tooHigh) return null
  return {
    code: "override-below-safety-floor",
    severity: "error",
    at: { ...at, path: [...at.path, "value"] },
    message: `${override.value} ${entry.unit} for "${entry.what}" goes beyond its safety floor of ${tooLow ? `at least ${least}` : `at most ${most}`} ${entry.unit}.`,
    mend: "Keep within the floor, or ask building control and the maker in writing and hang what they say.",
  }
}
