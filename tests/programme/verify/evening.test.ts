import { describe, expect, it } from "vitest"
import type { Instant } from "../../../src/kernels/calendar/instant.ts"
import { type Seeded, seeded } from "../../../src/kernels/schedule/seeded.ts"
import { datedProgramme, type ProgrammeTask } from "../../../src/programme/dated.ts"
import { type AlarmPlace, eveningsOf } from "../../../src/programme/evenings.ts"
import type { DatedStep, Programme } from "../../../src/programme/programme.ts"
import { type CheckedEvenings, eveningsBroken } from "../../../src/programme/verify/evening.ts"
import { waysOf } from "../../../src/programme/ways.ts"
import { alarmPlaces } from "../../../src/sheets/evenings-of-job.ts"
import { demoJobs } from "../../fixtures/demo.ts"
import { generatedTask } from "../generated.ts"

/** How many invented jobs are looked at evening by evening; set GENERATED for more. */
const count = Number(process.env.GENERATED ?? 20)
const hour = 3_600_000

/** A dated job with its evenings as they are printed. */
function looked(task: ProgrammeTask, programme: Programme, alarms: readonly AlarmPlace[]): CheckedEvenings {
  const ways = waysOf(task.site)
  const reach = task.rules.value("programme-dust-reach")
  const evenings = eveningsOf({ programme, site: task.site, ways, alarms, reach })
  return { ...task, programme, evenings, alarms }
}

/** An invented job in which people live: old leaves in all doorways, alarms in halls, landings and some rooms. */
function invented(seed: number): { task: ProgrammeTask; alarms: AlarmPlace[] } {
  const next: Seeded = seeded(seed)
  const made = generatedTask(next)
  const doors = made.site.doors.map((door) => ({
    ...door,
    leafNow: "old leaf",
    work: { hang: "new", latch: true },
  }))
  const task = { ...made, site: { ...made.site, doors, occupied: true } }
  const alarms = task.site.rooms
    .filter((room) => room.use === "hall" || room.use === "landing" || next() < 0.3)
    .map((room) => {
      const fit = `electrics/${room.id}/fit`
      return { room: room.id, fittedBy: task.steps.some((step) => step.key === fit) ? fit : null }
    })
  return { task, alarms }
}

describe("every evening of the programme", () => {
  it.each(demoJobs.map((job) => [job.ref, job.result] as const))("of the demo job %s stands", (_, result) => {
    const task: ProgrammeTask = {
      steps: result.results.flatMap((each) => each.work.steps),
      site: result.house,
      file: result.programmeFile,
      rules: result.rules,
      zone: result.job.zone,
    }
    const checked = looked(task, result.programme, alarmPlaces(result))
    expect(eveningsBroken(checked)).toEqual([])
    if (!result.house.occupied) return
    expect(checked.evenings.length).toBeGreaterThan(5)
  })

  it(`of ${count} invented jobs stands, and they are such as could fall`, () => {
    const broken: string[] = []
    const seen = { hung: 0, covers: 0, wet: 0, nights: 0, evenings: 0 }
    for (let seed = 1; seed <= count; seed++) {
      const { task, alarms } = invented(seed)
      const programme = datedProgramme({ ...task, attempts: 4 })
      const checked = looked(task, programme, alarms)
      broken.push(...eveningsBroken(checked).map((line) => `job ${seed}: ${line}`))
      const { evenings } = checked
      seen.evenings += evenings.length
      seen.hung += evenings.flatMap((each) => each.doorways).filter(({ leaf }) => leaf === "today").length
      seen.covers += evenings.flatMap((each) => each.covers).length
      seen.wet += evenings.flatMap((each) => each.wet).length
      seen.nights += programme.firstNight ? 1 : 0
    }
    expect(broken).toEqual([])
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(count / 10)
  }, 280_000)
})

