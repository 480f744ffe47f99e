import { expect, it } from "vitest"
import { clockAt, type Instant } from "../../src/kernels/calendar/instant.ts"
import { placeAll } from "../../src/programme/place.ts"
import { waitsWith } from "../../src/programme/wait-net.ts"
import { stepOf } from "../fixtures/programme.ts"
import { placeable, plainChoice } from "./parts.ts"

const time = (moment: number) => Object.values(clockAt(moment as Instant, "Europe/London")).join(" ")

it("all of one visit when the last of it can start", () => {
  const given = placeable([
    stepOf({ key: "lay", trade: "floors", stage: "floor", hours: 6 }),
    stepOf({ key: "here", stage: "fill", hours: 1 }),
    stepOf({ key: "there", stage: "fill", hours: 1, room: "R2" }),
  ])
  const placing = placeAll(given, { ...plainChoice(given), waits: waitsWith(given.plan, [-1, 0, 0]) })!
  expect([...placing.start].map(time)).toEqual(["2027-03-01 08:00", "2027-03-01 15:00", "2027-03-01 16:00"])
})
