import { describe, expect, it } from "vitest"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorBlocks } from "../../../../src/trades/doors/sheets/door-blocks.ts"
import { doorsOfHouse } from "../../../../src/trades/doors/work.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house, setDoor } from "../run.ts"

function blocks(id: string, work: Record<string, unknown>, to: Parameters<typeof setDoor>[1] = {}) {
  const job = jobOf({ ...house, work: { [id]: work } })
  setDoor(id, to)(job)
  const rules = rulesRead(doorRules)
  const hung = doorsOfHouse(job, rules).doors.find((each) => each.door.id === id)!
  return { text: JSON.stringify(doorBlocks(hung, hung.fitted!, job, rules)), hung }
}
const made: Parameters<typeof setDoor>[1] = {
  lining: "new",
  lengthsTo: "stud",
  heightsFrom: "deck",
  widths: [844, 843, 845],
  heights: [2051, 2051, 2051],
}

describe("blocks of one door", () => {
  // 844 = 6 + 32 + 768 + 32 + 6; legs 1,992 over the floor and 19 down to the deck.
  it("tell a new lining in full: openings, packing, pieces, fixings", () => {
    const { text } = blocks("D1", { hang: "new" }, made)
    for (const figure of ["844 / 843 / 845", "6 / 5.5 / 6.5", "legs?.*L1, L2 2011", "200, 731, 1261, 1792"]) {
      expect(text).toMatch(new RegExp(figure))
    }
  })

  it("tell a kept lining with rebate, wall, plumb and twist, and ask for none of a new one's figures", () => {
    const { text } = blocks("D5", { hang: "new", rebateBy: "move-stop" }, { rebate: 37, plumb: 4, twist: 2 })
    expect(text).toMatch(/lining stays; rebate 37 deep; wall 108 thick; 4 out of plumb; twist 2/)
    expect(text).not.toMatch(/Packing/)
  })

  it("show all demands on the foot together and say that two clash", () => {
    const { text } = blocks("D5", { hang: "new", smoke: true, undercutFor: "air" })
    expect(text).toMatch(/at least 10 \(air/)
    expect(text).toMatch(/at most 3 \(smoke/)
    expect(text).toMatch(/cannot both be met/)
  })

  it("say that the area for air is from memory", () => {
    expect(blocks("D3", { hang: "new", leaf: "plain-686", undercutFor: "air" }).text).toMatch(/from memory/)
  })
})
