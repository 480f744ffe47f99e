import { describe, expect, it } from "vitest"
import { firstUse } from "../../src/orders/first-use.ts"
import { boardProduct, eachProduct, leafProduct, liquidProduct } from "../fixtures/products.ts"
import { datedOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const doors = (key: string, stage: "prepare" | "linings" | "hang") => stepOf({ key, trade: "doors", stage })
const { steps } = datedOf(
  [
    doors("look", "prepare"),
    doors("lining", "linings"),
    doors("hang", "hang"),
    stepOf({ key: "lie", trade: "floors", stage: "acclimatise" }),
    stepOf({ key: "lay", trade: "floors", stage: "floor" }),
    stepOf({ key: "cover", stage: "prepare" }),
    stepOf({ key: "white", stage: "white" }),
  ],
  [surveyed()],
)
const keyOf = (...given: Parameters<typeof firstUse>) => firstUse(...given)?.step.key

describe("what a product is first used for", () => {
  it("is hanging for a leaf, though its trade looked at the doors long before", () => {
    expect(keyOf(leafProduct, { trade: "doors", room: "R1" }, steps)).toBe("hang")
  })

  it("is lying in the room for boards, and a coat for paint, not covering up", () => {
    expect(keyOf(boardProduct, { trade: "floors", room: "R1" }, steps)).toBe("lie")
    expect(keyOf(liquidProduct, { trade: "decorating", room: null }, steps)).toBe("white")
  })

  it("is the trade's first step that takes goods, for what is sold by the piece", () => {
    expect(keyOf(eachProduct, { trade: "doors", room: "R1" }, steps)).toBe("lining")
  })

  it("is any step of the trade where none takes goods, and nothing where the trade does nothing there", () => {
    expect(keyOf(eachProduct, { trade: "doors", room: "R1" }, steps.slice(0, 1))).toBe("look")
    expect(firstUse(eachProduct, { trade: "doors", room: "R9" }, steps)).toBeUndefined()
  })
})
