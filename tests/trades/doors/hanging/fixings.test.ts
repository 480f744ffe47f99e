import { describe, expect, it } from "vitest"
import { liningFixings } from "../../../../src/trades/doors/hanging/fixings.ts"

const allowed = { end: 200, centres: 600, hold: 40 }

describe("fixings of a lining leg", () => {
  // NHBC Standards 6.7: at most 600 apart. 1,994 less two ends of 200 is 1,594: three spaces of 531.
  it("stand 200 from the ends and evenly between, none over 600 apart", () => {
    const { places } = liningFixings({ height: 1994, thickness: 32, packing: 6 }, allowed)
    expect(places).toEqual([200, 731, 1263, 1794])
    for (let height = 700; height < 2800; height += 7) {
      const run = liningFixings({ height, thickness: 32, packing: 6 }, allowed).places
      const gaps = run.slice(1).map((place, n) => place - run[n]!)
      expect(Math.max(...gaps)).toBeLessThanOrEqual(601)
      expect([run[0], run.at(-1)]).toEqual([200, height - 200])
    }
  })

  it("take a screw through lining and packing 40 into the wall: 32 + 6.5 + 40", () => {
    expect(liningFixings({ height: 1994, thickness: 32, packing: 6.5 }, allowed).screw).toBe(79)
  })
})
