import { describe, expect, it } from "vitest"
import { firstRowWidth, gridChoices } from "../../../../src/trades/floors/layout/grid.ts"
import { FIRST_ROWS } from "../../../facts/floors.ts"

describe("first and last row", () => {
  it.each(FIRST_ROWS)("$what: first row $value ($source)", ({ depth, width, value }) => {
    expect(firstRowWidth(depth, width)).toBe(value)
  })

  it("never less than half a board where there is more than one row", () => {
    for (let depth = 190; depth < 4000; depth += 7)
      expect(firstRowWidth(depth, 189)).toBeGreaterThanOrEqual(94.5)
  })
})

describe("settings of the rows", () => {
  const room = (notch: number) => ({
    outline: [
      { x: 0, y: 0 },
      { x: 3000, y: 0 },
      { x: 3000, y: 2000 },
      { x: 1800, y: 2000 },
      { x: 1800, y: 2000 - notch },
      { x: 900, y: 2000 - notch },
      { x: 900, y: 2000 },
      { x: 0, y: 2000 },
    ],
    holes: [],
  })

  it("the balanced setting is best where it makes no row too thin", () => {
    const [best] = gridChoices(
      [{ outline: room(0).outline.filter((_, index) => index < 3 || index > 6), holes: [] }],
      180,
      60,
    )
    expect(best).toEqual({ joint: 100, thin: 0, off: 0 })
  })

  it("rows shift where a breast would leave a strip thinner than the least", () => {
    for (let notch = 100; notch < 400; notch += 13) {
      const [best] = gridChoices([room(notch)], 180, 60)
      expect(best!.thin).toBe(0)
      const rest = (((2000 - notch - best!.joint) % 180) + 180) % 180
      expect(rest === 0 || rest >= 59.5).toBe(true)
    }
  })
})
