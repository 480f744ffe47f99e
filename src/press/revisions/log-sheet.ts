import { dateText } from "../../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../../kernels/paper.ts"
import type { SheetHistory } from "./history.ts"
import type { IssueRecord } from "./record.ts"

/** A sheet's number with its history; `gone` where the job has it no longer. */
export interface NumberedHistory {
  number: string
  title: string
  history: SheetHistory
  gone: boolean
}

/**
 * The office's revision log: every issue with its reason, what to withdraw and what to issue now, and who holds what.
 * @param crews names of those who hold paper beside foreman, client and office
 */
export function revisionLog(
  records: readonly IssueRecord[],
  sheets: readonly NumberedHistory[],
  crews: readonly string[],
): SheetModel {
  return {
    kind: "revision-log",
    title: "Revisions",
    purpose: "Take back the paper in the left column and hand out the right; sign for what was exchanged.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: false,
    orientation: "portrait",
    datum: null,
    blocks: [...issues(records), ...exchange(records, sheets), distribution(crews)],
    rests: [],
  }
}

function issues(records: readonly IssueRecord[]): Block[] {
  return [
    {
      kind: "table",
      caption: "Issues",
      columns: [
        { label: "Revision", as: "mark", width: 12 },
        { label: "Issued", as: "figure", width: 22 },
        { label: "By", width: 18 },
        { label: "Reason", width: 48 },
      ],
      rows: records.map((record) => ({
        cells: [record.revision, dateText(record.on), record.by, record.reason],
      })),
    },
  ]
}

/** What to exchange since the last issue but one; with unissued changes, since the last. */
function exchange(records: readonly IssueRecord[], sheets: readonly NumberedHistory[]): Block[] {
  const latest = records[records.length - 1]?.revision
  const rows = sheets.flatMap(({ number, title, history, gone }) => {
    const letters = history.issued.map((each) => each.revision.letter)
    const draft = history.revision.letter === "0"
    const held = gone || draft ? letters[letters.length - 1] : letters[letters.length - 2]
    if (gone)
      return held ? [{ cells: [`${number} ${held}`, "nothing", title, "taken out of the job", ""] }] : []
    if (!draft && (history.revision.letter !== latest || records.length === 1)) return []
    const changed = history.issued[history.issued.length - 1]?.changed ?? []
    const why = draft ? "changed since it was issued; not issued yet" : held ? changed.join("; ") : "new"
    return [
      {
        cells: [
          held ? `${number} ${held}` : "nothing",
          `${number} ${draft ? "draft" : history.revision.letter}`,
          title,
          why,
          "",
        ],
      },
    ]
  })
  if (rows.length === 0)
    return [
      { kind: "text", paragraphs: ["Nothing is to be exchanged: all paper of the last issue is current."] },
    ]
  return [
    {
      kind: "table",
      caption: "Withdraw and issue",
      columns: [
        { label: "Withdraw", as: "mark", width: 18 },
        { label: "Issue", as: "mark", width: 18 },
        { label: "Sheet", width: 22 },
        { label: "What changed", width: 34 },
        { label: "Done", as: "tick", width: 8 },
      ],
      rows,
    },
  ]
}

function distribution(crews: readonly string[]): Block {
  const holders = ["Foreman", ...crews, "Client", "Office"]
  return {
    kind: "table",
    caption: "Who holds which revision",
    columns: [
      { label: "Holder", width: 30 },
      { label: "Revision", as: "write", width: 20 },
      { label: "Handed over on", as: "write", width: 24 },
      { label: "Signed", as: "write", width: 26 },
    ],
    rows: holders.map((holder) => ({ cells: [holder, "", "", ""] })),
  }
}
