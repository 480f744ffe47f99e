/** How much a finding weighs: an error stops the job; a warning is printed on the sheets; a note only informs. */
export type Severity = "error" | "warning" | "note"

/** Where in the job's files something was written: file relative to the job folder, and the path of keys inside it. */
export interface At {
  file: string
  path: (string | number)[]
}

/** Something wrong, doubtful or impossible in a job, as data; the place is resolved to line and column by intake. */
export interface Finding {
  /** Stable code in kebab case, e.g. `outline-not-closed`; tests compare this and the place, never the prose. */
  code: string
  severity: Severity
  at: At
  /** One plain sentence: what stood there. */
  message: string
  /** What was expected, if that helps. */
  expected?: string
  /** How to mend it. */
  mend?: string
}

/** True if any of the findings stops the job. */
export function hasErrors(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.severity === "error")
}
