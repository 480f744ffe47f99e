import { expect, it } from "vitest"
import { workOut } from "../../../src/build.ts"
import { readJobs } from "../../../src/intake/read-jobs.ts"
import { elapsedBetween } from "../../../src/kernels/calendar/instant.ts"
import { issueRecord } from "../../../src/press/revisions/record.ts"
import type { DatedStep } from "../../../src/programme/programme.ts"
import { type DryingProcessId, dryingHours } from "../../../src/rulebook/drying.ts"
import { decorating } from "../../../src/trades/decorating/index.ts"
import { decoratingInputs } from "../../../src/trades/decorating/inputs.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { decoratingWork } from "../../../src/trades/decorating/work.ts"
import { electrics } from "../../../src/trades/electrics/index.ts"
import { trades } from "../../../src/trades/index.ts"
import { plumbing } from "../../../src/trades/plumbing/index.ts"
import { tiling } from "../../../src/trades/tiling/index.ts"
import { datedOf, programmeOf } from "../../fixtures/programme.ts"
import { attic } from "./attic.ts"

it("no coat starts before the coat under it has had its elapsed hours: 500 generated rooms on the calendar", () => {
  const random = seeded(11)
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)]!
  const base = attic()
  const wrong: string[] = []
  let held = 0
  for (let trial = 0; trial < 500; trial++) {
    const input = decoratingInputs.parse({
      walls: pick(states),
      ceiling: pick(states),
      slopes: pick(states),
      slopeIs: pick(["wall", "ceiling"]),
      deepColour: pick([true, false]),
      still: pick([true, false]),
      plasterDry: pick([true, false]),
      plasterThickness: pick([2.5, 3, 8, 13]),
      woodwork: { state: pick(["bare", "primed", "old-paint", "none"]), doors: pick(["paint", "clear"]) },
    })
    const climate = {
      ...base.job.climate,
      temperature: 10 + Math.floor(random() * 15),
      humidity: 40 + Math.floor(random() * 40),
    }
    const task = { ...base, input, job: { ...base.job, climate } }
    const file = programmeOf({
      // The clocks go forward on 28 March 2027 and back on 31 October 2027.
      start: pick(["2027-03-24", "2027-10-27", "2027-12-21", "2027-06-07"]),
      crews: [{ id: "d", name: "Decorator", people: pick([1, 2]), trades: ["decorating"] }],
    })
    const dated = new Map(
      datedOf(decoratingWork(task).steps, [task.room], file).steps.map((each) => [each.step.key, each]),
    )
    const at = (key: string) => dated.get(`decorating/R1/${key}`)
    const hours = (process: DryingProcessId, thickness?: number) => {
      const air = { ...climate, still: input.still, ...(thickness ? { thickness } : {}) }
      const found = dryingHours(process, air, task.job.rules)
      return found === "do not" ? Number.POSITIVE_INFINITY : found
    }
    const after = (first: DatedStep, next: DatedStep, wait: number) => {
      held++
      if (elapsedBetween(first.finish, next.start) < wait - 1e-6)
        wrong.push(`${trial}: ${next.step.key} after ${first.step.key}`)
    }
    const { lines } = roomPaint(task)
    for (const line of lines.filter((each) => each.area > 0)) {
      const same = lines.filter((each) => each.surface === line.surface)
      const before = same[same.indexOf(line) - 1]
      const coat = at(line.coat.key)!
      if (before) after(at(before.coat.key)!, coat, hours(before.process))
      const dry = at("plaster-dry")
      if (dry && line.as) after(dry, coat, hours("skim", input.plasterThickness))
      if (["woodwork", "last-coat"].includes(coat.step.stage)) after(at("fill")!, coat, hours("caulk"))
    }
  }
  expect(wrong).toEqual([])
  expect(held).toBeGreaterThan(5000)
})

it("in the jobs shown, nothing painted, tiled or sealed starts before what it waits for has had its elapsed hours", async () => {
  const { jobs } = readJobs({ jobsDir: "jobs", trades, issueRecord })
  const wrong: string[] = []
  let held = 0
  for (const { job } of jobs) {
    if (!job) continue
    const { steps } = (await workOut(job, wetTrades)).programme
    const byKey = new Map(steps.map((each) => [each.step.key, each]))
    for (const each of steps.filter(({ step }) => step.hours > 0)) {
      for (const before of each.step.after.flatMap((key) => byKey.get(key) ?? [])) {
        held++
        const wait = before.step.gate?.hours ?? 0
        if (elapsedBetween(before.finish, each.start) < wait - 1e-6)
          wrong.push(`${each.step.key} after ${before.step.key}`)
      }
    }
  }
  expect(wrong).toEqual([])
  expect(held).toBeGreaterThan(100)
})

/** Trades whose work must dry or cure; without the others a job is worked out in a moment. */
const wetTrades = [tiling, plumbing, electrics, decorating]

const states = ["new-plaster", "old-paint", "old-gloss", "stained"] as const

function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}
