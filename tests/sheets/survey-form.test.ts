import { describe, expect, it } from "vitest"
import { houseFile } from "../../src/intake/schema/house.ts"
import {
  diagonal,
  doorHere,
  hidden,
  hole,
  obstacle,
  reading,
  roomFile,
  run,
  slope,
  windowHere,
} from "../../src/intake/schema/room.ts"
import type { Block } from "../../src/kernels/paper.ts"
import { surveyForm } from "../../src/sheets/survey-form.ts"
import { rulesOf } from "../fixtures/rooms.ts"
import { badTables } from "../fixtures/tables.ts"

const form = surveyForm(rulesOf())
const columnsOf = (caption: string): string[] => {
  const found = form.blocks.find((block) => block.kind === "table" && block.caption === caption)
  if (found?.kind !== "table") throw new Error(`no boxes for ${caption}`)
  return found.columns.slice(1).map(({ label }) => label)
}
const boxesOf = (start: string): string[] => {
  const found = form.blocks.find((block: Block) => block.kind === "boxes" && block.caption.startsWith(start))
  return found?.kind === "boxes" ? found.labels : []
}
/** The key that a box's label begins with. */
const keyOf = (label: string) => label.split(/[ :]/)[0]!

describe("surveyForm", () => {
  it("has a box for every key of the room's lists, and no key that the file does not have", () => {
    const lists = {
      outline: run,
      holes: hole,
      "ceiling: slopes": slope,
      "ceiling: obstacles": obstacle,
      windows: windowHere,
      hidden,
      readings: reading,
    }
    for (const [caption, schema] of Object.entries(lists)) {
      const keys = Object.keys(schema.shape).filter((key) => !(caption === "windows" && key === "name"))
      expect(columnsOf(caption).map(keyOf).sort(), caption).toEqual(keys.sort())
    }
    expect(Object.keys(diagonal.shape)).toEqual(columnsOf("diagonals").slice(0, 3).map(keyOf))
    expect(Object.keys(doorHere.shape)).toEqual(columnsOf("doors, where they stand here"))
    expect(boxesOf("joists").map(keyOf)).toEqual(["wall", "centres", "firstFrom"])
  })

  it("leaves no part of the room's file without boxes but work, notes and what is typed at the desk", () => {
    const words = JSON.stringify(form.blocks)
    for (const key of Object.keys(roomFile.shape).filter(
      (each) => !["work", "notes", "wallBuild"].includes(each),
    ))
      expect(words, key).toContain(key)
    expect(Object.keys(houseFile.shape)).toContain("doors")
  })

  it("prints into no box, and numbers its rows", () => {
    expect(badTables(form)).toEqual([])
    for (const block of form.blocks)
      if (block.kind === "table" && block.columns[0]!.label === "No.")
        expect(block.rows.map(({ cells }) => cells[0])).toEqual(
          block.rows.map((_, index) => String(index + 1)),
        )
  })

  it("says which diagonals fix the usual shapes: one of four sides", () => {
    const found = form.blocks.find(
      (block) => block.kind === "table" && block.caption.startsWith("Check lengths"),
    )
    const rows = found?.kind === "table" ? found.rows : []
    expect(rows[0]!.cells).toEqual(["Four sides", "4", "1–3"])
    expect(rows.length).toBeGreaterThanOrEqual(4)
  })
})
