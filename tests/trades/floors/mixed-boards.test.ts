import { describe, expect, it } from "vitest"
import { type Product, product } from "../../../src/intake/schema/products.ts"
import { packsFor } from "../../../src/orders/packs.ts"
import { floorSheets } from "../../../src/trades/floors/sheet.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { board, floorTask, underlay } from "./fixture.ts"

const mix = [
  { length: 2200, perPack: 4 },
  { length: 1820, perPack: 2 },
  { length: 1300, perPack: 2 },
]
const mixed: Extract<Product, { kind: "board" }> = { ...board, length: 2200, mix }

describe("a board whose packs hold several lengths", () => {
  it("is taken where counts and longest length agree with the board's own", () => {
    const { success, data } = product.safeParse(mixed)
    expect(success).toBe(true)
    expect(data).toEqual(mixed)
  })

  it.each([
    ["perPack", { ...mixed, perPack: 9 }, "the mix has 8 boards to a pack, not 9"],
    ["length", { ...mixed, length: 2000 }, "the longest board of the mix is 2200, not 2000"],
    ["mix", { ...mixed, mix: [mix[0], { length: 2200, perPack: 4 }] }, "a length stands in the mix twice"],
  ])("is refused at %s where they do not", (key, written, message) => {
    const { error } = product.safeParse(written)
    expect(error?.issues.map((issue) => [issue.path.join("."), issue.message])).toEqual([[key, message]])
  })

  /* 4 x 2.2 + 2 x 1.82 + 2 x 1.3 = 15.04 m a pack, 0.189 wide: 2.84256 m2. */
  it("is ordered in whole packs of that area", () => {
    expect(packsFor(mixed, 2.84).packs).toMatchObject([{ count: 1, size: "pack of 8, mixed lengths" }])
    expect(packsFor(mixed, 2.85).packs[0]!.count).toBe(2)
    expect(Number(packsFor(mixed, 2.84).packs[0]!.price)).toBeCloseTo(2.84256 * 34.9, 6)
  })
})

describe("a floor of mixed boards", () => {
  const task = floorTask({ products: [mixed, underlay] })
  const work = floorWork(task)
  const text = JSON.stringify(floorSheets(task, work))

  it("counts each length, and packs by the length used up first", () => {
    const lengths = work.results.lengths as { length: number; boards: number }[]
    expect(lengths.map((each) => each.length)).toEqual([2200, 1820, 1300])
    const packs = Math.max(...lengths.map(({ boards }, index) => Math.ceil(boards / mix[index]!.perPack)))
    expect(work.results.packs).toBe(packs)
    expect(work.results.packsAtLeast).toBeLessThanOrEqual(packs)
    expect(work.results.boards).toBe(lengths.reduce((sum, { boards }) => sum + boards, 0))
  })

  it("the sheet says to sort the packs, and of which length each fresh piece is cut", () => {
    expect(text).toContain("Each holds 4 of 2,200, 2 of 1,820, 2 of 1,300: sort them by length.")
    expect(text).toMatch(/"new (2,200|1,820|1,300)"/)
    expect(text).toContain("cut of a fresh board, of the length given")
  })
})
