import { describe, expect, it } from "vitest"
import { Fault, invariant } from "../../src/kernels/fault.ts"

describe("invariant", () => {
  it("says nothing while it holds", () => {
    expect(() => invariant(1, "one is something")).not.toThrow()
  })

  it.each([false, null, undefined, 0, ""])("throws a fault that names it for %j", (value) => {
    expect(() => invariant(value, "the plan has pages")).toThrow(new Fault("the plan has pages"))
  })

  it("throws faults that can be told from other errors", () => {
    const fault = new Fault("x")
    expect(fault).toBeInstanceOf(Error)
    expect(fault.name).toBe("Fault")
  })
})
