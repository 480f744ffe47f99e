import { addDays } from "../../src/kernels/calendar/dates.ts"
import type { Seeded } from "../../src/kernels/schedule/seeded.ts"
import type { ProgrammeTask } from "../../src/programme/dated.ts"
import type { Site } from "../../src/programme/programme.ts"
import { programmeRules } from "../../src/programme/rules.ts"
import type { Room } from "../../src/survey/room.ts"
import type { Stage } from "../../src/trades/stages.ts"
import type { Step } from "../../src/trades/trade.ts"
import { programmeOf, stepOf } from "../fixtures/programme.ts"
import { houseOf, rulesOf, surveyed } from "../fixtures/rooms.ts"

const plain = surveyed()
const rules = rulesOf(programmeRules)

/** A house of three to nine rooms on one to three storeys with invented work, crews, quiet hours and limits of visits. */
export function generatedTask(next: Seeded): ProgrammeTask {
  const pick = (least: number, most: number) => least + Math.floor(next() * (most - least + 1))
  const one = <T>(list: readonly T[]) => list[pick(0, list.length - 1)]!
  const site = generatedSite(pick, next)
  const file = programmeOf({
    start: one(["2027-02-26", "2027-03-22", "2027-10-25", "2027-12-20"]),
    bedtime: one(["20:00", "22:00"]),
    closed: next() < 0.3 ? [{ from: "2027-03-31", to: "2027-04-02", why: "closed" }] : [],
    quiet:
      next() < 0.5
        ? [{ days: ["mon", "tue"], from: "09:00", to: one(["12:00", "15:00"]), why: "sleep" }]
        : [],
    crews: [
      { id: "joiner", name: "Joiner", people: pick(1, 3), trades: ["floors", "doors", "joinery"] },
      { id: "decorator", name: "Decorator", people: pick(1, 2), trades: ["decorating"], ...limit() },
      {
        id: "electrician",
        name: "Electrician",
        people: 1,
        trades: ["electrics"],
        licensed: true,
        ...limit(),
      },
      {
        id: "plumber",
        name: "Plumber",
        people: 1,
        trades: ["plumbing", "tiling"],
        licensed: true,
        ...limit(),
      },
    ],
  })
  const steps = [
    ...site.rooms.flatMap((room) => roomSteps(room)),
    ...site.doors.flatMap((door) =>
      site.rooms.some(({ id }) => id === door.between[1]) ? doorSteps(door) : [],
    ),
  ]
  const holds = steps
    .filter(() => next() < 0.05)
    .map(({ key }) => ({
      key,
      from: addDays(file.start, pick(3, 40)),
      because: "waits for goods",
      at: { file: "programme.yaml", path: [] },
    }))
  return { steps, site, file, rules, holds, zone: "Europe/London" }

  function solvent(): { fumes?: true } {
    return next() < 0.5 ? { fumes: true } : {}
  }

  function limit() {
    return next() < 0.5 ? { visits: pick(2, 5) } : {}
  }

  function roomSteps(room: Room): Step[] {
    const list: Step[] = []
    const add = (trade: string, stage: Stage, name: string, more: Partial<Step> = {}) => {
      if (next() < 0.35) return
      list.push(
        stepOf({
          key: `${trade}/${room.id}/${name}`,
          room: room.id,
          trade,
          stage,
          hours: pick(1, 24) / 4,
          ...more,
        }),
      )
    }
    const gate = (hours: number, forbids: NonNullable<Step["gate"]>["forbids"]) => ({
      gate: { process: "drying", hours, forbids },
    })
    const dirty = { noisy: true, dusty: true }
    add("floors", "prepare", "cover")
    add("electrics", "prepare", "first-coat", next() < 0.3 ? dirty : {})
    add("decorating", "dry-out", "plaster-dry", { hours: 0, ...gate(pick(20, 200), ["coat"]) })
    add("decorating", "mist", "mist", gate(5, ["coat"]))
    add("decorating", "white", "white", gate(5, ["coat"]))
    const isWay = room.use === "hall" || room.use === "landing"
    if (!isWay) add("tiling", "tile", "lay", { ...dirty, ...gate(28, ["walk"]) })
    add("plumbing", "heat", "heating-on", gate(72, []))
    add("floors", "deck", "deck", dirty)
    add("floors", "acclimatise", "acclimatise", gate(72, ["close"]))
    add("floors", "floor", "boards", {
      ...dirty,
      ...(next() < 0.3 && !isWay ? gate(24, ["walk", "load"]) : {}),
    })
    add("joinery", "second-fix", "architraves", dirty)
    add("electrics", "second-fix", "fit")
    add("decorating", "woodwork", "finish", { ...gate(7, ["coat"]), ...solvent() })
    add("decorating", "last-coat", "colour-last", {
      ...gate(5, ["coat"]),
      after: [`electrics/${room.id}/fit`, "nobody/there/at-all"],
    })
    add("floors", "covers-off", "uncover", { dusty: true })
    add("floors", "oil", "oil-1", {
      ...gate(one(isWay ? [3, 4, 6] : [6, 24]), ["walk", "wet"]),
      ...solvent(),
    })
    add("joinery", "nosings", "nosings", { ...dirty, ...gate(24, ["load"]) })
    return list
  }

  function doorSteps(door: Site["doors"][number]): Step[] {
    if (next() < 0.4) return []
    const at = (name: string, stage: Stage, hours: number) =>
      stepOf({
        key: `doors/${door.id}/${name}`,
        room: door.between[1],
        trade: "doors",
        stage,
        hours,
        noisy: true,
        dusty: true,
      })
    return [
      ...(next() < 0.5 ? [at("take-off", one(["prepare", "linings"]), 0.5)] : []),
      at("lining", "linings", pick(3, 6) / 4),
      at("hang", "hang", pick(4, 14) / 4),
      { ...at("gaps", "snag", 0.25), noisy: false, dusty: false },
    ]
  }
}

