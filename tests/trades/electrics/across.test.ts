import { describe, expect, it } from "vitest"
import { electricsAcross } from "../../../src/trades/electrics/across.ts"
import { electricsWork } from "../../../src/trades/electrics/work.ts"
import { task } from "./bedroom.ts"

const alarm = { kind: "smoke-alarm", on: "ceiling", wall: 1, fromLeft: 2000, off: 1500 }
const below = task({ points: [alarm, { ...alarm, kind: "heat-alarm", fromLeft: 3000 }] })
const above = task({ points: [alarm] }, { id: "T1" })
const attic = { ...above.room.storey, id: "attic", name: "Attic", deck: 5000 }
const top = { ...above.room, storey: attic }
const inRooms = [
  { room: below.room, work: electricsWork(below) },
  { room: top, work: electricsWork(above) },
]
const stairs = [{ id: "S1" }] as never
const house = { ...below.job.house, rooms: [below.room, top], stairs, storeys: [below.room.storey, attic] }

describe("alarms across the house", () => {
  it("are sounded together after every room with one is closed up, by the highest of them", async () => {
    const { work } = await electricsAcross({ ...below.job, house }, inRooms)
    expect(work.steps.map(({ key, room, after }) => [key, room, after])).toEqual([
      ["electrics/house/alarms-together", "T1", ["electrics/R1/close-up", "electrics/T1/close-up"]],
    ])
    expect(work.results.alarms).toEqual([
      { room: "R1", count: 2 },
      { room: "T1", count: 1 },
    ])
    expect(work.findings).toEqual([])
  })

  it("a storey to live in without one is named", async () => {
    const { work } = await electricsAcross({ ...below.job, house }, inRooms.slice(0, 1))
    expect(work.findings.map(({ code, at }) => [code, at.path.join("/")])).toEqual([
      ["storey-without-alarm", "storeys/1"],
    ])
  })

  it("a house without any has no step", async () => {
    const none = task({ points: [{ kind: "socket", wall: 2, fromLeft: 900 }] })
    const { work } = await electricsAcross(none.job, [{ room: none.room, work: electricsWork(none) }])
    expect(work.steps).toEqual([])
  })
})
