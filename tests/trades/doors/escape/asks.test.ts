import { describe, expect, it } from "vitest"
import { escapeOf } from "../../../../src/trades/doors/escape/escape.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf } from "../houses.ts"
import { house } from "../run.ts"

const asks = escapeOf(jobOf(house), rulesRead(doorRules)).asks

describe("what is asked of one doorway", () => {
  // Approved Document B vol 1, Table C1, as quoted in a fire engineers' forum: garage E 30 Sa self-closing, stair E 20.
  it.each([
    ["D13", { minimum: "FD30S", minutes: 30, smoke: true, selfClosing: true }],
    ["D9", { minimum: "FD20", minutes: 20, smoke: false, selfClosing: false }],
    ["D7", { minimum: "FD20-ask", minutes: 20, selfClosing: false }],
    ["D3", { minimum: "none", minutes: 0, onStair: false }],
    ["D14", { minimum: "none", minutes: 0 }],
  ])("%s", (id, expected) => {
    expect(asks.get(id)).toMatchObject(expected)
  })

  it("rests on the rules of that doorway alone", () => {
    expect(asks.get("D13")!.rests.sort()).toEqual(["door-garage-minutes", "door-garage-step"])
    expect(asks.get("D3")!.rests).toEqual([])
    expect(asks.get("D9")!.rests).toContain("door-stair-minutes")
  })

  it("says how its clause was read", () => {
    for (const ask of asks.values()) expect(ask.clause).toMatch(/as quoted|from memory/)
  })
})
