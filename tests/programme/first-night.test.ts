import { describe, expect, it } from "vitest"
import { firstNightOf } from "../../src/programme/first-night.ts"
import { waysOf } from "../../src/programme/ways.ts"
import { datedOf, programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const plain = surveyed()
const up = { ...plain, id: "R2", storey: { ...plain.storey, id: "attic", deck: 2600 } }
const stairs = [{ id: "S1", from: "ground", to: "attic", fromRoom: "R1", toRoom: "R2", new: true }] as never
const site = siteOf([{ ...plain, use: "hall" }, up], { stairs, occupied: true })
const steps = [
  stepOf({ key: "doors/D1/hang", trade: "doors", stage: "hang", hours: 2 }),
  stepOf({ key: "up", room: "R2", stage: "oil", hours: 9 }),
  stepOf({ key: "late below", stage: "snag", hours: 30 }),
]

describe("the first night", () => {
  const { steps: dated } = datedOf(steps, site.rooms, programmeOf(), { stairs, occupied: true })

  it("waits for the new storey and for every door, not for other work below", () => {
    const night = firstNightOf(dated, site, { ways: waysOf(site), zone: "Europe/London" })
    expect(night?.after.sort()).toEqual(["doors/D1/hang", "up"])
    expect(night?.on).toBe("2027-03-02")
  })

  it("is nobody's where the house is empty", () => {
    const empty = { ...site, occupied: false }
    expect(firstNightOf(dated, empty, { ways: waysOf(empty), zone: "Europe/London" })).toBeNull()
  })
})
