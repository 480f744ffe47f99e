import { expect, it } from "vitest"
import { recordFiles } from "../../../src/press/records/record-files.ts"
import { setJob } from "../../../src/press/set-job.ts"
import { smallResult } from "../../fixtures/small-job.ts"

it("makes the records of a job once, each with its kind of file", async () => {
  const result = await smallResult()
  const job = setJob("tiny", result)
  const files = recordFiles(job)
  expect(recordFiles(job)).toBe(files)
  expect(recordFiles(setJob("tiny", result))).toEqual(files)
  for (const { name, mime, text } of files) {
    expect(mime, name).toMatch(name.endsWith("json") ? /json$/ : name.endsWith("csv") ? /csv$/ : /calendar$/)
    expect(text.length, name).toBeGreaterThan(0)
  }
})
