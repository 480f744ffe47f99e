import { describe, expect, it } from "vitest"
import { termsSheet } from "../../src/sheets/client-terms.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"

describe("what was agreed", () => {
  it("holds the job's own assumptions and exclusions first, and whom to tell before the start", async () => {
    const client = {
      ...smallMoney.client,
      assumptions: ["The floor is sound."],
      exclusions: ["New curtains rails."],
    }
    const sheet = termsSheet(await smallResult(() => ({ money: { ...smallMoney, client } })))
    const [rests, excluded] = sheet.blocks.flatMap((block) => (block.kind === "list" ? [block.items] : []))
    expect([rests?.[0], excluded?.[0]]).toEqual(["The floor is sound.", "New curtains rails."])
    const words = JSON.stringify(sheet)
    for (const told of ["Home insurer told", "Building control told", "Mon 1 Mar 2027"])
      expect(words).toContain(told)
  })

  it("speaks of asbestos in a house from before 2000 or of no known year, and not in a newer one", async () => {
    const built = async (year?: number) => {
      const result = await smallResult()
      return JSON.stringify(
        termsSheet({ ...result, house: { ...result.house, built: year } as typeof result.house }),
      )
    }
    expect(await built(1999)).toContain("asbestos is found")
    expect(await built()).toContain("asbestos is found")
    expect(await built(2000)).not.toContain("asbestos is found")
  })
})
