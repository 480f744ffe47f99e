import { describe, expect, it } from "vitest"
import { hoursText, sequenceSheet } from "../../src/sheets/sequence.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { rowsOf } from "./sheets.ts"

describe("the order of work in a room", () => {
  it("names who, when and what must be dry first, with a stop line after what must be signed", async () => {
    const result = await smallResult()
    const rows = rowsOf(sequenceSheet(result, result.house.rooms[1]!))
    // Two joiners: 8 h of noisy laying from 08:00, quiet 09:00 to 14:00 that Monday: 08:00-09:00 and 14:00-16:30 are 3.5 h
    // of the 4 h that two take; the rest from 08:00 on Tuesday. Glue sets for a day, to Wednesday 08:30.
    expect(rows.map((row) => [row.as ?? "", row.cells[1], row.cells[3]])).toEqual([
      ["", "Lay. ", "Mon 1 Mar 08:00"],
      ["", "Fix. ", "Wed 3 Mar 08:30"],
      ["", "Oil. ", "Wed 3 Mar 11:00"],
      ["hold", "Stop and check: dry to the touch", ""],
    ])
    expect(rows[0]?.cells[4]).toBe("glue set (24 h): Wed 3 Mar 08:30")
    expect(rows.map((row) => row.cells.at(-1))).toEqual(["", "", "", ""])
  })

  it("has no rows in a room without steps", async () => {
    const result = await smallResult()
    expect(rowsOf(sequenceSheet(result, result.house.rooms[0]!))).toEqual([])
  })
})

describe("hours in words", () => {
  it.each([
    [24, "24 h"],
    [1.5, "1.5 h"],
    [47.9, "47.9 h"],
    [48, "2 days"],
    [60, "2.5 days"],
    [672, "28 days"],
  ])("%d reads %s", (hours, text) => {
    expect(hoursText(hours)).toBe(text)
  })
})
