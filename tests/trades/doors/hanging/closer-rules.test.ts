import { describe, expect, it } from "vitest"
import { closerRules } from "../../../../src/trades/doors/hanging/closer-rules.ts"

describe("power sizes of closers", () => {
  // BS EN 1154, as reproduced by a hardware guide: each size takes a wider and heavier leaf than the one before.
  it("grow in width and mass from 1 to 7", () => {
    for (const what of ["width", "mass"]) {
      const values = [1, 2, 3, 4, 5, 6, 7].map(
        (size) => closerRules.find((rule) => rule.id === `door-closer-${size}-${what}`)!.value,
      )
      expect(values).toEqual([...values].sort((a, b) => a - b))
      expect(new Set(values).size).toBe(7)
    }
  })

  it("are published, but for the least of a fire door, which is from memory", () => {
    const recalled = closerRules.filter((rule) => rule.status === "from memory").map((rule) => rule.id)
    expect(recalled).toEqual(["door-closer-fire-size"])
  })
})
