import { describe, expect, it } from "vitest"
import { run } from "./run.ts"

describe("cautions at doors", () => {
  it("asks for two people at 40 kg and not at 18 kg", () => {
    const ids = (leaf: string) =>
      run({ D3: { hang: "new", leaf } })
        .works.get("A3")!
        .cautions.map((caution) => caution.id)
    expect(ids("fd30")).toContain("door-two-people")
    expect(ids("plain-762")).not.toContain("door-two-people")
  })

  it("stand once each, and defer to someone", () => {
    const { works } = run({ D1: { hang: "new" }, D3: { hang: "new", leaf: "plain-762" } })
    for (const work of works.values()) {
      const ids = work.cautions.map((caution) => caution.id)
      expect(new Set(ids).size).toBe(ids.length)
      expect(work.cautions.every((caution) => caution.defer.length > 0)).toBe(true)
    }
  })
})
