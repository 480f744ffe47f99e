import type { Mm } from "../../../kernels/units.ts"
import type { Room, Stair } from "../../../survey/room.ts"
import type { JobFacts, Work } from "../../trade.ts"
import { type StairWork, stairsWritten } from "../inputs.ts"
import { buildUp } from "../lining-inside.ts"
import { type Rise, risesOf } from "./rises.ts"

/** A stair of the house with its rises before and after finishes and what is done to it. */
export interface StairSeen {
  stair: Stair
  /** Place in house.yaml. */
  index: number
  rises: Rise[]
  /** Finished floor over the deck at the foot and at the head, mm. */
  below: Mm
  above: Mm
  /** Null where no work on it is written. */
  work: StairWork | null
  /** True if this job lays or changes anything at its foot, at its head or on it. */
  changes: boolean
}

/** Every stair of the house, with what the rooms at their heads say is done to them. */
export function stairsOf(job: JobFacts, rooms: readonly { room: Room; work: Work }[]): StairSeen[] {
  const written = rooms.flatMap(({ work }) => stairsWritten(work.results.stairs))
  return job.house.stairs.map((stair, index) =>
    stairSeen({ stair, index, work: written.find((each) => each.stair === stair.id) ?? null }, job),
  )
}

function stairSeen(
  { stair, index, work }: Pick<StairSeen, "stair" | "index" | "work">,
  job: JobFacts,
): StairSeen {
  const below = buildUp(stair.fromRoom, job)
  const above = buildUp(stair.toRoom, job)
  const rises = work?.rises ?? Array.from({ length: stair.risers }, () => stair.rise)
  const onTreads = work?.onTreads ?? 0
  const now = (id: string) => job.house.storeys.find((storey) => storey.id === id)?.finishNow ?? 0
  const changes = stair.new || onTreads > 0 || below !== now(stair.from) || above !== now(stair.to)
  return {
    stair,
    index,
    work,
    below,
    above,
    changes,
    rises: risesOf({ rises, going: stair.going, below, above, onTreads }),
  }
}
