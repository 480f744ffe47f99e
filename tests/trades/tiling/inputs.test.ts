import { describe, expect, it } from "vitest"
import { metaOf, walkSchema } from "../../../src/intake/schema-walk.ts"
import { tilingInputs } from "../../../src/trades/tiling/inputs.ts"

describe("what may be written for tiling", () => {
  it("a tiled wall begins at its left end on the floor, whole rows at the top", () => {
    expect(tilingInputs.parse({ walls: [{ wall: 2, top: 2000 }] }).walls[0]).toMatchObject({
      from: 0,
      foot: 0,
      rows: "full-at-top",
    })
  })

  it("a board of 6.5 mm is no slip of metres", () => {
    expect(tilingInputs.parse({ board: 6.5 }).board).toBe(6.5)
    expect(metaOf(tilingInputs.shape.board).slip).toBeUndefined()
  })

  it.each([[{ walls: [{ wall: 2 }] }], [{ joint: 0 }], [{ walls: [{ wall: 2, top: 2000, rows: "half" }] }]])(
    "not %j",
    (written) => {
      expect(tilingInputs.safeParse(written).success).toBe(false)
    },
  )

  it("walls and products are references to the job, each product of its kind", () => {
    const asked: string[] = []
    const written = { walls: [{ wall: 2, top: 2000 }], products: { wallTile: "t", grout: "g" } }
    walkSchema(tilingInputs, written, ({ path, meta }) => {
      if (meta.refersTo) asked.push(`${path.join(".")}: ${String(meta.kinds ?? meta.refersTo)}`)
    })
    expect(asked.sort()).toEqual([
      "products.grout: each",
      "products.wallTile: tile",
      "walls.0.wall: wall-of-this-room",
    ])
  })
})
