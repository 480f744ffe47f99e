import { expect, it } from "vitest"
import { lengthMends, swappedDigits, turnMends } from "../../../src/kernels/traverse/mends.ts"

it("knows the slips that people make with a tape (common practice)", () => {
  expect(swappedDigits(3490)).toEqual([4390, 3940, 3409])
  expect(swappedDigits(3300)).toEqual([3030])
  expect(swappedDigits(1026)).toEqual([1206, 1062])
  expect(lengthMends(3490)).toEqual([
    { meant: 3390, mishap: "100 mm slip" },
    { meant: 3590, mishap: "100 mm slip" },
    { meant: 2490, mishap: "1000 mm slip" },
    { meant: 4490, mishap: "1000 mm slip" },
    { meant: 4390, mishap: "digits swapped" },
    { meant: 3940, mishap: "digits swapped" },
    { meant: 3409, mishap: "digits swapped" },
  ])
  expect(lengthMends(95).map(({ meant }) => meant)).toEqual([195, 1095, 59])
  expect(turnMends(-45)).toEqual([{ meant: 45, mishap: "left for right" }])
  expect(turnMends(0)).toEqual([])
})
