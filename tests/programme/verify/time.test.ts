import { expect, it } from "vitest"
import type { Instant } from "../../../src/kernels/calendar/instant.ts"
import { datedProgramme, type ProgrammeTask } from "../../../src/programme/dated.ts"
import { programmeRules } from "../../../src/programme/rules.ts"
import { timeBroken } from "../../../src/programme/verify/time.ts"
import { programmeOf, siteOf, stepOf } from "../../fixtures/programme.ts"
import { rulesOf, surveyed } from "../../fixtures/rooms.ts"
import { brokenAt, movedBy } from "./broken.ts"

it("work over the break, at night and on a Sunday is found; work moved by whole days is not", () => {
  const steps = [stepOf({ key: "a", hours: 2 })]
  const broken = (hours: number) => timeBroken(brokenAt(steps, "a", movedBy(hours)))
  // Monday 1 March 2027, 08:00 to 10:00 and 12:00 to 13:00 off.
  expect(broken(0)).toEqual([])
  expect(broken(24)).toEqual([])
  expect(broken(3)).not.toEqual([])
  expect(broken(12)).not.toEqual([])
  expect(broken(-24)).not.toEqual([])
})

it("solvent on a storey where people sleep is found after the hour; water-borne paint and an empty house are not", () => {
  const found = (fumes: boolean, occupied: boolean, room: string | null = "R1") => {
    const task: ProgrammeTask = {
      steps: [stepOf({ key: "a", hours: 2, room, ...(fumes ? { fumes } : {}) })],
      site: siteOf([surveyed(), { ...surveyed(), id: "R2", use: "bedroom" }], { occupied }),
      file: programmeOf({ bedtime: "22:00" }),
      rules: rulesOf(programmeRules),
      zone: "Europe/London",
    }
    const dated = datedProgramme(task)
    const moved = (hours: number) => {
      const by = (moment: Instant) => (moment + hours * 3_600_000) as Instant
      return dated.steps.map((each) => ({
        ...each,
        start: by(each.start),
        finish: by(each.finish),
        ready: by(each.ready),
      }))
    }
    // Monday from 08:00; then 10:00 to 12:00, and 13:00 to 15:00, an hour past 14:00.
    return [0, 2, 5].map(
      (hours) => timeBroken({ ...task, programme: { ...dated, steps: moved(hours) } }).length > 0,
    )
  }
  expect(found(true, true)).toEqual([false, false, true])
  expect(found(true, true, null)).toEqual([false, false, true])
  expect(found(false, true)).toEqual([false, false, false])
  expect(found(true, false)).toEqual([false, false, false])
})
