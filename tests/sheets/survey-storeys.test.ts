import { describe, expect, it } from "vitest"
import type { JobResult } from "../../src/sheets/job-result.ts"
import { storeyPlansSheet } from "../../src/sheets/survey-storeys.ts"
import { rulesOf } from "../fixtures/rooms.ts"
import { badTables } from "../fixtures/tables.ts"
import { demoHouses } from "../survey/demo.ts"

const sheetOf = (house: unknown, foldOuts = false) =>
  storeyPlansSheet({ house, rules: rulesOf(), job: { foldOuts } } as unknown as JobResult)

describe("storeyPlansSheet", () => {
  const [house] = demoHouses()

  it("has one drawing a storey, each room in its table, and nothing in doubt in the demo", () => {
    const { blocks } = sheetOf(house)!
    expect(blocks.filter(({ kind }) => kind === "drawing")).toHaveLength(3)
    const rows = blocks.flatMap((block) => (block.kind === "table" ? block.rows : []))
    expect(rows.map(({ cells }) => cells[0]).sort()).toEqual(house!.rooms.map(({ id }) => id).sort())
    expect(blocks.some(({ kind }) => kind === "warning" || kind === "list")).toBe(false)
    expect(badTables(sheetOf(house)!)).toEqual([])
  })

  it("has a fold-out of its drawings alone where the job asks for one", () => {
    expect(sheetOf(house)!.foldOut).toBeUndefined()
    const kinds = sheetOf(house, true)!.foldOut!.map(({ kind }) => kind)
    expect(kinds.filter((kind) => kind === "drawing")).toHaveLength(3)
    expect(kinds).not.toContain("table")
  })

  it("lists a room that no opening ties to the others", () => {
    const rooms = house!.rooms.map((room) => (room.id === "A5" ? { ...room, doors: [] } : room))
    const listed = sheetOf({ ...house!, rooms })!.blocks.find(({ kind }) => kind === "list")
    expect(listed?.kind === "list" ? listed.items : []).toEqual(["A5 Eaves store"])
  })

  it("is left out where there is no room", () => {
    expect(sheetOf({ ...house!, rooms: [] })).toBeNull()
  })
})
