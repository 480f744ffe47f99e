import { describe, expect, it } from "vitest"
import type { Instant } from "../../src/kernels/calendar/instant.ts"
import { seeded } from "../../src/kernels/schedule/seeded.ts"
import { datedProgramme } from "../../src/programme/dated.ts"
import type { DatedStep } from "../../src/programme/programme.ts"
import { programmeRules } from "../../src/programme/rules.ts"
import { type Checked, verifyProgramme } from "../../src/programme/verify.ts"
import { datedOf, programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { rulesOf, surveyed } from "../fixtures/rooms.ts"
import { generatedTask } from "./generated.ts"

/** How many invented jobs are dated and verified; set GENERATED for more. */
const count = Number(process.env.GENERATED ?? 200)

describe("invented jobs", () => {
  it(`${count} of them break nothing`, () => {
    const broken: string[] = []
    let dated = 0
    let proven = 0
    for (let seed = 1; seed <= count; seed++) {
      const task = generatedTask(seeded(seed))
      const programme = datedProgramme(task)
      const errors = programme.findings.filter((finding) => finding.code === "programme-ring")
      expect(errors, `job ${seed}`).toEqual([])
      dated += programme.steps.length
      proven += programme.bound.proven ? 1 : 0
      broken.push(...verifyProgramme({ ...task, programme }).map((line) => `job ${seed}: ${line}`))
    }
    expect(broken).toEqual([])
    expect(dated).toBeGreaterThan(count * 10)
    expect(proven).toBeGreaterThan(0)
  }, 120_000)

  it("come out the same when dated again", () => {
    const task = () => generatedTask(seeded(7))
    expect(datedProgramme(task())).toEqual(datedProgramme(task()))
  })
})
