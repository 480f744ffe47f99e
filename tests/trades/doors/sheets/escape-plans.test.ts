import { describe, expect, it } from "vitest"
import type { PolygonShape, TextShape } from "../../../../src/kernels/drawing/shapes.ts"
import { storeyPlans } from "../../../../src/survey/storey-plan.ts"
import { escapeOf } from "../../../../src/trades/doors/escape/escape.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { askedOf, escapePlan, escapePlans } from "../../../../src/trades/doors/sheets/escape-plans.ts"
import { surveyed } from "../../../fixtures/rooms.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house } from "../run.ts"

const job = jobOf(house)
const wayOut = escapeOf(job, rulesRead(doorRules))
const written = { storeys: job.house.storeys, doors: job.house.doors, stairs: job.house.stairs }
const hall = [
  { door: "D14", wall: 1, fromLeft: 200 },
  { door: "D9", wall: 2, fromLeft: 400 },
]
const rooms = job.house.rooms.map((room) =>
  room.id === "C1" || room.id === "C2"
    ? surveyed(
        {
          id: room.id,
          name: room.name,
          use: room.use,
          storey: room.storey.id,
          doors: room.id === "C1" ? hall : [{ door: "D9", wall: 4, fromLeft: 500 }],
        },
        { ...written, lowestGround: -240, occupied: true, surveyed: { on: "2027-01-10", by: "foreman" } },
      )
    : room,
)
const placed = { ...job.house, rooms }

describe("the escape route on the storeys' plans", () => {
  const ground = storeyPlans(placed).find((plan) => plan.storey.id === "s0")!
  const { shapes } = escapePlan(ground, wayOut)
  const texts = shapes.filter((shape): shape is TextShape => shape.kind === "text").map(({ text }) => text)

  it("shades the stair's rooms and no other", () => {
    const fills = shapes.filter(
      (shape): shape is PolygonShape => shape.kind === "polygon" && shape.fill === "light",
    )
    expect(ground.rooms.map(({ room }) => room.id)).toEqual(["C1", "C2"])
    expect(fills).toHaveLength(1)
  })

  it("marks each doorway with what is asked there, the final exit once", () => {
    expect(texts).toContain("D9 FD20")
    expect(texts.filter((text) => text === "D14 EXIT")).toHaveLength(1)
  })

  it("lists rooms that no opening ties to the others, with their doors", () => {
    const blocks = escapePlans(placed, wayOut)
    expect(blocks.filter((block) => block.kind === "drawing")).toHaveLength(3)
    const listed = blocks.flatMap((block) => (block.kind === "list" ? block.items : []))
    expect(listed.some((item) => item.startsWith("B3"))).toBe(true)
  })

  it("writes a question mark where building control must answer, a dash where nothing is asked", () => {
    expect(askedOf("D7", wayOut)).toBe("FD20?")
    expect(askedOf("D3", wayOut)).toBe("–")
    expect(askedOf("D13", wayOut)).toBe("FD30S")
  })
})
