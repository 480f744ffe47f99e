import { describe, expect, it } from "vitest"
import { instantAt } from "../../src/kernels/calendar/instant.ts"
import { listText, nameOf, scheduleSheet, wetText } from "../../src/sheets/client-schedule.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf } from "./sheets.ts"

const at = (day: string, time: string) => instantAt(day, time, "Europe/London")
const plain = (cells: string[][]) => cells.map((row) => row.map((cell) => cell.replaceAll("\u00a0", " ")))

describe("the schedule of works", () => {
  it("says each week in plain words what is done, where and on which days", async () => {
    // laid on Monday 1 and Tuesday 2, fixed and oiled on Wednesday 3 March
    expect(plain(cellsOf(scheduleSheet(await smallResult())))).toEqual([
      ["Week of Mon 1 Mar", ""],
      ["The new floor is laid", "living room: Mon 1 Mar to Tue 2 Mar"],
      ["Skirting and the trim round doors are fixed", "living room: Wed 3 Mar"],
      ["The wood floor is oiled", "living room: Wed 3 Mar"],
    ])
  })

  it("says in the following week too where a floor is still wet", async () => {
    const result = await smallResult()
    const [first, ...others] = result.programme.steps
    const wet = {
      ...first!,
      start: at("2027-03-05", "15:00"),
      finish: at("2027-03-05", "16:00"),
      ready: at("2027-03-08", "10:00"),
      step: { ...first!.step, gate: { process: "oil", hours: 66, forbids: ["walk" as const] } },
    }
    const programme = { ...result.programme, steps: [wet, ...others] }
    const rows = cellsOf(scheduleSheet({ ...result, programme }))
    const keepOut = rows.filter(([what]) => what?.startsWith("Nobody walks"))
    expect(keepOut).toHaveLength(2)
    for (const [, where] of keepOut) expect(where).toBe("living room: Fri 5 Mar 16:00 until Mon 8 Mar 10:00")
    const later = { ...wet, finish: at("2027-03-08", "09:00"), ready: at("2027-03-08", "18:00") }
    expect(wetText([wet, later], result)).toBe("living room: Fri 5 Mar 16:00 until Mon 8 Mar 18:00")
    expect(nameOf({ ...wet, step: { ...wet.step, room: null } }, result)).toBe("the house")
  })

  it("says from which evening on people may sleep in new rooms, where there are any", async () => {
    const result = await smallResult()
    const words = (programme: typeof result.programme) =>
      JSON.stringify(scheduleSheet({ ...result, programme }).blocks[0])
    expect(words(result.programme)).not.toContain("sleeps")
    expect(
      words({
        ...result.programme,
        firstNight: { on: "2027-03-10", after: [], conditions: [], rooms: [] } as never,
      }),
    ).toContain("Wed 10 Mar 2027")
  })
})

describe("words in a list", () => {
  it.each([
    [[], ""],
    [["a"], "a"],
    [["a", "b"], "a and b"],
    [["a", "b", "c"], "a, b and c"],
  ])("%j reads %j", (words, text) => {
    expect(listText(words)).toBe(text)
  })
})
