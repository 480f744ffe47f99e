import { describe, expect, it } from "vitest"
import { tradeHandoverSheets, visitHandovers } from "../../src/sheets/handover-of-trades.ts"
import { badTables } from "../fixtures/tables.ts"
import { house } from "./site.ts"

describe("handover between trades", () => {
  const crews = house.programme.crews.map(({ id }) => id)

  it("what is taken over ended before, what is handed on is waited for after; always another crew's, in the same room", () => {
    const all = crews.flatMap((crew) => visitHandovers(house, crew))
    expect(all.length).toBe(house.programme.visits.length)
    for (const { visit, ready, left } of all) {
      for (const { step, before } of ready) {
        expect(before.finish).toBeLessThanOrEqual(step.start)
        expect([before.step.room, before.crew === visit.crew]).toEqual([step.step.room, false])
      }
      for (const { step, next } of left) {
        expect(next.start).toBeGreaterThanOrEqual(step.finish)
        expect([next.step.room, next.crew === visit.crew]).toEqual([step.step.room, false])
      }
    }
  })

  it("the radiators' room is taken over white, and handed on warm to those who lay the floor", () => {
    const plumber = visitHandovers(house, "plumber")
    const radiators = plumber
      .flatMap(({ ready }) => ready)
      .filter(({ step }) => step.step.key.endsWith("/radiators"))
    expect(radiators.some(({ before }) => before.step.stage === "white")).toBe(true)
    const toJoiners = plumber.flatMap(({ left }) => left).filter(({ next }) => next.crew === "joiners")
    expect(toJoiners.some(({ step }) => step.step.key.endsWith("/heating-on"))).toBe(true)
  })

  it("one sheet a crew, signed by both sides; none where one crew does all", () => {
    const sheets = tradeHandoverSheets(house)
    expect(sheets.map(({ part }) => part)).toEqual(crews)
    for (const sheet of sheets) expect(badTables(sheet)).toEqual([])
    expect(
      sheets.every(({ blocks }) => blocks.some((block) => block.kind === "sign" && block.roles.length === 4)),
    ).toBe(true)
    const visits = house.programme.visits.filter(({ crew }) => crew === "joiners")
    expect(tradeHandoverSheets({ ...house, programme: { ...house.programme, visits } })).toEqual([])
  })
})
