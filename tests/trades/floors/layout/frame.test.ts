import { describe, expect, it } from "vitest"
import {
  frameOf,
  fromFrame,
  regionFromFrame,
  regionToFrame,
  toFrame,
} from "../../../../src/trades/floors/layout/frame.ts"

describe("the frame of the rows", () => {
  it("x runs left to right along the wall as faced from inside, y into the room", () => {
    const top = frameOf({ x: 0, y: 0 }, { x: 4000, y: 0 })
    expect(toFrame(top, [{ x: 1000, y: -300 }])).toEqual([{ x: 1000, y: 300 }])
    const right = frameOf({ x: 4000, y: 0 }, { x: 4000, y: -3000 })
    const [seen] = toFrame(right, [{ x: 3500, y: -1000 }])
    expect([seen!.x, seen!.y]).toEqual([1000, 500])
  })

  it("there and back again", () => {
    const frame = frameOf({ x: 120, y: -70 }, { x: 3210, y: -1450 })
    const points = [
      { x: 17, y: -33 },
      { x: 2500, y: -1800 },
    ]
    fromFrame(frame, toFrame(frame, points)).forEach((point, index) => {
      expect(point.x).toBeCloseTo(points[index]!.x, 9)
      expect(point.y).toBeCloseTo(points[index]!.y, 9)
    })
    const region = { outline: points, holes: [points] }
    expect(regionFromFrame(frame, regionToFrame(frame, region)).holes[0]![1]!.x).toBeCloseTo(2500, 9)
  })
})
