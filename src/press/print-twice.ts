import { Fault } from "../kernels/fault.ts"
import type { Press } from "./browser/launch.ts"
import type { Printed, PrintOptions } from "./print.ts"
import { printPdf } from "./print.ts"

/** Where everything stands in a document of several sheets. */
export interface PagePlan {
  /** Pages of the whole document, blanks counted. */
  pages: number
  /** Id of each linked element, and its page, from 1. */
  starts: Map<string, number>
  /** Ids that need one blank page before them, so that they start on the right. */
  blanksBefore: Set<string>
}

/** How a document is printed that knows its own page numbers. */
export interface PrintTwiceOptions extends PrintOptions {
  /** Ids that must start on an odd page, for binding printed on both sides; none unless given. */
  rightHand?: readonly string[]
  /** What the pages will most likely be; where it proves true, the document is printed only once. */
  guess?: PagePlan
}

/** A printed document with the plan it was printed to. */
export interface PrintedToPlan extends Printed {
  plan: PagePlan
}

/**
 * Prints a document that must know its own page numbers: contents, page totals, sheets that start on the right.
 * `planHtml` writes the HTML and names the file: first with no plan (placeholders as long as the numbers will
 * be), then with the plan, putting one blank page before each id of `blanksBefore`. An id has a place only if
 * a link in the document points to it.
 * Should the numbers move something (one more digit can break a line), it is planned anew from what was
 * printed, three times at most.
 * @returns the print whose pages equal its plan
 * @throws Fault when the pages do not come to rest, or an id that must start on the right has no link to it
 */
export async function printTwice(
  press: Press,
  planHtml: (plan: PagePlan | null) => Promise<string>,
  options: PrintTwiceOptions,
): Promise<PrintedToPlan> {
  let plan = options.guess ?? (await draftPlan(press, planHtml, options))
  for (let pass = 0; pass < mostPasses; pass += 1) {
    const printed = await printPdf(press, await planHtml(plan), options)
    const came = placesOf(printed)
    if (samePages(plan, came)) return { ...printed, plan }
    plan = pagePlan(withoutBlanks(came, plan.blanksBefore), options.rightHand ?? [])
  }
  throw new Fault(`the pages of ${await planHtml(plan)} do not come to rest in ${mostPasses} passes`)
}

async function draftPlan(
  press: Press,
  planHtml: (plan: PagePlan | null) => Promise<string>,
  options: PrintTwiceOptions,
): Promise<PagePlan> {
  const draft = await printPdf(press, await planHtml(null), { ...options, draft: true })
  return pagePlan(placesOf(draft), options.rightHand ?? [])
}

const mostPasses = 3

interface Pages {
  pages: number
  starts: Map<string, number>
}

/**
 * The plan of a document printed without blanks: every id of `rightHand` moved to an odd page.
 * @throws Fault when one of them has no place
 */
export function pagePlan(printed: Pages, rightHand: readonly string[]): PagePlan {
  const blanksBefore = new Set<string>()
  const raw = rightHand.map((id) => ({ id, page: startOf(printed, id) })).sort((a, b) => a.page - b.page)
  for (const { id, page } of raw) {
    if ((page + blanksBefore.size) % 2 === 0) blanksBefore.add(id)
  }
  const blankPages = [...blanksBefore].map((id) => startOf(printed, id))
  const moved = (page: number): number => page + blankPages.filter((blank) => blank <= page).length
  const starts = new Map([...printed.starts].map(([id, page]) => [id, moved(page)]))
  return { pages: printed.pages + blanksBefore.size, starts, blanksBefore }
}

function withoutBlanks(printed: Pages, blanksBefore: ReadonlySet<string>): Pages {
  const firsts = [...blanksBefore].map((id) => startOf(printed, id))
  const moved = (page: number): number => page - firsts.filter((first) => first <= page).length
  const starts = new Map([...printed.starts].map(([id, page]) => [id, moved(page)]))
  return { pages: printed.pages - blanksBefore.size, starts }
}

function startOf(printed: Pages, id: string): number {
  const page = printed.starts.get(id)
  if (page === undefined) throw new Fault(`nothing in the document links to ${id}, so its page is not known`)
  return page
}

function placesOf(printed: Printed): Pages {
  return { pages: printed.pages, starts: printed.destinations }
}

function samePages(plan: Pages, came: Pages): boolean {
  if (plan.pages !== came.pages || plan.starts.size !== came.starts.size) return false
  return [...plan.starts].every(([id, page]) => came.starts.get(id) === page)
}
