import { describe, expect, it } from "vitest"
import { doors } from "../../../src/trades/doors/index.ts"
import type { JobFacts, Task, Work } from "../../../src/trades/trade.ts"
import { jobOf, products, type ShortHouse } from "./houses.ts"

const house: ShortHouse = {
  lowestGround: -240,
  decks: [0, 2610, 5275],
  rooms: [
    "C1 hall 0",
    "C2 living 0",
    "B4 landing 1",
    "B1 bedroom 1",
    "B3 bathroom 1",
    "A4 landing 2",
    "A1 bedroom 2",
    "A3 bathroom 2",
  ],
  stairs: ["S1 C1 B4", "S2 B4 A4 new"],
  doors: [
    "D14 outside C1 final",
    "D9 C1 C2",
    "D5 B4 B1",
    "D7 B4 B3",
    "D1 A4 A1",
    "D3 A1 A3",
    "D13 garage C1",
  ],
  passed: { A1: { floorBuildUp: 19, floorFinish: "oak" }, A3: { floorBuildUp: 13, floorFinish: "tile" } },
  products,
  chosen: { lining: "lining-108", stop: "stop-12", "fire-leaf": "fd30", leaf: "plain-762" },
}

type Works = Record<string, Record<string, unknown>>

function run(work: Works, change: (job: JobFacts) => void = () => undefined) {
  const job = jobOf({ ...house, work })
  change(job)
  const works = new Map<string, Work>()
  const sheets = job.house.rooms.flatMap((room) => {
    const task: Task<never> = {
      job,
      room,
      input: doors.inputs.parse({}) as never,
      at: { file: room.file, path: ["work", "doors"] },
      facts: {},
    }
    const done = doors.work(task)
    works.set(room.id, done)
    return doors.sheets(task, done)
  })
  const rooms = job.house.rooms.map((room) => ({ room, work: works.get(room.id)! }))
  return { job, works, sheets, across: () => doors.across!(job, rooms) }
}

function codes(work: Works, room: string, change?: (job: JobFacts) => void): string[] {
  return run(work, change)
    .works.get(room)!
    .findings.map((finding) => finding.code)
}

function setDoor(id: string, to: Partial<JobFacts["house"]["doors"][number]>) {
  return (job: JobFacts) => Object.assign(job.house.doors.find((door) => door.id === id)!, to)
}

const quiet = new Set(["door-not-placed", "door-clear-width-less"])
const loud = (list: string[]) => list.filter((code) => !quiet.has(code))

describe("a leaf against what guidance asks", () => {
  it("hangs the job's fire leaf where guidance asks one and the author names none", () => {
    const { works } = run({ D1: { hang: "new" } })
    expect(works.get("A1")!.results.doors).toMatchObject({ D1: { product: "fd30", guidance: "FD20 (E 20)" } })
    expect(loud(works.get("A1")!.findings.map((finding) => finding.code))).toEqual([])
  })

  it("warns of an ordinary leaf on the stair, and not of one between bedroom and shower", () => {
    expect(loud(codes({ D1: { hang: "new", leaf: "plain-762" } }, "A1"))).toEqual(["door-below-guidance"])
    expect(loud(codes({ D3: { hang: "new", leaf: "plain-762" } }, "A3"))).toEqual([])
  })

  it("asks about a leaf that stays without a label", () => {
    expect(loud(codes({}, "B1"))).toEqual(["door-stays-unproven"])
    const was = { width: 762, height: 1981, thickness: 44, fire: "30" }
    expect(loud(codes({ D5: { was } }, "B1"))).toEqual([])
  })

  it("wants leaf, smoke seal and closer to the garage", () => {
    const onGarage = (work: Record<string, unknown>) =>
      loud(codes({ D13: { hang: "new", leaf: "fd30", thresholdSeal: true, ...work } }, "C1"))
    expect(onGarage({})).toEqual(["door-below-guidance"])
    expect(onGarage({ smoke: true })).toEqual(["door-below-guidance"])
    expect(onGarage({ smoke: true, closer: true })).toEqual([])
  })
})

