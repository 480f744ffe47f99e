import { describe, expect, it } from "vitest"
import { cutLists } from "../../src/orders/cut-lists.ts"
import type { Piece } from "../../src/trades/trade.ts"
import { lengthProduct } from "../fixtures/products.ts"
import { jobFacts } from "../fixtures/rooms.ts"

const job = jobFacts({ products: [lengthProduct], carry: { longest: 5000, heaviest: 25 } })
const pieces = (count: number, length: number): Piece[] =>
  Array.from({ length: count }, (_, index) => ({
    mark: `p${index}`,
    trade: "joinery",
    room: "R1",
    product: lengthProduct.id,
    what: "leg",
    length,
    left: { as: "square", setting: 0 },
    right: { as: "square", setting: 0 },
    mayBeJointed: false,
  }))

async function sparesFor(count: number, length: number, inHand: number[] = []) {
  const { lists } = await cutLists(pieces(count, length), job, new Map([[lengthProduct.id, inHand]]))
  return lists[0]?.spares
}

describe("spare lengths", () => {
  // 2,100 at 13.20 holds 2,080 with 5 off each end; 4,200 at 26.10 holds 4,190
  it("are of the cheapest length that holds the longest piece", async () => {
    expect(await sparesFor(1, 2080)).toMatchObject({ length: 2100, count: 1, longest: 2080 })
    expect(await sparesFor(1, 3000)).toMatchObject({ length: 4200, count: 1 })
  })

  // softwood: one length in eight is bought to spare, at least one
  it("are one in so many by the material, at least one", async () => {
    expect((await sparesFor(8, 4000))?.count).toBe(1)
    expect((await sparesFor(9, 4000))?.count).toBe(2)
  })

  it("survive at least one mis-cut of the longest piece, more if offcuts hold it too", async () => {
    expect((await sparesFor(1, 2080))?.survives).toBe(1)
    // one 2,100 in hand too long by far leaves nothing; a 4,200 in hand sawn for one 2,000 leaves 2,197: one more
    expect((await sparesFor(1, 2000, [4200]))?.survives).toBe(2)
    // 690 goes three times into the 2,090 that is left of 2,100: 3 x 690 + 2 x 3 = 2,076; the fourth is in the plan
    const short = await sparesFor(1, 690)
    expect(short?.survives).toBeGreaterThanOrEqual(3)
  })

  it("are of what is left where few can be had", async () => {
    const few = {
      ...lengthProduct,
      lengths: [
        { length: 2100, price: "13.20", available: 1 },
        { length: 4200, price: "26.10", available: 11 },
      ],
    }
    const { lists, findings } = await cutLists(
      pieces(10, 4000),
      jobFacts({ products: [few], carry: { longest: 5000, heaviest: 25 } }),
      new Map(),
    )
    expect(findings).toEqual([])
    expect(lists[0]?.spares).toMatchObject({ length: 4200, count: 1 })
  })

  it("are none where nothing can be sawn", async () => {
    expect(await sparesFor(1, 5000)).toBeNull()
  })

  it("truly survive so many: the longest piece cut again as often fits the spare lengths and offcuts, one more does not", async () => {
    for (let index = 0; index < 40; index++) {
      const length = 400 + ((index * 173) % 3700)
      const { lists } = await cutLists(pieces(1 + (index % 5), length), job, new Map())
      const { plan, spares } = lists[0]!
      const inHand = [
        ...plan.bars.map((bar) => bar.offcut).filter((offcut) => offcut > 0),
        ...Array.from({ length: spares!.count }, () => spares!.length - 10),
      ]
      const again = await cutLists(
        pieces(spares!.survives, length),
        job,
        new Map([[lengthProduct.id, inHand]]),
      )
      expect(again.lists[0]?.plan.lengths ?? 0).toBe(0)
      const more = await cutLists(
        pieces(spares!.survives + 1, length),
        job,
        new Map([[lengthProduct.id, inHand]]),
      )
      expect(more.lists[0]?.plan.lengths).toBeGreaterThan(0)
    }
  })
})
