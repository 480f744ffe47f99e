import { describe, expect, it } from "vitest"
import { run, setDoor } from "./run.ts"

describe("steps at one doorway", () => {
  const made = setDoor("D1", {
    lining: "new",
    lengthsTo: "stud",
    heightsFrom: "deck",
    widths: [844, 844, 844],
    heights: [2051, 2051, 2051],
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

  it("only looks at a leaf that stays on the stair, and leaves one off the stair alone", () => {
    const { works } = run({})
    expect(works.get("B1")!.steps.map((step) => step.key)).toEqual(["doors/D5/look"])
    expect(works.get("A3")!.steps).toEqual([])
  })

  it("takes an old leaf off the stair only on the day the new one hangs", () => {
    const { works } = run({ D5: { hang: "new" } }, setDoor("D5", { leafNow: "panelled, 35 mm" }))
    const off = works.get("B1")!.steps.find((step) => step.key === "doors/D5/take-off")
    expect(off?.detail).toMatch(/same day/)
    expect(off?.stage).toBe("linings")
  })

  it("cuts a kept lining at the foot by the new floor", () => {
    const { works } = run({ D1: { hang: "new" } })
    const ready = works.get("A1")!.steps.find((step) => step.key === "doors/D1/lining")
    expect(ready?.detail).toMatch(/19 mm above the deck/)
  })

  it("adds a closer's time: 2.75 and 0.75 h (common practice)", () => {
    const { works } = run({ D13: { hang: "new", leaf: "fd30", closer: true } })
    expect(works.get("C1")!.steps.find((step) => step.key === "doors/D13/hang")?.hours).toBe(3.5)
  })
})
