import type { Drawing } from "./drawing/shapes.ts"

/** Who may hold a sheet. Only `hosted` sheets reach the published site. */
export type Audience = "trade" | "client" | "office"

/** A cell of a table: final text, already rounded for the reader. */
export type Cell = string

/** One column of a table. */
export interface Column {
  label: string
  /** `figure`: right-aligned tabular figures to work from; `tick`: an empty box; `write`: room to write in by hand. */
  as?: "text" | "figure" | "tick" | "write" | "mark"
  /** Share of the width, any unit; columns without one take what they need. */
  width?: number
}

/** One row of a table; `total` and `group` rows are set apart. */
export interface Row {
  cells: Cell[]
  /** Set by the press where the last revision of the sheet did not have this row: a bar stands beside it. */
  changed?: boolean
  as?: "total" | "group" | "hold"
}

/** A part of a sheet, set by the templates' macro of the same name. */
export type Block =
  | { kind: "heading"; text: string }
  | { kind: "text"; paragraphs: string[]; as?: "plain" | "note" | "lead" }
  | { kind: "figures"; items: { label: string; value: string; unit?: string }[] }
  | {
      kind: "table"
      caption: string
      columns: Column[]
      rows: Row[]
      note?: string
      /** True if it stands on one page with the drawing before it. */
      withPrevious?: boolean
    }
  | { kind: "list"; caption?: string; items: string[] }
  | { kind: "checks"; caption: string; items: { text: string; write?: string }[] }
  | { kind: "cautions"; items: { text: string; why: string; defer: string }[] }
  | { kind: "warning"; items: string[]; caption: string }
  | {
      kind: "drawing"
      drawing: Drawing
      caption: string
      maxWidth?: number
      maxHeight?: number
      scale?: number
      /** True if it stands on one page with the table after it. */
      withNext?: boolean
    }
  | { kind: "sign"; roles: string[] }
  | { kind: "boxes"; caption: string; labels: string[] }

/** How a sheet lies: A4 upright, A4 lying, or A3 lying and folded to A4. */
export type Orientation = "portrait" | "landscape" | "fold-out"

/** One sheet before it is numbered and bound: final text and drawings, nothing left to compute. */
export interface SheetModel {
  /** Stable key of the kind of sheet, also its template's name: `floor`, `doors`, `saw` ... */
  kind: string
  /** Set where a room or job has several sheets of a kind: a door's id, a trade's id; part of the sheet's number. */
  part?: string
  title: string
  /** What the reader does with it, one line under the title. */
  purpose: string
  /** Room id, or null for a job-wide sheet. */
  room: string | null
  /** Trade id, or null where it spans trades. */
  trade: string | null
  audience: Audience[]
  /** True if the published site may carry it: no prices, no client details. */
  hosted: boolean
  orientation: Orientation
  /** The datum of its heights and the face of its lengths in words, or null where it has none. */
  datum: string | null
  blocks: Block[]
  /** The same figures for one large sheet, where the job asks for fold-outs. */
  foldOut?: Block[]
  /** Ids of the rulebook entries it rests on. */
  rests: string[]
}
