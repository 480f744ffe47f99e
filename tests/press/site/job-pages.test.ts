import { describe, expect, it } from "vitest"
import { setJob } from "../../../src/press/set-job.ts"
import { aroundSheet, hostedJob } from "../../../src/press/site/job-pages.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const job = setJob("tiny", await smallResult())
const hosted = hostedJob(job)
const sheet = (kind: string, room: string) =>
  job.sheets.find((each) => each.kind === kind && each.room === room)!

describe("the pages round the sheets", () => {
  it("list each published sheet once by room, and again by trade", () => {
    const listed = hosted.groups.flatMap(({ sheets }) => sheets.map(({ path }) => path))
    expect(new Set(listed).size).toBe(listed.length)
    expect([...listed].sort()).toEqual(
      job.sheets
        .filter((each) => each.hosted)
        .map(({ path }) => path)
        .sort(),
    )
    expect(hosted.trades.map(({ id }) => id)).toEqual(["trade-floors", "trade-joinery"])
  })

  it("know the letter of every sheet, published or not", () => {
    expect(Object.keys(hosted.letters)).toHaveLength(job.sheets.length)
    expect(new Set(Object.values(hosted.letters))).toEqual(new Set(["0"]))
  })

  it("lead from a sheet to the ones before and after it, its room and its trade", () => {
    const around = aroundSheet(job, sheet("floor", "C2"))
    expect(around.before?.path).toBe("c2-03")
    expect(around.after?.path).toBe("c2-06")
    expect(around.room).toEqual({ id: "room-c2", title: "C2 living room" })
    expect(around.trade).toEqual({ id: "trade-floors", title: "Floors" })
  })

  it("begin a report with what the office must know of the sheet", () => {
    const { report } = aroundSheet(job, sheet("floor", "C2"))
    expect(report.subject).toBe("Problem with sheet C2-04, revision draft, not issued")
    expect(report.body).toContain("(7k3m9x2q)")
  })
})
