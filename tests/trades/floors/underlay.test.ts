import { describe, expect, it } from "vitest"
import { frameOf } from "../../../src/trades/floors/layout/frame.ts"
import { floorRules } from "../../../src/trades/floors/rules.ts"
import { underlayOf } from "../../../src/trades/floors/underlay.ts"
import { UNDERLAY } from "../../facts/floors.ts"
import { rulesOf } from "../../fixtures/rooms.ts"

function room(wide: number, deep: number) {
  const outline = [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: -deep },
    { x: 0, y: -deep },
  ]
  return { region: { outline, holes: [] }, frame: frameOf(outline[0]!, outline[1]!) }
}

describe("underlay", () => {
  it.each(UNDERLAY)("$what: $gross m2, $rolls rolls of 10 m2 ($source)", ({ net, gross, rolls }) => {
    const { region, frame } = room(net * 500, 2000)
    const found = underlayOf([region], frame, 1000, rulesOf(floorRules))
    expect(found.net).toBeCloseTo(net, 9)
    expect(found.gross).toBeCloseTo(gross, 9)
    expect(Math.ceil(found.gross / 10)).toBe(rolls)
  })

  it("strips at right angles to the boards: 4,200 wide in strips of 1,000 has 4 joints of 3 m", () => {
    const { region, frame } = room(4200, 3000)
    expect(underlayOf([region], frame, 1000, rulesOf(floorRules))).toMatchObject({ strips: 5, joints: 12 })
  })
})
