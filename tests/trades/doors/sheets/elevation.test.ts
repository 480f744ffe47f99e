import { describe, expect, it } from "vitest"
import { layoutDrawing } from "../../../../src/kernels/drawing/layout.ts"
import type { DimensionShape } from "../../../../src/kernels/drawing/shapes.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { leafDrawing } from "../../../../src/trades/doors/sheets/elevation.ts"
import { doorsOfHouse } from "../../../../src/trades/doors/work.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house, setDoor } from "../run.ts"

function drawing(hinges: "left" | "right") {
  const job = jobOf({ ...house, work: { D5: { hang: "new", leaf: "fd30" } } })
  setDoor("D5", { hinges })(job)
  const hung = doorsOfHouse(job, rulesRead(doorRules)).doors.find((each) => each.door.id === "D5")!
  return { hung, drawn: leafDrawing(hung, hung.fitted!) }
}

describe("elevation of a leaf", () => {
  it.each(["left", "right"] as const)(
    "gives figures from the top that are true lengths, hinges on the %s",
    (side) => {
      const { hung, drawn } = drawing(side)
      const dims = drawn.shapes.filter((shape): shape is DimensionShape => shape.kind === "dimension")
      for (const dim of dims) {
        const length = Math.hypot(dim.to.x - dim.from.x, dim.to.y - dim.from.y)
        expect(Number(dim.text)).toBeCloseTo(length, 6)
      }
      const texts = dims.map((dim) => dim.text)
      for (const top of hung.fitted!.hinges!.tops) expect(texts).toContain(String(top))
      expect(drawn.description).toContain(`hinges on the ${side}`)
    },
  )

  it("keeps within a page's width at 1:50: 170 mm, and a quarter of its height", () => {
    for (const side of ["left", "right"] as const) {
      const { box } = layoutDrawing(drawing(side).drawn, 50)
      expect(box.right - box.left).toBeLessThanOrEqual(170)
      expect(box.top - box.bottom).toBeLessThanOrEqual(75)
    }
  })

  it("mirrors the hand", () => {
    const xs = (side: "left" | "right") =>
      drawing(side).drawn.shapes.flatMap((shape) =>
        shape.kind === "box" && shape.fill === "black" ? [shape.at.x] : [],
      )
    expect(Math.max(...xs("left"))).toBeLessThan(Math.min(...xs("right")))
  })
})
