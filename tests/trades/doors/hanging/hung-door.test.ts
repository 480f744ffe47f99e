import { describe, expect, it } from "vitest"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorsOfHouse } from "../../../../src/trades/doors/work.ts"
import type { JobFacts } from "../../../../src/trades/trade.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house, setDoor } from "../run.ts"

function hung(id: string, work: Record<string, unknown>, change: (job: JobFacts) => void = () => undefined) {
  const job = jobOf({ ...house, work: { [id]: work } })
  change(job)
  return doorsOfHouse(job, rulesRead(doorRules)).doors.find((each) => each.door.id === id)!
}

describe("a doorway worked out", () => {
  it("keeps to the certificate of the leaf where it is tighter than the rulebook", () => {
    const { fitted } = hung("D1", { hang: "new", certificate: { gapMost: 3, threshold: 6, hinges: 4 } })
    expect(fitted?.gap.most).toBe(3)
    expect(fitted?.threshold.most).toBe(6)
    expect(fitted?.hinges?.count).toBe(4)
  })

  // Spindle 1,000 over the floor; leaf cut to h hangs u over it: h + u - 1,000 from its top.
  it("puts the spindle 1,000 over the finished floor whatever comes off the leaf", () => {
    for (const height of [1980, 1984, 1992]) {
      const { fitted } = hung("D5", { hang: "new" }, setDoor("D5", { heights: [height, height, height] }))
      const { size, latch, up } = fitted!
      expect(size.height + up[0]!.undercut - latch.fromTop).toBeCloseTo(1000, 9)
    }
  })

  it("takes an old leaf back as measured, within what an old leaf bears", () => {
    const was = { width: 762, height: 1981, thickness: 35, mass: 18 }
    const { leaf, fitted } = hung("D3", { hang: "rehang", was })
    expect(leaf).toMatchObject({ product: null, width: 762, mass: 18, minutes: 0 })
    expect(fitted?.hinges?.count).toBe(2)
  })

  it("works nothing out for a leaf that stays, or a lining whose timber nobody chose", () => {
    expect(hung("D1", {}).fitted).toBeNull()
    const job = jobOf({ ...house, chosen: { "fire-leaf": "fd30" }, work: { D1: { hang: "new" } } })
    setDoor("D1", { lining: "new" })(job)
    const door = doorsOfHouse(job, rulesRead(doorRules)).doors.find((each) => each.door.id === "D1")
    expect(door?.fitted).toBeNull()
  })

  // Old keep 1,000 over the floor, hand changed: it now lies where the middle hinge would sit, 903 to 1,003 from the top.
  it("moves the middle hinge off the old keep where the hand changes in a kept lining", () => {
    const was = { width: 762, height: 1981, thickness: 35, hinges: "right", latch: 1000 }
    const { hinges, size, up } = hung("D5", { hang: "new", was }).fitted!
    const keep = size.height + up[0]!.undercut - 1000
    const middle = hinges!.tops[1]!
    expect(hinges!.clashes).toEqual([])
    expect(middle + hinges!.length <= keep - 30 - 20 || middle >= keep + 30 + 20).toBe(true)
  })

  // 762 - 12 - 44 + 3 = 709 in place of 762 - 12 - 35 + 3 = 718.
  it("gives the clear opening before and after", () => {
    const was = { width: 762, height: 1981, thickness: 35 }
    expect(hung("D5", { hang: "new", was }).fitted?.clear).toEqual({ before: 718, after: 709 })
  })
})
