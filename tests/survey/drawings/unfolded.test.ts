import { describe, expect, it } from "vitest"
import { layoutDrawing } from "../../../src/kernels/drawing/layout.ts"
import { standardScales } from "../../../src/kernels/drawing/scale.ts"
import { boundsOf } from "../../../src/kernels/polygon/measure.ts"
import { unfoldedWalls } from "../../../src/survey/drawings/unfolded.ts"
import { rulesOf } from "../../fixtures/rooms.ts"
import { demoHouses, demoRoom } from "../demo.ts"
import { generatedRoom } from "../generated-rooms.ts"
import { badFigures, overlappingLabels } from "./labels.ts"

const options = { floor: 19, datum: "deck", rules: rulesOf() }

describe("unfoldedWalls", () => {
  it("shows every wall once, in order, all at one standard scale", () => {
    const rows = unfoldedWalls(demoRoom("A1"), options)
    expect(rows.flatMap(({ walls }) => walls)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    expect(new Set(rows.map(({ scale }) => scale)).size).toBe(1)
    expect(standardScales).toContain(rows[0]!.scale)
  })

  it("keeps each wall's true size beside the others", () => {
    const room = demoRoom("A1")
    for (const { drawing, walls } of unfoldedWalls(room, options)) {
      const outlines = drawing.shapes.filter(
        (shape) => shape.kind === "polygon" && shape.stroke?.width === 0.5,
      )
      expect(outlines).toHaveLength(walls.length)
      outlines.forEach((shape, index) => {
        const box = boundsOf(shape.kind === "polygon" ? shape.points : [])
        expect(box.right - box.left).toBeCloseTo(room.walls[walls[index]! - 1]!.length, 6)
      })
    }
  })

  it("takes no more of the paper than the text area of a sheet, 180 mm", () => {
    for (const room of [
      ...demoHouses().flatMap(({ rooms }) => rooms),
      ...[1, 2, 3, 4, 5, 6, 7, 8].map(generatedRoom),
    ])
      for (const { drawing, scale } of unfoldedWalls(room, options)) {
        const { box } = layoutDrawing(drawing, scale)
        expect(box.right - box.left, drawing.title).toBeLessThanOrEqual(180)
      }
  })

  it("has no label over another in the demo jobs", () => {
    for (const room of demoHouses().flatMap(({ rooms }) => rooms))
      for (const { drawing, scale } of unfoldedWalls(room, options))
        expect(overlappingLabels(drawing, scale)).toEqual([])
  })

  it("has no label over another in 200 generated rooms", () => {
    for (let seed = 1; seed <= 200; seed++) {
      for (const { drawing, scale } of unfoldedWalls(generatedRoom(seed), options)) {
        expect(badFigures(drawing)).toBe(false)
        expect(overlappingLabels(drawing, scale), `seed ${seed}`).toEqual([])
      }
    }
  })
})
