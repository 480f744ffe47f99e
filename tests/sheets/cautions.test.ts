import { describe, expect, it } from "vitest"
import { cautionsSheet, distinct } from "../../src/sheets/cautions.ts"
import { smallResult } from "../fixtures/small-job.ts"

describe("cautions", () => {
  it("stand once a sheet, whoever raises them, in the order met", () => {
    const caution = (id: string, text: string) => ({ trade: "floors", id, text, why: "", defer: "" })
    const found = distinct([caution("dust", "first"), caution("lift", "second"), caution("dust", "third")])
    expect(found.map((each) => each.text)).toEqual(["first", "second"])
  })

  it("say why and whom to ask, and are signed for", async () => {
    const result = await smallResult()
    const sheet = cautionsSheet(result, result.house.rooms[1]!)
    const block = sheet.blocks.find((each) => each.kind === "cautions")
    expect(block).toEqual({
      kind: "cautions",
      items: [{ text: "Dust.", why: "It harms.", defer: "Ask the maker." }],
    })
    expect(sheet.blocks.at(-1)?.kind).toBe("sign")
  })

  it("are led by what is open in that room, and not by what is open elsewhere", async () => {
    const result = await smallResult()
    const [hall, living] = result.house.rooms
    const open = {
      code: "trial",
      severity: "warning" as const,
      at: { file: hall!.file, path: [] },
      message: "The lining leans.",
      mend: "Plane it.",
    }
    const warned = {
      ...hall!,
      findings: [open, { ...open, severity: "note" as const, message: "By the way." }],
    }
    expect(cautionsSheet(result, warned).blocks[0]).toEqual({
      kind: "warning",
      caption: "Open questions in this room",
      items: ["The lining leans. Plane it."],
    })
    expect(JSON.stringify(cautionsSheet(result, living!))).not.toContain("leans")
  })
})
