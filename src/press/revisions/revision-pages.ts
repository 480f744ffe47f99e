import { dateText } from "../../kernels/calendar/date-text.ts"
import type { Revision } from "../addresses.ts"
import type { SetJob } from "../set-job.ts"
import type { SheetHistory } from "./history.ts"

/** What the QR of one paper opens: whether it is current, and if not, what changed since. Complete without script. */
export interface RevisionPage {
  code: string
  /** The sheet's address below the job. */
  path: string
  number: string
  /** Empty where the sheet is not published: its title might tell too much. */
  title: string
  letter: string
  /** The first words: is this paper current? */
  verdict: string
  isCurrent: boolean
  /** What changed with each later issue. */
  since: { letter: string; on: string; changed: string }[]
  hosted: boolean
}

/** One page for each letter that each sheet was ever issued under, and one for drafts; none is ever dropped. */
export function revisionPages(job: SetJob): RevisionPage[] {
  const code = job.result.job.code
  const here = job.sheets.flatMap((sheet) => {
    const about = {
      code,
      path: sheet.path,
      number: sheet.number,
      hosted: sheet.hosted,
      title: sheet.hosted ? sheet.title : "",
    }
    return lettersOf(sheet.history).map((paper) => ({ ...about, ...verdictOn(paper, sheet.history) }))
  })
  const gone = job.gone.flatMap(({ number, history }) =>
    history.issued.map(({ revision }) => ({
      code,
      path: number.toLowerCase(),
      number,
      title: "",
      hosted: false,
      letter: revision.letter,
      isCurrent: false,
      verdict: `Your paper is revision ${revision.letter}. This sheet has been taken out of the job: hand it back.`,
      since: [],
    })),
  )
  return [...here, ...gone]
}

function lettersOf({ issued, revision }: SheetHistory): Revision[] {
  const draft: Revision = { letter: "0", text: "draft, not issued", on: revision.on, by: revision.by }
  return [draft, ...issued.map((each) => each.revision)]
}

function verdictOn(
  paper: Revision,
  { revision, issued }: SheetHistory,
): Pick<RevisionPage, "letter" | "verdict" | "isCurrent" | "since"> {
  const since = issued
    .filter(
      (each) => paper.letter === "0" || rankOf(issued, each.revision.letter) > rankOf(issued, paper.letter),
    )
    .map((each) => ({
      letter: each.revision.letter,
      on: dateText(each.revision.on),
      changed: each.changed.length > 0 ? each.changed.join("; ") : "first issue",
    }))
  const { letter } = paper
  const isCurrent = letter === revision.letter
  return {
    letter,
    isCurrent,
    since: isCurrent ? [] : since,
    verdict: verdictText(paper, revision, issued.length > 0),
  }
}

function rankOf(issued: SheetHistory["issued"], letter: string): number {
  return issued.findIndex((each) => each.revision.letter === letter)
}

function verdictText(paper: Revision, now: Revision, everIssued: boolean): string {
  const isDraft = paper.letter === "0"
  const yours = isDraft
    ? "Your paper is a draft that was never issued."
    : `Your paper is revision ${paper.letter} of ${dateText(paper.on)}.`
  if (isDraft && now.letter === "0" && !everIssued)
    return `${yours} It is as the job stands; nothing has been issued yet.`
  if (isDraft)
    return `${yours} Do not build from it.${now.letter === "0" ? "" : ` Current is ${now.letter}, since ${dateText(now.on)}.`}`
  if (paper.letter === now.letter) return `${yours} It is current.`
  if (now.letter === "0")
    return `${yours} The sheet has changed since and the change is not issued yet: ask before you go on.`
  return `${yours} It is out of date. Current is ${now.letter}, since ${dateText(now.on)}.`
}
