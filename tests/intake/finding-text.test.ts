import { describe, expect, it } from "vitest"
import { findingText } from "../../src/intake/finding-text.ts"

const place = { file: "loft/rooms/a1.yaml", line: 3, column: 9 }
const at = { file: "rooms/a1.yaml", path: [] }

describe("findingText", () => {
  it("begins with the place as editors read it", () => {
    const finding = { code: "x", severity: "error", message: "too long", at, place } as const
    expect(findingText(finding)).toBe("loft/rooms/a1.yaml:3:9: too long")
    expect(findingText({ ...finding, severity: "warning", expected: "less", mend: "cut it" })).toBe(
      "loft/rooms/a1.yaml:3:9: warning: too long (expected less; cut it)",
    )
  })
})
