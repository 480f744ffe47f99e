import { describe, expect, it } from "vitest"
import { instantAt } from "../../../src/kernels/calendar/instant.ts"
import { jobJson, siteClock } from "../../../src/press/records/job-json.ts"
import { setJob } from "../../../src/press/set-job.ts"
import { smallMoney, smallResult } from "../../fixtures/small-job.ts"
import { keysOutOfOrder } from "../../whole/formats.ts"

describe("job.json", () => {
  it("holds every result, with its keys in order, the same each time", async () => {
    const text = async () => jobJson(setJob("tiny", await smallResult(() => ({ money: smallMoney }))))
    const first = await text()
    const job = JSON.parse(first)
    expect(await text()).toBe(first)
    expect(keysOutOfOrder(job)).toEqual([])
    expect(job.rooms.map((room: { id: string }) => room.id)).toEqual(["C1", "C2"])
    expect(job.trades.map((each: { trade: string }) => each.trade)).toEqual(["floors", "floors", "joinery"])
    expect(job.programme.steps.map((step: { key: string }) => step.key)).toEqual([
      "floors/C2/lay",
      "joinery/C2/fix",
      "floors/C2/oil",
    ])
    expect(job.price.labourTotal).toBe("467.55")
    expect(job.orders.lines.map((line: { product: string }) => line.product)).toEqual([
      "oak-14",
      "skirting-145",
    ])
    expect(job.sheets.length).toBeGreaterThan(10)
  })

  it("does not name the client", async () => {
    const result = await smallResult((job) => ({ job: { ...job.job, client: "Secret owners" } }))
    expect(jobJson(setJob("tiny", result))).not.toContain("Secret owners")
  })
})

describe("day and time for records", () => {
  it("are those of the site", () => {
    const instant = instantAt("2027-07-01", "08:00", "Europe/London")
    expect(siteClock(instant, "Europe/London")).toEqual({ date: "2027-07-01", time: "08:00" })
    expect(siteClock(instant, "Pacific/Auckland")).toEqual({ date: "2027-07-01", time: "19:00" })
  })
})
