import { describe, expect, it } from "vitest"
import { walkSchema } from "../../../src/intake/schema-walk.ts"
import { electricsInputs } from "../../../src/trades/electrics/inputs.ts"

describe("what may be written for electrics", () => {
  it("a point is new, of one gang, on the wall unless said", () => {
    const { points, firstFix } = electricsInputs.parse({
      points: [{ kind: "socket", wall: 2, fromLeft: 900 }],
    })
    expect(points[0]).toMatchObject({ on: "wall", gang: 1, is: "new" })
    expect(firstFix).toBe("done")
  })

  it.each([
    [{ kind: "cooker", wall: 2, fromLeft: 900 }],
    [{ kind: "socket", wall: 0, fromLeft: 900 }],
    [{ kind: "socket", wall: 2, fromLeft: -1 }],
    [{ kind: "socket", wall: 2, fromLeft: 900, gang: 7 }],
  ])("not %j", (point) => {
    expect(electricsInputs.safeParse({ points: [point] }).success).toBe(false)
  })

  it("its wall must be one of the room", () => {
    const asked: string[] = []
    const written = { points: [{ kind: "socket", wall: 9, fromLeft: 0 }] }
    walkSchema(electricsInputs, written, ({ path, meta }) => {
      if (meta.refersTo === "wall-of-this-room") asked.push(path.join("."))
    })
    expect(asked).toEqual(["points.0.wall"])
  })
})