describe("what does not go together is a finding", () => {
  it("44 leaf in a rebate of 37: 7 proud, until the author says what is done", () => {
    const rebate = setDoor("D5", { rebate: 37 })
    expect(loud(codes({ D5: { hang: "new" } }, "B1", rebate))).toEqual(["door-leaf-stands-proud"])
    expect(loud(codes({ D5: { hang: "new", rebateBy: "move-stop" } }, "B1", rebate))).toEqual([])
    const { works } = run({ D5: { hang: "new", rebateBy: "move-stop" } }, rebate)
    expect(works.get("B1")!.steps.find((step) => step.key === "doors/D5/lining")?.detail).toMatch(
      /stop back by 7 mm/,
    )
  })

  it("air and smoke under one leaf", () => {
    const work = { hang: "new", smoke: true, undercutFor: "air" }
    expect(codes({ D1: work }, "A1")).toContain("door-threshold-clash")
  })

  it("768/767/771 for a 762 leaf names the bottom", () => {
    const { works } = run({ D5: { hang: "new" } }, setDoor("D5", { widths: [768, 767, 771] }))
    const finding = works.get("B1")!.findings.find((each) => each.code === "door-gap-over-limit")
    expect(finding?.message).toMatch(/lock edge bottom: the gap is 5 mm, 4 is the most/)
    expect(finding?.at).toEqual({ file: "house.yaml", path: ["doors", 2, "widths"] })
  })

  it("686 opening for a 762 leaf: too much to come off, with the size that would go in", () => {
    const { works } = run({ D5: { hang: "new" } }, setDoor("D5", { widths: [692, 692, 692] }))
    const finding = works.get("B1")!.findings.find((each) => each.code === "door-trim-over-limit")
    expect(finding?.expected).toMatch(/686 x 1981/)
  })

  it("a lining narrower than the wall, a lining taped inside the old one, a lining out of plumb", () => {
    const made = setDoor("D1", {
      lining: "new",
      lengthsTo: "lining",
      wall: 124,
      widths: [844],
      heights: [2054],
    })
    expect(codes({ D1: { hang: "new" } }, "A1", made)).toEqual(
      expect.arrayContaining(["door-lining-too-narrow", "door-opening-not-structural", "door-measured-once"]),
    )
    expect(codes({ D5: { hang: "new" } }, "B1", setDoor("D5", { plumb: 9 }))).toContain(
      "door-lining-out-of-plumb",
    )
  })

  it("a changed hand, handles of two heights on a storey, a door of a room without doors", async () => {
    const was = { width: 762, height: 1981, thickness: 35, hinges: "right", latch: 1000 }
    expect(codes({ D5: { hang: "new", was } }, "B1")).toContain("door-hand-changes")
    const { across } = run({ D5: { hang: "new" }, D7: { hang: "new", handleHeight: 1040 } })
    expect((await across()).work.findings.map((finding) => finding.code)).toContain("door-handles-differ")
    const job = jobOf({ ...house, work: { D5: { hang: "new" } } })
    const { work } = await doors.across!(job, [])
    expect(work.findings.map((finding) => finding.code)).toContain("door-in-no-room")
  })
})

