import { describe, expect, it } from "vitest"
import { doors } from "../../../src/trades/doors/index.ts"
import { jobOf } from "./houses.ts"
import { codes, house, loud, run, setDoor } from "./run.ts"

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

  it("a kept lining in twist over 3 mm (common practice), and a thin one for a fire leaf", () => {
    expect(codes({ D5: { hang: "new" } }, "B1", setDoor("D5", { twist: 5 }))).toContain(
      "door-lining-in-twist",
    )
    expect(codes({ D5: { hang: "new" } }, "B1", setDoor("D5", { twist: 3 }))).not.toContain(
      "door-lining-in-twist",
    )
  })
})
