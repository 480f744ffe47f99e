import { describe, expect, it } from "vitest"
import { cutLists } from "../../src/orders/cut-lists.ts"
import type { Piece } from "../../src/trades/trade.ts"
import { lengthProduct } from "../fixtures/products.ts"
import { houseOf, jobFacts, surveyed } from "../fixtures/rooms.ts"

const piece = (mark: string, length: number, given: Partial<Piece> = {}): Piece => ({
  mark,
  trade: "joinery",
  room: "R1",
  wall: 2,
  product: lengthProduct.id,
  what: "leg",
  length,
  left: { as: "square", setting: 0 },
  right: { as: "square", setting: 0 },
  mayBeJointed: false,
  ...given,
})

const job = jobFacts({ products: [lengthProduct], carry: { longest: 3300, heaviest: 25 } })

describe("cut lists", () => {
  it("cut every piece once, from lengths that hold it with saw cuts and squared ends", async () => {
    const pieces = [piece("a", 2000), piece("b", 1980), piece("c", 800), piece("d", 800), piece("e", 800)]
    const { lists, findings } = await cutLists(pieces, job, new Map())
    expect(findings).toEqual([])
    expect(lists).toHaveLength(1)
    const bars = lists[0]?.plan.bars ?? []
    expect(bars.flatMap((bar) => bar.pieces).sort()).toEqual(["a", "b", "c", "d", "e"])
    for (const bar of bars) {
      const used = bar.pieces.reduce(
        (sum, mark) => sum + pieces.find((each) => each.mark === mark)!.length,
        0,
      )
      expect(used + 3 * (bar.pieces.length - 1) + 2 * 5).toBeLessThanOrEqual(bar.length)
    }
    expect(bars.filter((bar) => !bar.inHand).reduce((sum, bar) => sum + bar.length, 0)).toBeLessThanOrEqual(
      8400,
    )
  })

  it("use what is in hand before buying", async () => {
    const { lists } = await cutLists([piece("a", 1200)], job, new Map([[lengthProduct.id, [1300]]]))
    expect(lists[0]?.plan.bars.map(({ inHand, length }) => [inHand, length])).toEqual([[true, 1300]])
    expect(lists[0]?.plan.cost).toBe(0)
  })

  it("name the piece and its wall where no length holds it: 4,190 goes out of 4,200 with 5 off each end, 4,191 does not", async () => {
    expect((await cutLists([piece("a", 4190)], job, new Map())).findings).toEqual([])
    const { findings } = await cutLists([piece("long", 4191)], job, new Map())
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["piece-longer-than-stock", "error"],
    ])
    expect(findings[0]?.message).toContain("long")
    expect(findings[0]?.message).toContain("room R1, wall 2")
  })

  it("name the pieces and their walls that are left where the stock runs out, and saw the others", async () => {
    const few = { ...lengthProduct, lengths: [{ length: 4200, price: "26.10", available: 2 }] }
    const pieces = [piece("a", 3000), piece("b", 3000, { wall: 3 }), piece("c", 3000, { wall: 4 })]
    const { lists, findings } = await cutLists(pieces, jobFacts({ products: [few] }), new Map())
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([["stock-run-out", "error"]])
    const left = pieces.find(({ mark }) => !lists[0]?.plan.bars.some((bar) => bar.pieces.includes(mark)))
    expect(findings[0]?.message).toContain(
      `Piece ${left?.mark} (leg, room R1, wall ${left?.wall}) needs 3,000 mm`,
    )
    expect(lists[0]?.plan.lengths).toBe(2)
    expect(lists[0]?.spares).toBeNull()
  })

  it("name a piece that cannot be carried up to its storey; one for the lowest storey may be longer", async () => {
    const house = houseOf({
      storeys: [
        { id: "ground", name: "Ground floor", deck: 0, finishNow: 0, base: "timber" },
        { id: "first", name: "First floor", deck: 2600, finishNow: 0, base: "timber" },
      ],
    })
    const rooms = [surveyed({ id: "R1", storey: "first" }, house), surveyed({ id: "R2" }, house)]
    const facts = jobFacts({
      products: [lengthProduct],
      house,
      rooms,
      carry: { longest: 3300, heaviest: 25 },
    })
    const pieces = [piece("up", 3400), piece("down", 3400, { room: "R2" })]
    const { findings } = await cutLists(pieces, facts, new Map())
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["piece-too-long-for-stair", "warning"],
    ])
    expect(findings[0]?.message).toContain("up (leg, room R1, wall 2)")
  })

  it("say which lengths are too long for the stair", async () => {
    const below = async (length: number) =>
      (await cutLists([piece("a", length)], job, new Map())).lists.map((list) => list.cutBelow)
    expect(await below(2000)).toEqual([null])
    expect(await below(4000)).toEqual([3300])
  })

  it("come in order of product and leave out what is not sold in lengths", async () => {
    const other = { ...lengthProduct, id: "architrave" }
    const facts = jobFacts({ products: [lengthProduct, other] })
    const pieces = [
      piece("a", 900),
      piece("b", 900, { product: "architrave" }),
      piece("c", 900, { product: "none" }),
    ]
    const { lists } = await cutLists(pieces, facts, new Map())
    expect(lists.map((list) => list.product.id)).toEqual(["architrave", "lining"])
  })
})
