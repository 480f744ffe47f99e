import { describe, expect, it } from "vitest"
import { deliveriesOf, placeOf } from "../../src/orders/deliveries.ts"
import { smallResult } from "../fixtures/small-job.ts"

const lines = async () => (await smallResult()).orders.lines

describe("deliveries", () => {
  it("are one drop a supplier and day, with the first day to order of its lines and what is weighed", async () => {
    const [board, skirting] = await lines()
    const together = {
      ...skirting!,
      comesOn: board!.comesOn,
      orderBy: "2027-01-01",
      product: { ...skirting!.product, supplier: board!.product.supplier },
      mass: null,
    }
    const { drops } = deliveriesOf({ lines: [board!, together], suppliers: [], stores: [] })
    expect(drops).toHaveLength(1)
    expect(drops[0]).toMatchObject({ orderBy: "2027-01-01", mass: board!.mass, unweighed: 1, collect: false })
  })

  it("come in order of their day, and are trips where one drives there", async () => {
    const [board, skirting] = await lines()
    const supplier = { supplier: skirting!.product.supplier, leadIn: "calendar" as const, collect: true }
    const { drops } = deliveriesOf({
      lines: [
        { ...board!, comesOn: "2027-03-09" },
        { ...skirting!, comesOn: "2027-03-02" },
      ],
      suppliers: [supplier],
      stores: [],
    })
    expect(drops.map(({ on, collect }) => [on, collect])).toEqual([
      ["2027-03-02", true],
      ["2027-03-09", false],
    ])
  })

  it("count what would be over, by hand: 7 packs of 2.812 m2 less 16.55 m2 needed leave 3.14 m2, one whole pack", async () => {
    const { surplus } = deliveriesOf({ lines: await lines(), suppliers: [], stores: [] })
    expect(surplus[0]!.over).toBeCloseTo(7 * 2.81232 - 16.55, 6)
    expect(surplus[0]!.wholePacks).toBe(1)
  })

  it("go straight into the rooms, or to the place for their kind", async () => {
    const [board] = await lines()
    const places = [{ place: "the shed", takes: ["board" as const] }]
    expect(placeOf({ ...board!, straightIn: false }, places)).toBe("the shed")
    expect(placeOf({ ...board!, straightIn: true }, places)).toBe(board!.rooms.join(", "))
    expect(placeOf({ ...board!, straightIn: false }, [])).toBeNull()
  })
})
