import type { Row, SheetModel } from "../kernels/paper.ts"
import type { JobResult } from "./job-result.ts"

const base = {
  room: null,
  trade: null,
  audience: ["trade", "office"] as ("trade" | "office")[],
  hosted: true,
  orientation: "portrait" as const,
  datum: null,
  rests: [],
}

/** A page of the site diary, to be copied: one a day. */
export function diarySheet({ programme }: JobResult): SheetModel | null {
  if (programme.crews.length === 0) return null
  const crews = programme.crews.map(
    (crew): Row => ({ cells: [`${crew.name} (${crew.people})`, "", "", "", ""] }),
  )
  return {
    ...base,
    kind: "diary",
    title: "Site diary",
    purpose: "One page a day, written that day: who was here, what was done, what was said.",
    blocks: [
      { kind: "boxes", caption: "The day", labels: ["Date", "Weather", "Indoors °C, %", "Page"] },
      {
        kind: "table",
        caption: "On site",
        columns: [
          { label: "Crew (people planned)", width: 34 },
          { label: "Here", as: "write", width: 12 },
          { label: "From", as: "write", width: 14 },
          { label: "To", as: "write", width: 14 },
          { label: "Rooms and work, as on the order of work", as: "write", width: 76 },
        ],
        rows: [...crews, { cells: ["", "", "", "", ""] }],
      },
      written("Visitors, deliveries, photos (numbers)", 2),
      written("Instructions and changes asked for: by whom, about what, variation or daywork number", 2),
      written("Held up: by what, how long, who was told", 2),
      written("Accidents, near misses, damage; evening sheet J-90 signed by", 2),
      { kind: "sign", roles: ["Foreman"] },
    ],
  }
}

/** A daywork sheet, to be copied: labour and materials of work outside what was agreed; no money on it. */
export function dayworkSheet({ programme }: JobResult): SheetModel | null {
  if (programme.crews.length === 0) return null
  const blank = (count: number, columns: number): Row[] =>
    Array.from({ length: count }, () => ({ cells: Array.from({ length: columns }, () => "") }))
  return {
    ...base,
    kind: "daywork",
    title: "Daywork",
    purpose:
      "Only for work ordered as daywork before it begins; signed the same day, priced in the office at the agreed rates.",
    blocks: [
      {
        kind: "boxes",
        caption: "Ordered",
        labels: ["Sheet number", "Date", "Ordered by", "Variation number"],
      },
      written("What, where, why it is outside the agreed work", 3),
      {
        kind: "table",
        caption: "Labour",
        columns: [
          { label: "Who, as what", as: "write", width: 60 },
          { label: "From", as: "write", width: 18 },
          { label: "To", as: "write", width: 18 },
          { label: "Breaks", as: "write", width: 18 },
          { label: "Hours", as: "write", width: 18 },
        ],
        rows: blank(5, 5),
      },
      {
        kind: "table",
        caption: "Materials, hire, waste",
        columns: [
          { label: "What", as: "write", width: 70 },
          { label: "Amount, unit", as: "write", width: 26 },
          { label: "Note or receipt number", as: "write", width: 36 },
        ],
        rows: blank(5, 3),
      },
      { kind: "sign", roles: ["Done by", "Foreman", "Ordered by: hours and materials right"] },
    ],
  }
}

function written(caption: string, count: number): SheetModel["blocks"][number] {
  return {
    kind: "table",
    caption,
    columns: [{ label: "", as: "write", width: 1 }],
    rows: Array.from({ length: count }, () => ({ cells: [""] })),
  }
}
