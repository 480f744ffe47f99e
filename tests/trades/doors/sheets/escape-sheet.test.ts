import { describe, expect, it } from "vitest"
import { run } from "../run.ts"

describe("the escape route on paper", () => {
  it("names heights, the way out, doors onto the stair, what else encloses it and the questions", async () => {
    const { across } = run({})
    const sheet = (await across().then(({ sheets }) => sheets)).find((each) => each.kind === "escape-route")!
    const captions = sheet.blocks.flatMap((block) =>
      "caption" in block && block.caption ? [block.caption] : [],
    )
    for (const words of [
      "Storeys",
      "Doors onto the stair",
      "What else encloses",
      "Questions for building control",
    ]) {
      expect(captions.some((caption) => caption.startsWith(words))).toBe(true)
    }
    const text = JSON.stringify(sheet.blocks)
    expect(text).toMatch(/out by door D14/)
    expect(sheet.rests).toContain("door-enclosure-minutes")
    expect(sheet.rests.filter((id) => /hinge|gap|hours/.test(id))).toEqual([])
  })
})
