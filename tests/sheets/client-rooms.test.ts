import { describe, expect, it } from "vitest"
import { emptied, roomsSheet } from "../../src/sheets/client-rooms.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { tablesOf } from "./sheets.ts"

describe("rooms during the works", () => {
  it("are to be ready on the working day before: work begins Monday 1 March, so Friday 26 February", async () => {
    const result = await smallResult()
    const rooms = emptied(result).map(({ room, by, what }) => [room.id, by, what])
    expect(rooms).toEqual([["C2", "2027-02-26", "Empty it wholly, cupboards too"]])
  })

  it("have what is off or unpleasant with its days, and the hours of quiet with the noise", async () => {
    const result = await smallResult()
    const steps = result.programme.steps.map((each) => ({
      ...each,
      step: { ...each.step, trade: "plumbing", dusty: true, fumes: true, room: "C2" },
    }))
    const sheet = roomsSheet({ ...result, programme: { ...result.programme, steps } })
    const rows = tablesOf(sheet)[1]!.rows.map((row) => row.cells)
    expect(rows.map(([what]) => what)).toEqual(["Water", "Dust", "Noise", "Strong smell"])
    expect(rows.find(([what]) => what === "Noise")?.[2]).toContain("Mon 09:00 to 14:00")
    expect(rows.find(([what]) => what === "Dust")?.[2]).toContain("living room")
  })

  it("are no sheet where no room is worked in", async () => {
    const result = await smallResult()
    expect(roomsSheet({ ...result, programme: { ...result.programme, steps: [] } })).toBeNull()
  })
})
