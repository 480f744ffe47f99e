import { describe, expect, it } from "vitest"
import { storeyDrawing } from "../../../src/survey/drawings/storey-drawing.ts"
import { storeyPlans } from "../../../src/survey/storey-plan.ts"
import { demoHouses } from "../demo.ts"
import { badFigures, overlappingLabels } from "./labels.ts"

const plans = demoHouses().flatMap(storeyPlans)

describe("storeyDrawing", () => {
  it("shows every room and each doorway once", () => {
    const ground = plans.find(({ storey, rooms }) => storey.id === "ground" && rooms.length > 1)!
    const texts = storeyDrawing(ground).shapes.flatMap((shape) => ("text" in shape ? [shape.text] : []))
    for (const { room } of ground.rooms) expect(texts.some((text) => text.startsWith(room.id))).toBe(true)
    for (const id of ["D9", "D10", "D11", "D12", "D13", "D14"])
      expect(texts.filter((text) => text === id)).toHaveLength(1)
  })

  it("gives the overall size: living room, wall and kitchen in line are 4,450 + 124 + 2,910 = 7,484", () => {
    const ground = plans.find(({ storey, rooms }) => storey.id === "ground" && rooms.length > 1)!
    const sizes = storeyDrawing(ground).shapes.flatMap((shape) =>
      shape.kind === "dimension" ? [Number(shape.text.replace(",", ""))] : [],
    )
    expect(sizes.some((size) => Math.abs(size - 7484) <= 5)).toBe(true)
  })

  it("has no label over another", () => {
    for (const plan of plans) {
      expect(badFigures(storeyDrawing(plan))).toBe(false)
      for (const scale of [50, 100]) expect(overlappingLabels(storeyDrawing(plan), scale)).toEqual([])
    }
  })
})
