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
  /** The same where the page is not fresh from its host: never "current" without when it was fetched, `@when@`. */
  fetched: string
  /** The letter the sheet carries now; empty where the job has it no longer. */
  now: string
  zone: string
  /** The issue this page was written with, in words. */
  copy: string
  isCurrent: boolean
  /** What changed with each later issue. */
  since: { letter: string; on: string; changed: string }[]
  hosted: boolean
}

/** One page for each letter that each sheet was ever issued under, and one for drafts; none is ever dropped. */
export function revisionPages(job: SetJob): RevisionPage[] {
  const { code, zone } = job.result.job
  const copy = copyText(job)
  const here = job.sheets.flatMap((sheet) => {
    const about = {
      code,
      zone,
      copy,
      now: sheet.revision.letter,
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
      zone,
      copy,
      now: "",
      path: number.toLowerCase(),
      number,
      title: "",
      hosted: false,
      letter: revision.letter,
      isCurrent: false,
      verdict: goneText(revision),
      fetched: goneText(revision),
      since: [],
    })),
  )
  return [...here, ...gone]
}

function lettersOf({ issued, revision }: SheetHistory): Revision[] {
  const draft: Revision = { letter: "0", text: "draft, not issued", on: revision.on, by: revision.by }
  return [draft, ...issued.map((each) => each.revision)]
}

function goneText({ letter }: Revision): string {
  return `Your paper is revision ${letter}. This sheet has been taken out of the job: hand it back.`
}

/** The issue that a page was written with, in words: how old a copy is at most. */
export function copyText({ revision }: Pick<SetJob, "revision">): string {
  return `${revision.text}, ${dateText(revision.on)}`
}

function verdictOn(
  paper: Revision,
  { revision, issued }: SheetHistory,
): Pick<RevisionPage, "letter" | "verdict" | "fetched" | "isCurrent" | "since"> {
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
    ...verdictText(paper, revision, issued.length > 0),
  }
}

function rankOf(issued: SheetHistory["issued"], letter: string): number {
  return issued.findIndex((each) => each.revision.letter === letter)
}

/** The verdict on a paper, as it stands when the page is fresh, and as it stands in a kept copy. */
function verdictText(
  paper: Revision,
  now: Revision,
  everIssued: boolean,
): { verdict: string; fetched: string } {
  const isDraft = paper.letter === "0"
  const yours = isDraft
    ? "Your paper is a draft that was never issued."
    : `Your paper is revision ${paper.letter} of ${dateText(paper.on)}.`
  const both = (fresh: string, kept: string) => ({
    verdict: `${yours} ${fresh}`,
    fetched: `${yours} ${kept}`,
  })
  const same = (text: string) => both(text, text)
  const current = `Current is ${now.letter}, since ${dateText(now.on)}.`
  const then = `When this copy was fetched, ${when}, the latest was ${now.letter}, since ${dateText(now.on)}.`
  if (isDraft && now.letter === "0" && !everIssued)
    return both(
      "It is as the job stands; nothing has been issued yet.",
      `It was as the job stood when last fetched, ${when}; nothing had been issued.`,
    )
  if (isDraft && now.letter === "0") return same("Do not build from it.")
  if (isDraft) return both(`Do not build from it. ${current}`, `Do not build from it. ${then}`)
  if (paper.letter === now.letter) return both("It is current.", `It was current when last fetched, ${when}.`)
  if (now.letter === "0")
    return same("The sheet has changed since and the change is not issued yet: ask before you go on.")
  return both(`It is out of date. ${current}`, `It is out of date. ${then}`)
}

/** Where the day and hour of fetching stands in what a kept copy says; put in on the phone. */
const when = "@when@"
