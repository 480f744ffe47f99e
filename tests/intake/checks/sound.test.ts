import { describe, expect, it } from "vitest"
import { z } from "zod"
import { soundEntries, soundPart } from "../../../src/intake/checks/sound.ts"
import { findingIn, yamlFromText } from "../../../src/intake/yaml-file.ts"

const yaml = yamlFromText("f.yaml", "list:\n  - { a: 1 }\n  - { a: x }\n  - { a: 3 }\n")
const entry = z.strictObject({ a: z.number() })
const slip = findingIn(yaml, { code: "x", severity: "error", message: "x" }, ["list", 2, "a"])

describe("sound parts", () => {
  it("leaves out what does not fit and what has an error already", () => {
    expect(soundEntries(yaml, ["list"], entry, []).map(({ path }) => path)).toEqual([
      ["list", 0],
      ["list", 2],
    ])
    expect(soundEntries(yaml, ["list"], entry, [slip]).map(({ entry }) => entry)).toEqual([{ a: 1 }])
    expect(soundPart(yaml, ["list", 2], entry, [{ ...slip, severity: "warning" }])).toEqual({ a: 3 })
    expect(soundPart(yaml, ["list"], z.unknown(), [slip])).toBeUndefined()
  })
})
