import { describe, expect, it } from "vitest"
import { groutPerM2 } from "../../../src/trades/tiling/quantities.ts"
import { ADHESIVE, GROUT } from "../../facts/tiling.ts"
import { rules } from "./wash-room.ts"

describe("grout and adhesive", () => {
  it.each(GROUT)("$what: $value kg a m2 ($source)", ({ joint, value, ...tile }) => {
    expect(groutPerM2(tile, joint, rules.value("tile-grout-density"))).toBeCloseTo(value, 9)
  })

  it.each(ADHESIVE)("$rule lies from $from to $to kg a m2 ($source)", ({ rule, from, to }) => {
    expect(rules.value(rule)).toBeGreaterThanOrEqual(from)
    expect(rules.value(rule)).toBeLessThanOrEqual(to)
  })
})
