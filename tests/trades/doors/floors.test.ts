import { describe, expect, it } from "vitest"
import { homeOf, overFloor, thresholdFloors } from "../../../src/trades/doors/floors.ts"
import { jobOf } from "./houses.ts"

const job = jobOf({
  lowestGround: -240,
  decks: [0, 5275],
  rooms: ["C hall 0", "A1 bedroom 1", "A3 bathroom 1"],
  doors: ["D3 A1 A3", "DG C garage"],
  passed: { A1: { floorBuildUp: 19, floorFinish: "oak" }, A3: { floorBuildUp: 13, floorFinish: "tile" } },
})
const [wash, toGarage] = job.house.doors
const home = job.house.rooms.find((room) => room.id === "A3")!

describe("the room a door belongs to", () => {
  it("is the one its leaf swings into, or the other where that is no room", () => {
    expect(homeOf(wash!, job.house)).toBe("A3")
    expect(homeOf(toGarage!, job.house)).toBe("C")
    expect(homeOf({ ...wash!, swingsInto: "A1" }, job.house)).toBe("A1")
    expect(homeOf({ ...wash!, swingsInto: undefined }, job.house)).toBe("A3")
  })
})

describe("the floor under a closed leaf", () => {
  const floors = thresholdFloors(wash!, home, job)
  // oak 19 on one side, tile 13 on the other, deck at 5,275: the leaf clears 5,294
  it("is the higher of the two sides", () => {
    expect(floors).toMatchObject({ own: 5288, other: 5294, highest: 5294, finish: "tile", rise: 13 })
  })

  it("takes a height from its datum: deck, finished floor, ground", () => {
    const at = { home, floors, lowestGround: -240 }
    expect(overFloor(2054, "deck", at)).toBe(2054 - 19)
    expect(overFloor(2054, "old-floor", at)).toBe(2054 - 19)
    expect(overFloor(2054, "finished-floor", at)).toBe(2054 - 6)
    expect(overFloor(7600, "ground", at)).toBe(7600 - 240 - 5294)
  })
})

describe("floors that are not known", () => {
  it("take the leaf's own floor where the other side is outside, a garage, or on another storey", () => {
    const hall = job.house.rooms.find((room) => room.id === "C")!
    expect(thresholdFloors(toGarage!, hall, job)).toMatchObject({
      own: 0,
      other: null,
      highest: 0,
      rise: 0,
      finish: "old",
    })
    const between = { ...wash!, between: ["C", "A3"] as [string, string] }
    expect(thresholdFloors(between, home, job)).toMatchObject({ other: null, highest: 5288 })
  })

  it("leave a doorway that joins no surveyed room without a home", () => {
    expect(
      homeOf({ ...toGarage!, between: ["garage", "outside"], swingsInto: undefined }, job.house),
    ).toBeNull()
  })
})
