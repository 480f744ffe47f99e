import { describe, expect, it } from "vitest"
import { marksOf } from "../../../../src/trades/doors/hanging/marks.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorsOfHouse } from "../../../../src/trades/doors/work.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house, setDoor } from "../run.ts"

const rules = rulesRead(doorRules)

function marks(work: Record<string, unknown>, to: Parameters<typeof setDoor>[1] = {}) {
  const job = jobOf({ ...house, work: { D5: { hang: "new", leaf: "fd30", ...work } } })
  setDoor("D5", to)(job)
  const hung = doorsOfHouse(job, rules).doors.find((each) => each.door.id === "D5")!
  return { hung, fitted: hung.fitted!, marks: marksOf(hung, hung.fitted!, rules) }
}

describe("marks on leaf and lining", () => {
  it.each(["left", "right"] as const)(
    "are one place told three ways, on each jamb's own height, hinges on the %s",
    (hinges) => {
      const { fitted, marks: all } = marks({}, { hinges, heights: [1984, 1985, 1987] })
      const ends = [fitted.up[0]!, fitted.up.at(-1)!]
      const [hingeEnd, lockEnd] = hinges === "left" ? ends : ends.reverse()
      for (const mark of all) {
        const end = mark.of === "hinge" ? hingeEnd! : lockEnd!
        expect(mark.onLining - mark.onLeaf).toBeCloseTo(end.headGap, 9)
        expect(mark.onLining + mark.overFloor).toBeCloseTo(end.opening, 9)
      }
    },
  )

  it("puts spindle and keep 1,000 over the floor whichever side the head rises to", () => {
    for (const hinges of ["left", "right"] as const) {
      const { marks: all } = marks({}, { hinges, heights: [1984, 1985, 1987] })
      expect(all.find((mark) => mark.of === "spindle")?.overFloor).toBeCloseTo(1000, 9)
    }
  })

  // Common practice: 100 below the spindle, clear of the handle's plate.
  it("has a second keep for a thumb-turn, 100 below the first, and none without", () => {
    expect(marks({}).marks.some((mark) => mark.of === "bolt")).toBe(false)
    const { marks: all } = marks({ thumbTurn: true })
    expect(all.at(-1)).toMatchObject({ of: "bolt" })
    expect(all.at(-1)!.overFloor).toBeCloseTo(900, 9)
  })

  it("lets a flap in by its thickness, 1 deeper over a pad the certificate asks for", () => {
    const recess = (work: Record<string, unknown>) => marks(work).fitted.hinges!.recess
    expect(recess({})).toBe(3)
    expect(recess({ hingeThickness: 2.5 })).toBe(2.5)
    expect(recess({ hingeThickness: 2.5, certificate: { pads: true } })).toBe(3.5)
  })
})
