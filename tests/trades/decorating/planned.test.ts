import { expect, it } from "vitest"
import { stepIn } from "../../../src/trades/decorating/planned.ts"
import { attic } from "./attic.ts"

it("a step is keyed by trade, room and name, quiet and clean unless said", () => {
  const step = stepIn(attic(), "mist", { title: "Mist coat", detail: "", stage: "mist", hours: 1 })
  expect(step).toMatchObject({ key: "decorating/R1/mist", room: "R1", noisy: false, dusty: false, after: [] })
  const of = { title: "Fill", detail: "", stage: "fill", hours: 1, dusty: true } as const
  expect(stepIn(attic(), "fill", of).dusty).toBe(true)
})
