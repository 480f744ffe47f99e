import { describe, expect, it } from "vitest"
import { reasonOf } from "../../src/programme/reason.ts"
import { stepOf } from "../fixtures/programme.ts"
import { placeable } from "./parts.ts"

const { plan } = placeable([
  stepOf({ key: "a", title: "White", gate: { process: "paint dries", hours: 5, forbids: ["coat"] } }),
  stepOf({ key: "b", title: "Boards", trade: "floors", stage: "floor" }),
])
const [first, second] = plan.units as [(typeof plan.units)[0], (typeof plan.units)[0]]

describe("the reason", () => {
  it.each([
    [{ kind: "wait" as const, unit: 0 }, "waits for: White (R1) and paint dries"],
    [{ kind: "crew" as const, unit: 0 }, "waits for the decorator, busy until then with: White (R1)"],
    [{ kind: "room" as const, unit: 0 }, "waits for the decorator to leave the room: White (R1)"],
    [{ kind: "wet-coat" as const, unit: 0 }, "makes dust, so waits until this is dry: White (R1)"],
    [
      { kind: "visit" as const, unit: 0 },
      "saved up for one visit, which waits for: White (R1) and paint dries",
    ],
  ])("%o", (cause, words) => {
    expect(reasonOf(second, cause, plan, null)).toBe(words)
  })

  it("names quiet hours too", () => {
    expect(reasonOf(first, { kind: "opening" }, plan, { kind: "loud" })).toContain("loud")
  })

  it("names the hour by which solvent is done where people sleep", () => {
    expect(reasonOf(first, { kind: "opening" }, plan, { kind: "fumes", aired: "14:00" })).toContain(
      "where people sleep, solvent and oil are done by 14:00",
    )
  })
})
