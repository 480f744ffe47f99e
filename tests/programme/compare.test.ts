import { describe, expect, it } from "vitest"
import type { ProgrammeFile } from "../../src/intake/schema/programme.ts"
import { compared, isAsIssued, issuedProgramme } from "../../src/programme/compare.ts"
import type { Step } from "../../src/trades/trade.ts"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const rooms = [surveyed(), surveyed({ id: "R2" })]
// White takes the Monday and dries overnight; the boards follow; the far room needs the same joiner; its coat is on its own.
const steps: Step[] = [
  stepOf({
    key: "white",
    title: "White",
    hours: 8,
    gate: { process: "paint dries", hours: 15, forbids: ["coat"] },
  }),
  stepOf({ key: "boards", title: "Boards", trade: "floors", stage: "floor", hours: 8 }),
  stepOf({ key: "far", title: "Far boards", trade: "floors", stage: "floor", hours: 8, room: "R2" }),
]
const dated = (list: readonly Step[] = steps, progress: unknown[] = []) =>
  datedOf(list, rooms, programmeOf({ progress }))
const told = (progress: unknown[]): ProgrammeFile["progress"] => programmeOf({ progress }).progress

describe("what moved since an issue", () => {
  const issued = issuedProgramme(dated())

  it("is nothing where nothing did", () => {
    expect(issued.steps.map(({ step, start }) => [step, start])).toEqual([
      ["white", "2027-03-01"],
      ["far", "2027-03-01"],
      ["boards", "2027-03-02"],
    ])
    expect(isAsIssued(issued, dated())).toBe(true)
    expect(compared(issued, dated(), [])).toMatchObject({ origins: [], shifts: [] })
  })

  it("is led back to the step that was reported late", () => {
    const progress = [
      { step: "white", started: "2027-03-01", finished: "2027-03-02" },
      { step: "far", started: "2027-03-01", finished: "2027-03-01" },
    ]
    const now = dated(steps, progress)
    const found = compared(issued, now, told(progress))
    expect(isAsIssued(issued, now)).toBe(false)
    expect(found.finish).toEqual({ was: "2027-03-02", now: "2027-03-03" })
    expect(found.origins[0]).toMatchObject({
      key: "white",
      because: "reported done on Tue 2 Mar, planned for Mon 1 Mar",
    })
    expect(found.shifts.find(({ key }) => key === "boards")?.origin).toBe(0)
    for (const shift of found.shifts) expect(shift.because).not.toBe("")
  })

  it("is told of work and waits that are other than they were", () => {
    const longer = steps.map((step) =>
      step.key === "white" ? { ...step, gate: { ...step.gate!, hours: 48 } } : step,
    )
    const found = compared(issued, dated(longer), [])
    expect(found.shifts.map(({ key, origin }) => [key, origin])).toEqual([["boards", 0]])
    expect(found.origins[0]?.because).toBe("paint dries: 48 h now, was 15 h")
    const more = steps.map((step) => (step.key === "far" ? { ...step, hours: 12 } : step))
    expect(compared(issued, dated(more), []).origins.map(({ because }) => because)).toContain(
      "its work is 12 h now, was 8 h",
    )
  })

  it("names what is new and what is gone", () => {
    const list = [steps[0]!, stepOf({ key: "new", title: "New coat", stage: "fill", room: "R2" })]
    const found = compared(issued, dated(list), [])
    expect(found.shifts.map(({ key, start, because }) => [key, start.was, start.now, because])).toEqual([
      ["new", null, "2027-03-02", "new since then"],
      ["far", "2027-03-01", null, "no longer part of the job"],
      ["boards", "2027-03-02", null, "no longer part of the job"],
    ])
  })
})
