import { dateText } from "../../kernels/calendar/date-text.ts"
import type { IsoDate } from "../../kernels/units.ts"
import { gapDays } from "../../programme/gap.ts"
import type { JobResult } from "../../sheets/job-result.ts"

/** A day of the job that is no step: its finish, the first night. */
export interface Milestone {
  id: "finish" | "first-night"
  title: string
  on: IsoDate
  /** What it rests on, in words. */
  because: string
}

/** The finish, proven shortest or with its gap, and the first night in a new storey. */
export function milestones({ programme }: JobResult): Milestone[] {
  const { bound, firstNight, finish, steps } = programme
  if (steps.length === 0) return []
  const gap = gapDays(programme)
  const days = gap === 1 ? "1 working day" : `${gap} working days`
  const finished: Milestone = {
    id: "finish",
    title: "Planned finish",
    on: finish,
    because: bound.proven
      ? `Proven shortest: what forces it is ${bound.by}.`
      : `No earlier than ${dateText(bound.finish)} is proven (${bound.by}); ${days} between are not proven.`,
  }
  if (!firstNight) return [finished]
  const because = `Not before this evening; building control’s word is waited for besides. Last to be ready: ${titleOf(firstNight.after[0], programme)}.`
  return [finished, { id: "first-night", title: "First night in the new storey", on: firstNight.on, because }]
}

function titleOf(key: string | undefined, { steps }: JobResult["programme"]): string {
  const step = steps.find((each) => each.step.key === key)?.step
  if (!step) return "nothing"
  return step.room ? `${step.title} (${step.room})` : step.title
}
