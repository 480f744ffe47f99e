import { describe, expect, it } from "vitest"
import { metaOf, walkSchema } from "../../../src/intake/schema-walk.ts"
import { decoratingInputs } from "../../../src/trades/decorating/inputs.ts"

describe("what may be written for decorating", () => {
  it("nothing at all: new plaster, primed wood, slopes as ceiling", () => {
    expect(decoratingInputs.parse({})).toMatchObject({
      walls: "new-plaster",
      slopeIs: "ceiling",
      woodwork: { state: "primed", doors: "paint", except: [] },
      products: {},
    })
  })

  it("plaster of 2.5 mm is a thickness, not a slip of metres", () => {
    expect(decoratingInputs.parse({ plasterThickness: 2.5 }).plasterThickness).toBe(2.5)
    expect(metaOf(decoratingInputs.shape.plasterThickness).slip).toEqual({ below: 0.1 })
  })

  it.each([[{ walls: "wet" }], [{ mist: { paint: 0, water: 1 } }], [{ colour: "white" }]])(
    "not %j",
    (written) => {
      expect(decoratingInputs.safeParse(written).success).toBe(false)
    },
  )

  it("paints, doorways and walls are references to the job", () => {
    const written = {
      products: { white: "w" },
      accents: [{ wall: 3, colour: "blue", product: "b" }],
      woodwork: { except: ["D1"] },
      leave: [4],
    }
    const asked: [string, unknown][] = []
    walkSchema(decoratingInputs, written, ({ path, meta }) => {
      if (meta.refersTo) asked.push([path.join("."), meta.refersTo])
    })
    expect(asked).toEqual(
      expect.arrayContaining([
        ["products.white", "product"],
        ["accents.0.product", "product"],
        ["accents.0.wall", "wall-of-this-room"],
        ["woodwork.except.0", "door"],
        ["leave.0", "wall-of-this-room"],
      ]),
    )
    expect(asked).toHaveLength(5)
  })
})
