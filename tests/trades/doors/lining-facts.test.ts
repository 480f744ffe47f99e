import { describe, expect, it } from "vitest"
import { doors } from "../../../src/trades/doors/index.ts"
import { run, setDoor } from "./run.ts"

describe("linings passed on", () => {
  const made = setDoor("D1", {
    lining: "new",
    lengthsTo: "stud",
    heightsFrom: "deck",
    widths: [844, 844, 844],
    heights: [2051, 2051, 2051],
  })
  const { job } = run({ D1: { hang: "new" } }, made)
  const factsOf = (id: string) => {
    const room = job.house.rooms.find((each) => each.id === id)!
    return doors.facts!({
      job,
      room,
      input: doors.inputs.parse({}) as never,
      at: { file: room.file, path: [] },
      facts: {},
    })
  }

  // 762 + 3 + 3 = 768 between the legs; 1,981 + 3 + 8 = 1,992 over 19 of oak, the higher floor, which lies in A1 itself.
  it("gives a lining that is made as its leaf asks, over the room's own floor", () => {
    expect(factsOf("A1").linings?.D1).toEqual({ width: 768, height: 1992 })
  })

  it("gives each doorway once, in the room it belongs to", () => {
    expect(Object.keys(factsOf("A4").linings ?? {})).not.toContain("D1")
  })
})
