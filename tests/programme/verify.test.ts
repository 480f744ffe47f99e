import { describe, expect, it } from "vitest"
import type { Instant } from "../../src/kernels/calendar/instant.ts"
import { seeded } from "../../src/kernels/schedule/seeded.ts"
import { datedProgramme, type ProgrammeTask } from "../../src/programme/dated.ts"
import type { DatedStep } from "../../src/programme/programme.ts"
import { programmeRules } from "../../src/programme/rules.ts"
import { verifyProgramme } from "../../src/programme/verify.ts"
import type { Step } from "../../src/trades/trade.ts"
import { programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { houseOf, rulesOf, surveyed } from "../fixtures/rooms.ts"
import { generatedTask } from "./generated.ts"

/** How many invented jobs are dated and verified; set GENERATED for more. */
const count = Number(process.env.GENERATED ?? 200)
/** Changes tried on each: a programme must stand after any number of them. */
const attempts = 20
const hour = 3_600_000

describe("invented jobs", () => {
  it(`${count} of them break nothing`, () => {
    const broken: string[] = []
    let dated = 0
    for (let seed = 1; seed <= count; seed++) {
      const task = generatedTask(seeded(seed))
      const programme = datedProgramme({ ...task, attempts })
      dated += programme.steps.length
      broken.push(...verifyProgramme({ ...task, programme }).map((line) => `job ${seed}: ${line}`))
    }
    expect(broken).toEqual([])
    expect(dated).toBeGreaterThan(count * 20)
  }, 280_000)

  it("come out the same when dated again", () => {
    const task = () => generatedTask(seeded(7))
    expect(datedProgramme(task())).toEqual(datedProgramme(task()))
  })
})

describe("what is broken by hand is found", () => {
  const plain = surveyed()
  const [door] = houseOf({
    doors: [
      {
        id: "D1",
        name: "Door",
        between: ["R1", "R2"],
        lining: "keep",
        lengthsTo: "lining",
        heightsFrom: "deck",
        widths: [800],
        heights: [2000],
        wall: 100,
      },
    ],
  }).doors
  const walk = { process: "oil", hours: 24, forbids: ["walk" as const] }
  const wet = { process: "paint", hours: 5, forbids: ["coat" as const] }
  const steps: Step[] = [
    stepOf({ key: "paint", stage: "white", hours: 3, gate: wet }),
    stepOf({ key: "paint far", stage: "white", hours: 3, gate: wet, room: "R2" }),
    stepOf({ key: "saw", trade: "floors", stage: "floor", hours: 4, noisy: true, dusty: true }),
    stepOf({
      key: "saw far",
      trade: "floors",
      stage: "floor",
      hours: 4,
      noisy: true,
      dusty: true,
      room: "R2",
    }),
    stepOf({ key: "oil", trade: "floors", stage: "oil", hours: 1, gate: walk }),
    stepOf({ key: "oil far", trade: "floors", stage: "oil", hours: 1, gate: walk, room: "R2" }),
  ]
  const task: ProgrammeTask = {
    steps,
    site: siteOf(
      [
        { ...plain, use: "hall" },
        { ...plain, id: "R2" },
      ],
      { doors: [{ ...door!, between: ["R1", "R2"] }] },
    ),
    file: programmeOf({
      quiet: [{ days: ["mon", "tue", "wed", "thu", "fri"], from: "15:00", to: "17:00", why: "child" }],
      crews: [
        { id: "joiner", name: "Joiner", people: 1, trades: ["floors", "doors"] },
        { id: "decorator", name: "Decorator", people: 1, trades: ["decorating"], visits: 2 },
      ],
    }),
    rules: rulesOf(programmeRules),
    zone: "Europe/London",
  }
  const programme = datedProgramme(task)

  /** The lines found where one step is changed. */
  const found = (key: string, change: (step: DatedStep) => Partial<DatedStep>) =>
    verifyProgramme({
      ...task,
      programme: {
        ...programme,
        steps: programme.steps.map((each) => (each.step.key === key ? { ...each, ...change(each) } : each)),
      },
    }).join("\n")
  const at = (key: string) => programme.steps.find((each) => each.step.key === key)!
  const movedTo = (start: number, length: number, gate = 0) => ({
    start: start as Instant,
    finish: (start + length * hour) as Instant,
    ready: (start + (length + gate) * hour) as Instant,
  })

  it("nothing, as it was dated", () => {
    expect(verifyProgramme({ ...task, programme })).toEqual([])
  })

  it.each([
    ["work at night", "paint", () => movedTo(at("paint").start + 12 * hour, 3, 5), "outside working time"],
    ["too few hours", "paint", () => ({ finish: (at("paint").finish - hour) as Instant }), "h instead of"],
    ["a short gate", "oil", () => ({ ready: at("oil").finish }), "gate not kept"],
    ["more people than there are", "saw", () => ({ people: 2 }), "2 people"],
    ["a crew in two places", "saw", () => movedTo(at("saw far").start, 4), "Joiner at once"],
    ["a stage too early", "saw", () => movedTo(at("paint").start, 4), "stages of the room"],
    ["two crews in a room", "saw", () => movedTo(at("paint").start, 4), "is in the room"],
    ["dust next to a wet coat", "saw", () => movedTo(at("paint far").start, 4), "dust on paint far"],
    ["a wet floor on the way", "oil", () => movedTo(at("oil far").start, 1, 24), "the way is wet"],
    ["near oil before far oil", "oil", () => movedTo(at("oil far").start - 24 * hour, 1, 24), "far oil"],
    ["loud work in quiet hours", "saw", () => movedTo(at("saw").finish + 3 * hour, 1), "saw"],
    ["another crew's trade", "saw", () => ({ crew: "decorator" }), "not this crew's trade"],
    ["a visit more", "paint far", () => movedTo(at("oil far").start + 96 * hour, 3, 5), "visits"],
  ])("%s", (_, key, change, line) => {
    expect(found(key, change)).toContain(line)
  })

  it("a step that begins before its goods are there", () => {
    const holds = [
      { key: "oil", from: "2027-04-01", because: "waits for goods", at: { file: "job.yaml", path: [] } },
    ]
    expect(verifyProgramme({ ...task, holds, programme }).join("\n")).toContain(
      "oil: begins before 2027-04-01",
    )
    expect(verifyProgramme({ ...task, holds, programme: datedProgramme({ ...task, holds }) })).toEqual([])
  })

  it("a step left out", () => {
    const less = { ...programme, steps: programme.steps.slice(1) }
    expect(verifyProgramme({ ...task, programme: less }).join("\n")).toContain("not dated")
  })

  it("a proof that is none", () => {
    const bound = { finish: "2027-03-01", proven: true, by: "" }
    expect(verifyProgramme({ ...task, programme: { ...programme, bound } }).join("\n")).toContain("proof")
  })
})
