import { expect, it } from "vitest"
import { datumText } from "../../src/trades/datum.ts"
import { surveyed } from "../fixtures/rooms.ts"

it("a sheet's heights come from the level the room was taped from, or from the one the sheet names", () => {
  const room = surveyed({
    measured: { on: "2027-01-10", by: "foreman", lengthsTo: "stud", heightsFrom: "old-floor", tape: 3 },
  })
  expect(datumText(room)).toBe("Heights from the floor as it was. Lengths to stud. Millimetres.")
  expect(datumText(room, "finished-floor")).toBe(
    "Heights from the finished floor. Lengths to stud. Millimetres.",
  )
})
