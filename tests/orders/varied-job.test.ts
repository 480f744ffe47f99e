import { describe, expect, it } from "vitest"
import { variation } from "../../src/intake/schema/variations.ts"
import { variedJob } from "../../src/orders/varied-job.ts"
import { smallJob, smallMoney, smallResult } from "../fixtures/small-job.ts"

const change = (given: Record<string, unknown>) =>
  variation.parse({ id: "V1", on: "2027-02-01", asked: "client", what: "change", ...given })

describe("a job with a variation put in place", () => {
  it("takes a trade's work in place of the room's own, leaves trades out, and says where it was written", () => {
    const one = change({ rooms: [{ room: "C2", work: { floors: { finish: "stays" } }, omit: ["joinery"] }] })
    const job = smallJob(() => ({ variations: [one] }))
    const varied = variedJob(job, [one])
    expect(job.works.get("C2")?.has("joinery")).toBe(true)
    expect(varied.works.get("C2")?.get("floors")).toEqual({ finish: "stays" })
    expect(varied.works.get("C2")?.has("joinery")).toBe(false)
    expect(varied.writtenAt?.get("C2/floors")).toEqual({
      file: "variations.yaml",
      path: ["variations", 0, "rooms", 0, "work", "floors"],
    })
    expect(varied.works.get("C1")).toBe(job.works.get("C1"))
  })

  it("hangs doors and chooses products otherwise; the later variation counts", () => {
    const job = smallJob()
    const door = job.house.doors[0]!.id
    const first = change({ doors: [{ door, work: { hang: "new" } }], chosen: { board: "a" } })
    const second = change({ id: "V2", chosen: { board: "b" } })
    const varied = variedJob({ ...job, variations: [first, second] }, [first, second])
    expect(varied.house.doors[0]?.work).toEqual({ hang: "new" })
    expect(varied.chosen.get("board")).toBe("b")
    expect(varied.chosen.get("skirting")).toBe(job.chosen.get("skirting"))
  })
})

describe("a job's account", () => {
  const omit = { rooms: [{ room: "C2", omit: ["joinery"] }] }
  const sum = { sums: [{ what: "shelf", amount: "100.00" }] }

  it("counts accepted changes alone, in order, and works open ones out on top of them", async () => {
    const variations = [
      change({ ...sum, id: "V1", accepted: "2027-02-02" }),
      change({ ...omit, id: "V2" }),
      change({ ...omit, id: "V3", accepted: "2027-02-03" }),
      change({ ...sum, id: "V4", declined: "2027-02-03" }),
    ]
    const result = await smallResult(() => ({ money: smallMoney, variations }))
    const { contract, changes } = result.account!
    expect(changes.map(({ variation: { id } }) => id)).toEqual(["V1", "V3", "V2", "V4"])
    expect(changes[0]!.after!.price!.net.minus(contract.price!.net).toFixed(2)).toBe("100.00")
    expect(changes[1]!.before.price).toBe(changes[0]!.after!.price)
    expect(changes[1]!.after!.price!.gross).toEqual(result.price!.gross)
    expect(changes[2]!.before.price!.gross).toEqual(result.price!.gross)
    expect(changes[3]!.after).toBeNull()
    expect(result.orders.lines.map((line) => line.product.kind)).toEqual(["board"])
    expect(contract.orders.lines.map((line) => line.product.kind)).toEqual(["board", "length"])
  })

  it("is none where no variation was written", async () => {
    expect((await smallResult()).account).toBeNull()
  })
})
