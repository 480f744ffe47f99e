import type { JobResult } from "./job-result.ts"
import type { Sheet } from "./numbers.ts"

/** Sheets bound together for one reader. */
export interface Pack<S extends Sheet = Sheet> {
  /** File name without its ending: `room-a1`, `trade-floors`, `client`, `archive`, `job`. */
  id: string
  title: string
  /** True if it is printed on both sides and bound, with a contents page. */
  bound: boolean
  sheets: S[]
}

/** Kinds of sheet that are copied day after day. */
const dayByDay: ReadonlySet<string> = new Set(["end-of-day", "diary", "daywork"])

function copied<S extends Sheet>(sheets: readonly S[]): Pack<S>[] {
  const own = sheets.filter((sheet) => dayByDay.has(sheet.kind))
  return own.length > 0
    ? [{ id: "day-by-day", title: "Sheets to copy, one a day", bound: false, sheets: own }]
    : []
}

/** The packs of a job by reader: one a room, one a trade, the client's, fold-outs if wanted, the office's archive, and the whole job bound. */
export function packsOf<S extends Sheet>(result: JobResult, sheets: readonly S[]): Pack<S>[] {
  const rooms = result.house.rooms.flatMap((room): Pack<S>[] => {
    const own = sheets.filter((sheet) => sheet.room === room.id && sheet.audience.includes("trade"))
    return own.length > 0
      ? [{ id: `room-${room.id.toLowerCase()}`, title: `${room.id} ${room.name}`, bound: false, sheets: own }]
      : []
  })
  const trades = result.trades.flatMap((trade): Pack<S>[] => {
    const own = sheets.filter((sheet) => sheet.trade === trade.id && sheet.audience.includes("trade"))
    if (own.length === 0) return []
    const shared = sheets.filter((sheet) => sheet.kind === "saw" && trade.id === "joinery")
    return [{ id: `trade-${trade.id}`, title: trade.title, bound: false, sheets: [...own, ...shared] }]
  })
  const forClient = sheets.filter((sheet) => sheet.audience.includes("client"))
  const client = [...forClient.filter((sheet) => !sheet.hosted), ...forClient.filter((sheet) => sheet.hosted)]
  const job = sheets.filter((sheet) => sheet.audience.includes("trade"))
  const foldOuts = sheets.flatMap((sheet): S[] =>
    sheet.foldOut ? [{ ...sheet, orientation: "fold-out", blocks: sheet.foldOut }] : [],
  )
  return [
    ...rooms,
    ...trades,
    {
      id: "survey-forms",
      title: "Blank survey sheets",
      bound: false,
      sheets: sheets.filter((sheet) => sheet.kind === "survey-form"),
    },
    ...copied(sheets),
    { id: "client", title: "For the client", bound: false, sheets: client },
    ...(foldOuts.length > 0
      ? [{ id: "fold-outs", title: "Fold-outs on A3", bound: false, sheets: foldOuts }]
      : []),
    { id: "job", title: "The whole job", bound: true, sheets: job },
    { id: "archive", title: "Archive", bound: true, sheets: [...sheets] },
  ]
}
