import { describe, expect, it } from "vitest"
import { clientSheet, textOf, withWords, wordsHeading } from "../../src/sheets/client-sheet.ts"

const about = { kind: "client-terms", title: "Terms", purpose: "Read it." }

describe("a sheet for the client", () => {
  it("explains at its foot the words that stand on it, in its title, its lists and its tables", () => {
    const table = {
      kind: "table" as const,
      caption: "x",
      columns: [{ label: "Skirting" }],
      rows: [{ cells: ["Grout"] }],
    }
    const { blocks } = clientSheet({ ...about, title: "Retention" }, [table])
    const [heading, text] = blocks.slice(1)
    expect(heading).toEqual({ kind: "heading", text: wordsHeading })
    expect(text?.kind === "text" ? text.paragraphs[0] : "").toMatch(
      /^Grout: .*\. Retention: .*\. Skirting: .*\.$/,
    )
  })

  it("has no list of words where none needs explaining, and is private in any case", () => {
    const { blocks, hosted, audience } = clientSheet(about, [{ kind: "text", paragraphs: ["Good morning."] }])
    expect(blocks).toHaveLength(1)
    expect([hosted, audience]).toEqual([false, ["client", "office"]])
  })

  it("explains words once, and on any sheet that the client holds, on no other", () => {
    const sheet = clientSheet({ ...about, title: "Grout" }, [])
    expect(withWords(sheet)).toBe(sheet)
    const bare = { ...sheet, blocks: [] }
    expect(withWords({ ...bare, hosted: true, audience: ["trade", "client"] }).blocks).toHaveLength(2)
    expect(withWords({ ...bare, audience: ["trade"] }).blocks).toEqual([])
  })

  it("reads every text inside a value", () => {
    expect(textOf(["a", { b: ["c", { d: "e" }], f: 3, g: null }])).toBe("a\nc\ne\n\n")
  })
})
