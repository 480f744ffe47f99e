import { describe, expect, it } from "vitest"
import { clockAt } from "../../src/kernels/calendar/instant.ts"
import { compared, issuedProgramme } from "../../src/programme/compare.ts"
import { datedProgramme, type ProgrammeTask } from "../../src/programme/dated.ts"
import { verifyProgramme } from "../../src/programme/verify.ts"
import { programmeSheet } from "../../src/sheets/programme-sheets.ts"
import { demoJobs } from "../fixtures/demo.ts"
import { rowsOf } from "../sheets/sheets.ts"

describe.each(demoJobs.map((job) => [job.ref, job.result] as const))("the demo job %s", (_, result) => {
  const task: ProgrammeTask = {
    steps: result.results.flatMap((each) => each.work.steps),
    site: result.house,
    file: result.programmeFile,
    rules: result.rules,
    holds: result.holds,
    zone: result.job.zone,
  }

  it("breaks nothing as dated", () => {
    const { programme } = result
    expect(programme.steps.length).toBeGreaterThan(20)
    expect(verifyProgramme({ ...task, programme })).toEqual([])
    expect(programme.findings.filter((finding) => finding.code === "too-many-visits")).toEqual([])
  })

  it("is dated anew after a slip of one day: what was done stays, every move has its reason, nothing is broken", () => {
    const { programme } = result
    const day = (moment: (typeof programme.steps)[number]["finish"]) => clockAt(moment, task.zone).date
    const slipped = programme.steps.find((each) => each.step.hours > 0 && each.float < 1)!
    const next = programme.steps.map((each) => day(each.start)).find((date) => date > day(slipped.finish))!
    const progress = programme.steps
      .filter((each) => each.finish <= slipped.finish && each.step.hours > 0)
      .map((each) => ({
        step: each.step.key,
        started: day(each.start),
        finished: each === slipped ? next : day(each.finish),
      }))
    const file = { ...task.file, progress }
    const anew = datedProgramme({ ...task, file })
    expect(verifyProgramme({ ...task, file, programme: anew })).toEqual([])
    for (const move of anew.moves) expect(move.because).not.toBe("")
    expect(anew.moves.some((move) => move.key === slipped.step.key)).toBe(true)
    const { origins, shifts } = compared(issuedProgramme(programme), anew, file.progress)
    const line = shifts.find((shift) => shift.key === slipped.step.key)!
    expect(line).toMatchObject({ finish: { was: day(slipped.finish), now: next } })
    expect(line.because).toContain("reported done on")
    for (const shift of shifts) expect(origins[shift.origin!]?.because).not.toBe("")
    const set = { ...result, programme: anew, programmeFile: file }
    const issuedBefore = { revision: "B", on: result.job.prepared.on, programme: issuedProgramme(programme) }
    const rows = rowsOf(programmeSheet({ ...set, issuedBefore }))
    if (process.env.PRINT_MOVES) console.log(rows.map((row) => row.cells.join(" | ")).join("\n"))
    expect(rows.length).toBeGreaterThanOrEqual(Math.min(60, shifts.length) + origins.length)
    expect(
      rows.every((row) => row.cells.every((cell, at) => cell !== "" || at === row.cells.length - 1)),
    ).toBe(true)
  })
})
