import { describe, expect, it } from "vitest"
import { clearWidth } from "../../../../src/trades/doors/hanging/clear-width.ts"
import { CLEAR_WIDTHS } from "../../../facts/doors.ts"

describe("clear opening", () => {
  it.each(CLEAR_WIDTHS)("of $what is $clear ($source)", ({ leaf, thickness, clear }) => {
    expect(clearWidth({ leaf, gap: 3, stop: 12, thickness })).toBe(clear)
  })
})
