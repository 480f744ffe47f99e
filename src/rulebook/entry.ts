/** What a value rests on. A value recalled from memory is never `published`. */
export type RuleStatus = "published" | "common practice" | "from memory"

/** One constant of the trade: one entry, one fact. */
export interface RuleEntry {
  /** Stable id in kebab case, e.g. `door-hinge-from-top`. */
  id: string
  /** What it is, in trade words. */
  what: string
  value: number
  /** `mm`, `m2/l`, `h`, `°C`, `%`, `ratio` ... */
  unit: string
  /** The range it is good for, in words. */
  range?: string
  status: RuleStatus
  /** Document, edition and clause for `published` ("as quoted by ..." when read second hand); the document recalled for `from memory`; null for common practice. */
  source: string | null
  /** An override below (or above, for a `most`) this value is refused: the safety floor. */
  safetyFloor?: { least?: number; most?: number }
}

/** A job's own value for an entry, with the reason that is printed beside it. */
export interface RuleOverride {
  id: string
  value: number
  reason: string
}
