import { expect, it } from "vitest"
import type { BrokenCase } from "../broken/cases/case.ts"
import { readBroken } from "./broken-jobs.ts"

/** One test for each case: exactly the findings it expects, each with its file, line and column, in order; and no crash. */
export function itFindsExactly(cases: readonly BrokenCase[]): void {
  it.each(cases.map((each) => [each.name, each] as const))("%s", (_name, { mutations, expected }) => {
    const { findings, jobs } = readBroken(mutations)
    const found = [...findings, ...jobs.flatMap((job) => job.findings)].map(
      ({ code, place: { file, line, column } }) => `${code} ${file}:${line}:${column}`,
    )
    expect(found).toEqual(expected)
  })
}
