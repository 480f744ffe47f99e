import { describe, expect, it } from "vitest"
import type { Block } from "../../../src/kernels/paper.ts"
import { ticksOf } from "../../../src/press/site/ticks.ts"

const steps = (...rows: string[][]): Block => ({
  kind: "table",
  caption: "Steps",
  columns: [{ label: "Step" }, { label: "Start" }, { label: "Done", as: "tick" }],
  rows: rows.map((cells) => ({ cells })),
})
const keys = (block: Block) => ticksOf(block).map((tick) => tick?.key)

describe("boxes to tick on a phone", () => {
  it("are one for each line with an empty box, none for a stop line or a box already written in", () => {
    const block = steps(["Lay", "Mon 1 Mar 08:00", ""], ["Oil", "", "done"])
    if (block.kind !== "table") throw new Error("no table")
    block.rows.push({ cells: ["Stop", "", ""], as: "hold" })
    expect(ticksOf(block)).toEqual([
      { key: expect.any(String), says: "Steps: Lay, Mon 1 Mar 08:00" },
      null,
      null,
    ])
  })

  it("keep their key when the line moves in time or place, and lose it when it says something else", () => {
    const [lay, oil] = keys(steps(["Lay", "Mon 1 Mar 08:00", ""], ["Oil", "Tue 2 Mar 09:30", ""]))
    expect(keys(steps(["Oil", "Fri 5 Mar 2027 10:00", ""], ["Lay", "Thu 4 Mar 08:00", ""]))).toEqual([
      oil,
      lay,
    ])
    expect(keys(steps(["Lay 14 boards", "Mon 1 Mar 08:00", ""]))[0]).not.toBe(lay)
  })

  it("are told apart where two lines say the same", () => {
    const twice = keys({ kind: "checks", caption: "Check", items: [{ text: "level" }, { text: "level" }] })
    expect(new Set(twice).size).toBe(2)
  })

  it("are none on what has no boxes", () => {
    expect(ticksOf({ kind: "text", paragraphs: ["Lay it."] })).toEqual([])
  })
})