/** Rooms in a tree of doorways from a hall, now and then with a doorway more; landings over stairs, the topmost stair new or not. */
function generatedSite(pick: (least: number, most: number) => number, next: Seeded): Site {
  const storeys = pick(1, 3)
  const rooms: Room[] = []
  const doors: Site["doors"] = []
  const stairs: Site["stairs"] = []
  const house = houseOf({
    storeys: [{ id: "s", name: "Storey", deck: 0, finishNow: 0, base: "timber" }],
    doors: [
      {
        id: "D0",
        name: "Front",
        between: ["outside", "R0"],
        lining: "keep",
        lengthsTo: "lining",
        heightsFrom: "deck",
        widths: [800],
        heights: [2000],
        wall: 100,
      },
    ],
    stairs: [
      {
        id: "S0",
        name: "Stair",
        from: "s",
        to: "s",
        fromRoom: "R0",
        toRoom: "R1",
        risers: 13,
        rise: 200,
        going: 230,
        width: 800,
        new: false,
      },
    ],
  })
  const door = (a: string, b: string) =>
    doors.push({ ...house.doors[0]!, id: `D${doors.length}`, between: [a, b] })
  let landing = ""
  for (let level = 0; level < storeys; level++) {
    const storey = { ...house.storeys[0]!, id: `s${level}`, deck: level * 2600 }
    const first = `R${rooms.length}`
    const count = pick(level === 0 ? 1 : 2, 3)
    for (let index = 0; index < count; index++) {
      const id = `R${rooms.length}`
      const use = index === 0 ? (level === 0 ? "hall" : "landing") : next() < 0.6 ? "bedroom" : "study"
      rooms.push({ ...plain, id, use, storey })
      if (index > 0) door(next() < 0.7 ? first : `R${rooms.length - 2}`, id)
    }
    if (count === 3 && next() < 0.3) door(`R${rooms.length - 2}`, `R${rooms.length - 1}`)
    if (level === 0 && next() < 0.9) door("outside", first)
    if (level > 0)
      stairs.push({
        ...house.stairs[0]!,
        id: `S${level}`,
        from: `s${level - 1}`,
        to: storey.id,
        fromRoom: landing,
        toRoom: first,
        new: level === storeys - 1 && next() < 0.6,
      })
    landing = first
  }
  return { rooms, doors, stairs, occupied: next() < 0.7 }
}