describe("an evening broken by hand is found", () => {
  const { result } = demoJobs.find((job) => job.ref === "lock-house")!
  const task: ProgrammeTask = {
    steps: result.results.flatMap((each) => each.work.steps),
    site: result.house,
    file: result.programmeFile,
    rules: result.rules,
    zone: result.job.zone,
  }
  const sound = looked(task, result.programme, alarmPlaces(result))
  const moved = (key: string, change: (each: DatedStep) => Partial<DatedStep>) => ({
    ...result.programme,
    steps: result.programme.steps.map((each) =>
      each.step.key === key ? { ...each, ...change(each) } : each,
    ),
  })
  const later = (by: number) => (each: DatedStep) => ({
    start: (each.start + by) as Instant,
    finish: (each.finish + by) as Instant,
    ready: (each.ready + by) as Instant,
  })
  const found = (changed: Partial<CheckedEvenings>) => eveningsBroken({ ...sound, ...changed }).join("\n")

  it("nothing as it was dated, with alarms covered on some days", () => {
    expect(eveningsBroken(sound)).toEqual([])
    expect(sound.evenings.filter((evening) => evening.covers.length > 0).length).toBeGreaterThan(5)
  })

  it("a leaf hung the day after the old one came off", () => {
    expect(found({ programme: moved("doors/D5/hang", later(24 * hour)) })).toMatch(/D5 on .*: no leaf/)
  })

  it("a leaf hung without a latch", () => {
    const doors = task.site.doors.map((door) =>
      door.id === "D6" ? { ...door, work: { ...door.work, latch: false } } : door,
    )
    expect(found({ site: { ...task.site, doors } })).toMatch(/D6 on .*: hung without a latch/)
  })

  it("an open doorway on paper that is closed", () => {
    const evenings = sound.evenings.map((evening) => ({
      ...evening,
      doorways: evening.doorways.map((each) => ({ ...each, leaf: "none" as const })),
    }))
    expect(found({ evenings })).toContain("printed as open")
  })

  it("a floor of the landing below oiled late", () => {
    const [uncover] = result.programme.steps.filter(({ step }) => step.key === "floors/B4/uncover")
    const gate = { process: "oil", hours: 24, forbids: ["walk" as const] }
    const programme = moved("floors/B4/uncover", () => ({
      step: { ...uncover!.step, stage: "oil", gate },
      ready: (uncover!.finish + 24 * hour) as Instant,
    }))
    expect(found({ programme })).toContain("wet at bedtime")
  })

  it("a handrail off over night on the stair that people go to bed by", () => {
    const [guarding] = result.programme.steps.filter(({ step }) => step.stage === "nosings")
    const programme = moved(guarding!.step.key, (each) => ({
      step: { ...guarding!.step, room: "B4" },
      finish: (each.finish + 24 * hour) as Instant,
      ready: (each.ready + 24 * hour) as Instant,
    }))
    expect(found({ programme })).toContain("the stair is apart")
  })

  it("an alarm left covered over night, left bare in dust, covered for nothing", () => {
    const change = (edit: (cover: (typeof sound.evenings)[number]["covers"][number]) => object) =>
      sound.evenings.map((evening) => ({
        ...evening,
        covers: evening.covers.map((cover) => ({ ...cover, ...edit(cover) })),
      }))
    expect(found({ evenings: change(({ off }) => ({ off: off + 14 * hour })) })).toContain(
      "covered in the evening",
    )
    expect(found({ evenings: sound.evenings.map((each) => ({ ...each, covers: [] })) })).toContain(
      "bare in the dust",
    )
    const [cover] = sound.evenings.flatMap((each) => each.covers)
    const idle = {
      ...sound.evenings[0]!,
      covers: [{ ...cover!, room: "C3", on: sound.evenings[0]!.ends, off: sound.evenings[0]!.ends }],
    }
    expect(found({ evenings: [...sound.evenings, idle] })).toContain("covered without dust")
  })

  it("a first night before its alarms, its doors, its guarding", () => {
    const night = result.programme.firstNight!
    for (const key of [
      "electrics/house/alarms-together",
      "doors/D1/gaps",
      "doors/house/enclosure",
      "joinery/A4/nosings",
    ])
      expect(found({ programme: moved(key, later(30 * 24 * hour)) })).toContain(`before ${key} is ready`)
    expect(
      found({ programme: { ...result.programme, firstNight: { ...night, on: "2027-03-20" } } }),
    ).toContain("first night on 2027-03-20")
    expect(found({ programme: { ...result.programme, firstNight: null } })).toContain(
      "no first night is told",
    )
  })

  it("somebody who already sleeps upstairs", () => {
    const household = { sleeps: [{ room: "A1", who: "a guest" }], screens: [] }
    expect(found({ file: { ...task.file, household } })).toContain("somebody sleeps in A1")
  })
})
