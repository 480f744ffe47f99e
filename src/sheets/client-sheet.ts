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
  const explained = wordsExplained(textOf([title, purpose, ...blocks]))
  return {
    kind,
    title,
    purpose,
    room: null,
    trade: null,
    audience: ["client", "office"],
    hosted: false,
    orientation: "portrait",
    datum: null,
    blocks: [
      ...blocks,
      ...(explained.length > 0
        ? [
            { kind: "heading" as const, text: wordsHeading },
            { kind: "text" as const, paragraphs: [explained.join(" ")] },
          ]
        : []),
    ],
    rests: rests ?? [],
  }
}

/** Every text inside a value, a line each. */
export function textOf(value: unknown): string {
  if (typeof value === "string") return value
  if (Array.isArray(value)) return value.map(textOf).join("\n")
  if (typeof value !== "object" || value === null) return ""
  return Object.values(value).map(textOf).join("\n")
}
