import { describe, expect, it } from "vitest"
import { demoHouses } from "./demo.ts"

describe("surveyHouse", () => {
  it("has the demo house's rooms in the order of the job, each on its storey", () => {
    const house = demoHouses().find(({ rooms }) => rooms.some(({ id }) => id === "A1"))!
    expect(house.storeys.map(({ id, deck }) => [id, deck])).toEqual([
      ["ground", 0],
      ["first", 2610],
      ["attic", 5275],
    ])
    for (const room of house.rooms) expect(house.storeys).toContain(room.storey)
    expect(house.rooms.find(({ id }) => id === "A5")!.storey.id).toBe("attic")
  })
})
