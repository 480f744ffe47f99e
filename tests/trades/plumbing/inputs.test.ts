import { describe, expect, it } from "vitest"
import { walkSchema } from "../../../src/intake/schema-walk.ts"
import { plumbingInputs } from "../../../src/trades/plumbing/inputs.ts"

describe("what may be written for plumbing", () => {
  it("a radiator has pipes of 15 mm, sanitaryware stands on tile unless said", () => {
    const { radiators, sanitaryware } = plumbingInputs.parse({
      radiators: [{ wall: 2, fromLeft: 700, width: 1000, height: 600 }],
      sanitaryware: [{ kind: "wc", wall: 1, fromLeft: 500, width: 360 }],
    })
    expect(radiators[0]!.pipe).toBe(15)
    expect(sanitaryware[0]!.onTile).toBe(true)
  })

  it.each([
    [{ radiators: [{ wall: 2, fromLeft: 700, width: 0, height: 600 }] }],
    [{ sanitaryware: [{ kind: "tap", wall: 1, fromLeft: 500, width: 360 }] }],
  ])("not %j", (written) => {
    expect(plumbingInputs.safeParse(written).success).toBe(false)
  })

  it("walls and products are references to the job", () => {
    const asked: string[] = []
    const ware = { kind: "wc", wall: 1, fromLeft: 500, width: 360, product: "wc-short" }
    walkSchema(plumbingInputs, { sanitaryware: [ware] }, ({ path, meta }) => {
      if (meta.refersTo) asked.push(`${path.join(".")}: ${String(meta.refersTo)}`)
    })
    expect(asked.sort()).toEqual([
      "sanitaryware.0.product: product",
      "sanitaryware.0.wall: wall-of-this-room",
    ])
  })
})
