import { expect, it } from "vitest"
import { whoIsWhereSheet } from "../../src/sheets/who-is-where.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf } from "./sheets.ts"

it("has a line for each day on which somebody works, with room and time", async () => {
  const result = await smallResult()
  const sheet = whoIsWhereSheet(result)
  expect(cellsOf(sheet ?? undefined).map((cells) => cells.slice(0, 2))).toEqual([
    ["Mon 1 Mar", expect.stringContaining("C2\u00a008:00")],
    ["Tue 2 Mar", "C2"],
    ["Wed 3 Mar", expect.stringContaining("C2\u00a008:30")],
  ])
  expect(whoIsWhereSheet({ ...result, programme: { ...result.programme, steps: [] } })).toBeNull()
})
