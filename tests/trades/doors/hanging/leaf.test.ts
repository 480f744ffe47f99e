import { describe, expect, it } from "vitest"
import { leafText, leafToHang, minutesHung } from "../../../../src/trades/doors/hanging/leaf.ts"
import { doorWork } from "../../../../src/trades/doors/inputs.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house } from "../run.ts"

const job = jobOf(house)
const door = job.house.doors.find((each) => each.id === "D5")!
const rules = rulesRead(doorRules)
const asked = (minutes: number) => ({ minutes }) as Parameters<typeof leafToHang>[1]

describe("the leaf to hang", () => {
  it("is the one named, else the job's for fire-resisting or ordinary doors", () => {
    const leaf = (work: unknown, minutes: number) =>
      leafToHang(doorWork(work), asked(minutes), job, rules)?.product
    expect(leaf({ hang: "new", leaf: "plain-686" }, 20)).toBe("plain-686")
    expect(leaf({ hang: "new" }, 20)).toBe("fd30")
    expect(leaf({ hang: "new" }, 0)).toBe("plain-762")
    expect(leaf({ hang: "new", leaf: "no-such" }, 0)).toBeUndefined()
    expect(leaf({}, 20)).toBeUndefined()
  })

  it("is never cut where an old leaf carries a label and its data are not known", () => {
    const work = doorWork({ hang: "rehang", was: { width: 762, height: 1981, thickness: 44, fire: "30" } })
    expect(leafToHang(work, asked(20), job, rules)?.trim).toEqual({ hinge: 0, lock: 0, head: 0, foot: 0 })
  })

  it("says what hangs there, with smoke seal or not", () => {
    const work = doorWork({ hang: "new", smoke: true })
    const leaf = leafToHang(work, asked(30), job, rules)
    expect(leafText(leaf, door, work)).toMatch(/^FD30S: /)
    expect(minutesHung(leaf, work)).toBe(30)
    expect(minutesHung(null, doorWork({}))).toBe(0)
    expect(
      minutesHung(null, doorWork({ was: { width: 762, height: 1981, thickness: 44, fire: "20" } })),
    ).toBe(20)
  })
})
