import type { Block, SheetModel } from "../kernels/paper.ts"
import { wordsExplained } from "./client-words.ts"

/** What is said of a client's sheet besides its blocks. */
export interface ClientSheet {
  kind: string
  title: string
  purpose: string
  rests?: string[]
}

/** Stands over the words that a sheet explains. */
export const wordsHeading = "Words on this sheet"

/** A sheet for the client: never published, and with every word of the trade that stands on it explained at its foot. */
export function clientSheet(
  { kind, title, purpose, rests }: ClientSheet,
  blocks: readonly Block[],
): SheetModel {
  return withWords({
    kind,
    title,
    purpose,
    room: null,
    trade: null,
    audience: ["client", "office"],
    hosted: false,
    orientation: "portrait",
    datum: null,
    blocks: [...blocks],
    rests: rests ?? [],
  })
}

/** A sheet that the client holds, with the words that stand on it explained at its foot; any other sheet as it is. */
export function withWords(sheet: SheetModel): SheetModel {
  const { title, purpose, blocks } = sheet
  const isExplained = blocks.some((block) => block.kind === "heading" && block.text === wordsHeading)
  const explained = wordsExplained(textOf([title, purpose, ...blocks]))
  if (!sheet.audience.includes("client") || isExplained || explained.length === 0) return sheet
  const words: Block[] = [
    { kind: "heading", text: wordsHeading },
    { kind: "text", paragraphs: [explained.join(" ")] },
  ]
  return { ...sheet, blocks: [...blocks, ...words] }
}

/** Every text inside a value, a line each. */
export function textOf(value: unknown): string {
  if (typeof value === "string") return value
  if (Array.isArray(value)) return value.map(textOf).join("\n")
  if (typeof value !== "object" || value === null) return ""
  return Object.values(value).map(textOf).join("\n")
}
