import { describe, expect, it } from "vitest"
import { issuedProgramme } from "../../src/programme/compare.ts"
import { movedBlocks } from "../../src/sheets/moved-since.ts"
import { smallResult } from "../fixtures/small-job.ts"

const result = await smallResult()
const issued = issuedProgramme(result.programme)
const earlier = (days: string) => ({
  ...issued,
  steps: issued.steps.map((each, index) => (index === 0 ? { ...each, start: days, finish: days } : each)),
})

describe("what moved, on the programme", () => {
  it("is nothing before anything is issued or reported", () => {
    expect(movedBlocks(result)).toEqual([])
  })

  it("has what set it off, then each step with its days then and now", () => {
    const issuedBefore = { revision: "B", on: "2027-02-12", programme: earlier("2027-02-26") }
    const blocks = movedBlocks({ ...result, issuedBefore })
    expect(blocks[0]).toEqual({ kind: "heading", text: "Moved since revision B of Fri 12 Feb" })
    const [first, second] = blocks.filter((block) => block.kind === "table")
    expect(first?.rows[0]?.cells.slice(0, 3)).toEqual(["1", "C2", result.programme.steps[0]!.step.title])
    expect(second?.rows).toHaveLength(1)
    expect(second?.rows[0]?.cells[2]).toBe("Fri 26 Feb")
    expect(second?.rows[0]?.cells[5]).toBe("1")
  })

  it("is a line where only the first night moved", () => {
    const programme = { ...issued, firstNight: "2027-03-12" }
    const blocks = movedBlocks({ ...result, issuedBefore: { revision: "A", on: "2027-02-12", programme } })
    expect(blocks).toHaveLength(1)
    expect(JSON.stringify(blocks)).toContain("The first night is: not planned, was Fri 12 Mar.")
  })
})
