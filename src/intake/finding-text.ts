import type { Finding } from "../kernels/finding.ts"
import type { LocatedFinding } from "./yaml-file.ts"

/** A finding as one line: `file:line:column: message (expected …; mend: …)`; warnings and notes say what they are. */
export function findingText(finding: LocatedFinding): string {
  const { file, line, column } = finding.place
  return `${file}:${line}:${column}: ${findingWords(finding)}`
}

/** The words of a finding without its place. */
export function findingWords({ severity, message, expected, mend }: Finding): string {
  const more = [expected && `expected ${expected}`, mend].filter(Boolean).join("; ")
  const label = severity === "error" ? "" : `${severity}: `
  return `${label}${message}${more ? ` (${more})` : ""}`
}