describe("what one door takes", () => {
  const made = setDoor("D1", {
    lining: "new",
    lengthsTo: "stud",
    heightsFrom: "deck",
    widths: [844, 844, 844],
    heights: [2051, 2051, 2051],
  })

  // 844 = 6 + 32 + 3 + 762 + 3 + 32 + 6. Height over the oak: 2,051 - 19 = 2,032; 2,032 - 32 - (5 to 10) leaves 1,990 to 1,995
  // for 1,981 + 3 + 8 = 1,992: packing 8.
  it("cuts lining and stop for 762 x 1981 in 844 x 2051 over the deck with 19 of floor", () => {
    const { works } = run({ D1: { hang: "new" } }, made)
    const { pieces, quantities, findings } = works.get("A1")!
    expect(loud(findings.map((finding) => finding.code))).toEqual([])
    expect(pieces.map((piece) => [piece.mark, piece.product, piece.length])).toEqual([
      ["A1-D1-L1", "lining-108", 1992],
      ["A1-D1-L2", "lining-108", 1992],
      ["A1-D1-L3", "lining-108", 832],
      ["A1-D1-T1", "stop-12", 768],
      ["A1-D1-T2", "stop-12", 1980],
      ["A1-D1-T3", "stop-12", 1980],
    ])
    expect(quantities.map((each) => [each.what, each.gross, each.unit])).toEqual([
      ["Door leaf 762 x 1981 x 44", 1, "nr"],
      ["Lining set", 1, "nr"],
      ["Hinge 100 mm, grade 11", 3, "nr"],
      ["Hinge screw", 24, "nr"],
      ["Latch with keep", 1, "nr"],
      ["Handles, pair", 1, "nr"],
      ["Intumescent strip", 4.452, "m"],
    ])
  })

  it("has steps from lining to a hold on the gaps after paint and floor", () => {
    const { works } = run({ D1: { hang: "new" } }, made)
    const steps = works.get("A1")!.steps
    expect(steps.map((step) => [step.key, step.stage])).toEqual([
      ["doors/D1/lining", "linings"],
      ["doors/D1/seal-faces", "hang"],
      ["doors/D1/hang", "hang"],
      ["doors/D1/gaps", "snag"],
    ])
    expect(steps.at(-1)?.hold).toMatch(/gaps/)
    expect(steps.reduce((sum, step) => sum + step.hours, 0)).toBeCloseTo(1.5 + 0.5 + 2.75 + 0.25)
  })

  it("asks for two people at 40 kg and not at 18 kg", () => {
    const ids = (leaf: string) =>
      run({ D3: { hang: "new", leaf } })
        .works.get("A3")!
        .cautions.map((caution) => caution.id)
    expect(ids("fd30")).toContain("door-two-people")
    expect(ids("plain-762")).not.toContain("door-two-people")
  })
})

describe("sheets", () => {
  it("are one for each room with doors, and schedule, escape route and record for the house", async () => {
    const { sheets, across } = run({ D1: { hang: "new" }, D5: { hang: "new" } })
    expect(sheets.map((sheet) => [sheet.kind, sheet.room])).toEqual([
      ["doors", "C1"],
      ["doors", "C2"],
      ["doors", "B1"],
      ["doors", "B3"],
      ["doors", "A1"],
      ["doors", "A3"],
    ])
    const house = await across()
    expect(house.sheets.map((sheet) => sheet.kind)).toEqual(["escape-route", "door-schedule", "door-record"])
    const rows = house.work.results.doorSchedule as Record<string, unknown>[]
    expect(rows.map((row) => row.door)).toEqual(["D14", "D9", "D5", "D7", "D1", "D3", "D13"])
    expect(new Set(rows.map((row) => Object.keys(row).join())).size).toBe(1)
  })

  it("give every table row as many cells as it has columns", async () => {
    const { sheets, across } = run({
      D1: { hang: "new" },
      D5: { hang: "new", closer: true },
      D13: { hang: "new" },
    })
    for (const sheet of [...sheets, ...(await across()).sheets]) {
      for (const block of sheet.blocks) {
        if (block.kind !== "table") continue
        for (const row of block.rows)
          expect([block.caption, row.cells.length]).toEqual([block.caption, block.columns.length])
      }
    }
  })

  it("rest only on entries the rulebook has, and the same job gives the same sheets", () => {
    const work = { D1: { hang: "new" } }
    const first = run(work)
    for (const sheet of first.sheets)
      for (const id of sheet.rests) expect(first.job.rules.entry(id).id).toBe(id)
    expect(run(work).sheets).toEqual(first.sheets)
  })
})
