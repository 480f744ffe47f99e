import { describe, expect, it } from "vitest"
import { standingRequest } from "../../src/commands/standing-request.ts"

describe("a build that no command started", () => {
  it("goes into output/ and works nothing out before it is asked", async () => {
    const { staging, site } = await standingRequest()
    expect(staging).toBe("output")
    expect(site).toBeTypeOf("function")
  })
})
