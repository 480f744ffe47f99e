import type { Mutation } from "../../intake/broken-jobs.ts"

/** One broken jobs folder: what is done to the sound one, and exactly the findings that must come of it, in their order. */
export interface BrokenCase {
  name: string
  mutations: Mutation[]
  /** `code file:line:column`, the file relative to the jobs folder. */
  expected: string[]
}

/** A case of one text replaced in one file of the job `tiny`. */
export function replaced(
  name: string,
  [file, find, replace]: [file: string, find: string, replace: string],
  ...expected: string[]
): BrokenCase {
  return {
    name,
    mutations: [{ file: `tiny/${file}`, find, replace }],
    expected: expected.map((each) => inTiny(each)),
  }
}

/** A case of whole-file changes. */
export function changed(name: string, mutations: Mutation[], ...expected: string[]): BrokenCase {
  return { name, mutations, expected }
}

/** `code rooms/c1.yaml:1:2` as seen from the jobs folder. */
function inTiny(expected: string): string {
  return expected.replace(" ", " tiny/")
}
