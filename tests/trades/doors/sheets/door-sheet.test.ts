import { describe, expect, it } from "vitest"
import { run } from "../run.ts"

const sheetOf = (work: Parameters<typeof run>[0], room: string) =>
  run(work).sheets.find((sheet) => sheet.kind === "doors" && sheet.room === room)!

describe("the door sheet of a room", () => {
  it("bears the door's name where it hangs one leaf, and lists leaves that stay", () => {
    expect(sheetOf({ D5: { hang: "new" } }, "B1").title).toMatch(/^Door D5/)
    const stays = sheetOf({}, "B3")
    expect(stays.title).toBe("Doors")
    expect(JSON.stringify(stays.blocks)).toMatch(/no leaf is worked out/)
  })

  it("names only the rules its own figures rest on", () => {
    const stays = sheetOf({ D13: { hang: "new", leaf: "fd30", closer: true } }, "B3").rests
    expect(stays).not.toContain("door-garage-minutes")
    expect(stays.filter((id) => /hinge|gap|hours/.test(id))).toEqual([])
    const one = sheetOf({ D5: { hang: "new" }, D3: { hang: "new", undercutFor: "air" } }, "B1").rests
    expect(one).toContain("door-fire-gap-target")
    expect(one).not.toContain("door-air-area")
    expect(one.filter((id) => /hours|garage/.test(id))).toEqual([])
  })

  it("has cautions and signatures, and claims nothing", () => {
    const { blocks } = sheetOf({ D5: { hang: "new" } }, "B1")
    expect(blocks.some((block) => block.kind === "cautions")).toBe(true)
    expect(blocks.at(-1)?.kind).toBe("sign")
    expect(JSON.stringify(blocks)).not.toMatch(/complies|compliant|approved\b/)
  })
})
