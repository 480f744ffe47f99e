import { describe, expect, it } from "vitest"
import { isOpenWay, outside, shortestWay, waysOf } from "../../../../src/trades/doors/escape/ways.ts"
import { jobOf } from "../houses.ts"

const { house } = jobOf({
  decks: [0, 2600],
  rooms: ["H hall 0", "K kitchen 0", "L living 0", "M landing 1"],
  stairs: ["S H M"],
  doors: ["X outside H final", "A H K", "B K L open", "Y outside L"],
})
const ways = waysOf(house)

describe("ways of a house", () => {
  it("go both ways through each doorway, opening and stair", () => {
    expect(ways).toHaveLength(2 * 5)
    expect(ways.filter((way) => way.id === "S").map((way) => way.by)).toEqual(["stair", "stair"])
    expect(ways.find((way) => way.id === "B")?.by).toBe("open")
    expect(house.doors.filter(isOpenWay).map((door) => door.id)).toEqual(["B"])
  })

  it("are walked by the fewest steps, and only through rooms that may be passed", () => {
    const isOut = (way: { to: string }) => way.to === outside
    expect(shortestWay(ways, "M", isOut, () => true)?.map((way) => way.id)).toEqual(["S", "X"])
    expect(shortestWay(ways, "K", isOut, (id) => id !== "H")?.map((way) => way.id)).toEqual(["B", "Y"])
    expect(shortestWay(ways, "K", isOut, () => false)).toBeNull()
  })
})
