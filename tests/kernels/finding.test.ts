import { describe, expect, it } from "vitest"
import { type Finding, hasErrors, type Severity } from "../../src/kernels/finding.ts"

const finding = (severity: Severity): Finding => ({
  code: "trial",
  severity,
  at: { file: "job.yaml", path: [] },
  message: "A trial.",
})

describe("hasErrors", () => {
  it("is true only where one of the findings stops the job", () => {
    expect(hasErrors([])).toBe(false)
    expect(hasErrors([finding("note"), finding("warning")])).toBe(false)
    expect(hasErrors([finding("note"), finding("error")])).toBe(true)
  })
})
