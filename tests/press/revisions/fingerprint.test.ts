import { describe, expect, it } from "vitest"
import type { Block } from "../../../src/kernels/paper.ts"
import { fingerprintOf, rowHash, sha256, uniqueNames } from "../../../src/press/revisions/fingerprint.ts"
import type { Sheet } from "../../../src/sheets/numbers.ts"

const table: Block = {
  kind: "table",
  caption: "Steps",
  columns: [{ label: "What" }],
  rows: [{ cells: ["one"] }, { cells: ["two"] }],
}

function sheet(blocks: Block[]): Sheet {
  return {
    kind: "sequence",
    title: "Order of work",
    purpose: "Work down.",
    room: "A1",
    trade: null,
    audience: ["trade"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks,
    rests: [],
    number: "A1-02",
    path: "a1-02",
  }
}

describe("a sheet's fingerprint", () => {
  const before = fingerprintOf(sheet([table]), "A1 East", [])

  it("stays while nothing shown changes, in whatever order keys were written", () => {
    const same: Block = {
      rows: table.kind === "table" ? table.rows : [],
      columns: [{ label: "What" }],
      caption: "Steps",
      kind: "table",
    }
    expect(fingerprintOf(sheet([same]), "A1 East", [])).toEqual(before)
  })

  it.each([
    [
      "a row",
      fingerprintOf(
        sheet([{ ...table, rows: [{ cells: ["one"] }, { cells: ["three"] }] } as Block]),
        "A1 East",
        [],
      ),
    ],
    ["the room's name", fingerprintOf(sheet([table]), "A1 West", [])],
    [
      "what it rests on",
      fingerprintOf(sheet([table]), "A1 East", ["saw-kerf (overridden: 4 mm, wide blade)"]),
    ],
  ])("changes with %s", (_, after) => expect(after.hash).not.toBe(before.hash))

  it("tells which row changed", () => {
    expect(before.parts[0]).toMatchObject({ name: "Steps", rows: [rowHash(["one"]), rowHash(["two"])] })
  })

  it("names parts as the reader would, doubles counted", () => {
    expect(uniqueNames([table, table, { kind: "figures", items: [] }])).toEqual([
      "Steps",
      "Steps (2)",
      "figures at the head",
    ])
  })

  it("hashes as the standard does", () => {
    // FIPS 180-4, the example of one block, "abc" (from memory; the digits are the published ones)
    expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")
  })
})
