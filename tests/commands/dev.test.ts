import { describe, expect, it } from "vitest"
import { WrongUsage } from "../../src/commands/arguments.ts"
import { devCommand } from "../../src/commands/dev.ts"

describe("the preview", () => {
  it("refuses what it does not know before it starts anything", async () => {
    const said: string[] = []
    const say = (text: string) => said.push(text)
    await expect(devCommand(["--prot", "80"], { out: say, err: say, progress: say })).rejects.toThrow(
      WrongUsage,
    )
    expect(said).toEqual([])
  })
})
