import { describe, expect, it } from "vitest"
import { clockAt } from "../../src/kernels/calendar/instant.ts"
import { datedProgramme } from "../../src/programme/dated.ts"
import type { Programme } from "../../src/programme/programme.ts"
import { programmeRules } from "../../src/programme/rules.ts"
import type { Step } from "../../src/trades/trade.ts"
import { datedOf, programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { rulesOf, surveyed } from "../fixtures/rooms.ts"

const rooms = [surveyed(), surveyed({ id: "R2" })]
const programme = (steps: readonly Step[], given: Record<string, unknown> = {}) =>
  datedOf(steps, rooms, programmeOf(given))

/** Start, finish and moment to go on of each step by the clock of the site. */
function times({ steps, zone: at }: Programme): Record<string, string[]> {
  const text = (instant: (typeof steps)[number]["start"]) => Object.values(clockAt(instant, at)).join(" ")
  return Object.fromEntries(
    steps.map(({ step, start, finish, ready }) => [step.key, [text(start), text(finish), text(ready)]]),
  )
}

describe("working time", () => {
  it("stops for the break, the night and the weekend", () => {
    const { paint } = times(programme([stepOf({ key: "paint", hours: 5 })], { start: "2027-03-05" }))
    expect(paint?.slice(0, 2)).toEqual(["2027-03-05 08:00", "2027-03-05 14:00"])
    const { long } = times(programme([stepOf({ key: "long", hours: 9 })], { start: "2027-03-05" }))
    expect(long?.[1]).toBe("2027-03-08 09:00")
  })

  it("passes Good Friday 26 and Easter Monday 29 March 2027 by (gov.uk, bank holidays), unless none are kept", () => {
    const step = stepOf({ key: "paint", hours: 9 })
    expect(times(programme([step], { start: "2027-03-25" })).paint?.[1]).toBe("2027-03-30 09:00")
    expect(times(programme([step], { start: "2027-03-25", holidays: "none" })).paint?.[1]).toBe(
      "2027-03-26 09:00",
    )
  })

  it("passes closed days by", () => {
    const closed = [{ from: "2027-03-02", to: "2027-03-03", why: "funeral" }]
    expect(times(programme([stepOf({ key: "paint", hours: 9 })], { closed })).paint?.[1]).toBe(
      "2027-03-04 09:00",
    )
  })

  it("is shared by the people of a crew", () => {
    const crews = [{ id: "decorator", name: "Decorators", people: 2, trades: ["decorating"] }]
    const done = programme([stepOf({ key: "paint", hours: 6 })], { crews })
    expect(times(done).paint?.[1]).toBe("2027-03-01 11:00")
    expect(done.labour.get("decorator")).toBe(6)
  })
})

describe("quiet hours", () => {
  const quiet = [{ days: ["mon", "tue", "wed"], from: "09:00", to: "14:00", why: "sleeps by day" }]

  it("hold back noisy work, and it alone", () => {
    const steps = [
      stepOf({ key: "saw", hours: 2, noisy: true, trade: "floors" }),
      stepOf({ key: "paint", hours: 2, room: "R2" }),
    ]
    const done = times(programme(steps, { quiet }))
    expect(done.saw?.slice(0, 2)).toEqual(["2027-03-01 08:00", "2027-03-01 15:00"])
    expect(done.paint?.slice(0, 2)).toEqual(["2027-03-01 08:00", "2027-03-01 10:00"])
  })

  it("are not there on other days", () => {
    const saw = stepOf({ key: "saw", hours: 2, noisy: true, trade: "floors" })
    expect(times(programme([saw], { quiet, start: "2027-03-04" })).saw?.[1]).toBe("2027-03-04 10:00")
  })
})

describe("solvent where people sleep", () => {
  const bedroom = surveyed({ id: "R2", use: "bedroom" })
  const of = (steps: readonly Step[], given: Record<string, unknown> = {}, occupied = true) =>
    datedOf(steps, [surveyed(), bedroom], programmeOf({ bedtime: "22:00", ...given }), { occupied })
  const paint = stepOf({ key: "paint", stage: "white", hours: 5 })
  const oil = stepOf({ key: "oil", stage: "woodwork", hours: 2, fumes: true })

  it("waits for the next morning, and says why and until when", () => {
    const done = of([paint, oil])
    // The paint ends at 14:00; eight hours before bedtime is 14:00 too.
    expect(times(done).oil?.slice(0, 2)).toEqual(["2027-03-02 08:00", "2027-03-02 10:00"])
    expect(done.steps.find(({ step }) => step.key === "oil")).toMatchObject({
      because:
        "waits for: paint (R1), then for the next morning: where people sleep, solvent and oil are done by 14:00",
      doneBy: "14:00",
    })
  })

  it("goes on over several mornings", () => {
    expect(times(of([{ ...oil, hours: 8 }])).oil?.slice(0, 2)).toEqual([
      "2027-03-01 08:00",
      "2027-03-02 11:00",
    ])
  })

  it("may be done all day in an empty house, and water-borne coats in any", () => {
    const empty = of([paint, oil], {}, false)
    expect(times(empty).oil?.[0]).toBe("2027-03-01 14:00")
    expect(empty.steps.some((each) => each.doneBy)).toBe(false)
    const { fumes: _, ...water } = oil
    expect(times(of([paint, water])).oil?.[0]).toBe("2027-03-01 14:00")
  })

  it("has no hour where people go to bed too early for it: an error as a chain", () => {
    const { findings, steps } = of([oil], { bedtime: "15:30" })
    expect(steps).toEqual([])
    expect(findings).toMatchObject([
      { code: "no-working-time", severity: "error", at: { path: ["bedtime"] } },
    ])
    expect(findings[0]?.message).toContain("→ nothing left")
  })
})

describe("what is not there yet", () => {
  const at = { file: "money.yaml", path: ["client", "decisions", 0, "by"] }
  const hold = { key: "lay", from: "2027-03-05", because: "waits for the client’s choice", at }
  const lay = stepOf({ key: "lay", title: "Lay", trade: "floors", stage: "floor", hours: 2 })
  const after = stepOf({ key: "after", stage: "last-coat", hours: 1 })

  it("holds its step and what follows, and says why and where it was written", () => {
    const site = siteOf(rooms)
    const task = { site, file: programmeOf(), rules: rulesOf(programmeRules), zone: "Europe/London" }
    const done = datedProgramme({ ...task, steps: [lay, after], holds: [hold] })
    expect(times(done).lay?.[0]).toBe("2027-03-05 08:00")
    expect(times(done).after?.[0]).toBe("2027-03-05 10:00")
    expect(done.steps[0]?.because).toBe("waits for the client’s choice")
    expect(done.bound).toMatchObject({ finish: "2027-03-05", proven: true })
    expect(done.findings).toMatchObject([{ code: "held-by-what-is-not-there", severity: "warning", at }])
  })

  it("says nothing where it is there in time", () => {
    const early = { ...hold, from: "2027-02-20" }
    const task = { site: siteOf(rooms), file: programmeOf(), rules: rulesOf(programmeRules) }
    const done = datedProgramme({ ...task, zone: "Europe/London", steps: [lay], holds: [early] })
    expect(done.findings).toEqual([])
    expect(done.steps[0]?.because).toContain("start of the job")
  })
})

describe("drying", () => {
  const gate = (hours: number) => ({ process: "screed", hours, forbids: ["walk" as const] })

  it("runs through nights and weekends and holds the next stage of the room", () => {
    const steps = [
      stepOf({ key: "tile", stage: "tile", hours: 8, gate: gate(24) }),
      stepOf({ key: "grout", stage: "heat", hours: 1 }),
    ]
    const done = programme(steps, { start: "2027-03-05" })
    expect(times(done).tile).toEqual(["2027-03-05 08:00", "2027-03-05 17:00", "2027-03-06 17:00"])
    expect(times(done).grout?.[0]).toBe("2027-03-08 08:00")
    expect(done.steps.find(({ step }) => step.key === "grout")?.heldBy).toBe("tile")
  })

  it.each([
    // Summer time begins on 28 March and ends on 31 October 2027 in the United Kingdom, at 01:00 GMT (Summer Time Order 2002).
    ["2027-03-26", "2027-03-28 18:00", "an hour is skipped: 48 h end at 18:00"],
    ["2027-10-29", "2027-10-31 16:00", "an hour comes twice: 48 h end at 16:00"],
  ])("from %s over the change of the clock ends at %s (%s)", (start, ready) => {
    const steps = [stepOf({ key: "tile", stage: "tile", hours: 8, gate: gate(48) })]
    expect(times(programme(steps, { start, holidays: "none" })).tile?.[2]).toBe(ready)
  })

  it("never lets a step begin before all it waits for is ready", () => {
    const steps = ["R1", "R2"].flatMap((room) => [
      stepOf({ key: `${room} a`, room, stage: "mist", hours: 3, gate: gate(30) }),
      stepOf({ key: `${room} b`, room, stage: "white", hours: 5, gate: gate(5) }),
      stepOf({ key: `${room} c`, room, stage: "floor", trade: "floors", hours: 7 }),
      stepOf({ key: `${room} d`, room, stage: "last-coat", hours: 2 }),
    ])
    const { steps: dated } = programme(steps)
    const of = (key: string) => dated.find(({ step }) => step.key === key)!
    for (const room of ["R1", "R2"]) {
      for (const [before, after] of [
        ["a", "b"],
        ["b", "c"],
        ["c", "d"],
      ] as const)
        expect(of(`${room} ${after}`).start).toBeGreaterThanOrEqual(of(`${room} ${before}`).ready)
    }
    for (const one of dated) {
      const others = dated.filter((each) => each !== one && each.crew === one.crew)
      expect(others.some((each) => each.start < one.finish && one.start < each.finish)).toBe(false)
    }
    expect(dated.map(({ start }) => start)).toEqual(
      [...dated.map(({ start }) => start)].sort((a, b) => a - b),
    )
  })
})

describe("what cannot be dated", () => {
  it("a ring is named with every step in it", () => {
    const steps = [
      stepOf({ key: "a", title: "First", after: ["c"] }),
      stepOf({ key: "b", title: "Second", after: ["a"] }),
      stepOf({ key: "c", title: "Third", after: ["b"] }),
      stepOf({ key: "d", title: "Outside" }),
    ]
    const { findings, steps: dated } = programme(steps)
    expect(dated).toEqual([])
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([["programme-ring", "error"]])
    for (const title of ["First", "Second", "Third"]) expect(findings[0]?.message).toContain(title)
    expect(findings[0]?.message).not.toContain("Outside")
  })

  it("a trade without a crew is named once", () => {
    const { findings } = programme([
      stepOf({ key: "a", trade: "tiling" }),
      stepOf({ key: "b", trade: "tiling" }),
    ])
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([["trade-without-crew", "error"]])
    expect(findings[0]?.message).toContain('"tiling"')
  })
})

describe("visits", () => {
  const crews = (visits?: number) => [
    { id: "joiner", name: "Joiner", people: 1, trades: ["floors"] },
    { id: "decorator", name: "Decorator", people: 1, trades: ["decorating"], ...(visits ? { visits } : {}) },
  ]
  const steps = [
    stepOf({ key: "white", stage: "white", hours: 12 }),
    stepOf({ key: "lay", trade: "floors", stage: "floor", hours: 16 }),
    stepOf({ key: "last", stage: "last-coat", hours: 4 }),
  ]

  it("are one while no working day lies free between, and a weekend does not part them", () => {
    const { visits } = programme([stepOf({ key: "white", hours: 12 })], {
      start: "2027-03-05",
      crews: crews(),
    })
    expect(visits.map(({ from, to }) => [from, to])).toEqual([["2027-03-05", "2027-03-08"]])
  })

  it("are parted by the work of others", () => {
    const { visits } = programme(steps, { crews: crews() })
    expect(
      visits.filter((visit) => visit.crew === "decorator").map(({ from, to, keys }) => [from, to, keys]),
    ).toEqual([
      ["2027-03-01", "2027-03-02", ["white"]],
      ["2027-03-04", "2027-03-04", ["last"]],
    ])
  })

  it("over the limit are a warning at that crew's line", () => {
    expect(programme(steps, { crews: crews(2) }).findings).toEqual([])
    expect(programme(steps, { crews: crews(1) }).findings).toMatchObject([
      {
        code: "too-many-visits",
        severity: "warning",
        at: { file: "programme.yaml", path: ["crews", 1, "visits"] },
      },
    ])
  })
})
