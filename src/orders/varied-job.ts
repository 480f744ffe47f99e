import type { Job } from "../intake/job.ts"
import type { Variation } from "../intake/schema/variations.ts"
import type { At } from "../kernels/finding.ts"

/**
 * A job as it would be with variations put in place, one after the other: work by room and trade, doorways, chosen products. What a
 * variation does not name stays as the job's own files say.
 */
export function variedJob(job: Job, variations: readonly Variation[]): Job {
  return variations.reduce(withOne, job)
}

function withOne(job: Job, variation: Variation): Job {
  const at = (...path: (string | number)[]): At => ({
    file: "variations.yaml",
    path: ["variations", job.variations.indexOf(variation), ...path],
  })
  const works = new Map(job.works)
  const writtenAt = new Map(job.writtenAt)
  variation.rooms.forEach(({ room, work, omit }, index) => {
    const left = new Map(works.get(room))
    for (const trade of omit) left.delete(trade)
    for (const [trade, input] of Object.entries(work)) {
      if (input === undefined) continue
      left.set(trade, input)
      writtenAt.set(`${room}/${trade}`, at("rooms", index, "work", trade))
    }
    works.set(room, left)
  })
  const doorWork = new Map(
    variation.doors.flatMap(({ door, work }) => (work === undefined ? [] : [[door, work] as const])),
  )
  const doors = job.house.doors.map((door) =>
    doorWork.has(door.id) ? { ...door, work: doorWork.get(door.id) as typeof door.work } : door,
  )
  return {
    ...job,
    works,
    writtenAt,
    house: { ...job.house, doors },
    chosen: new Map([...job.chosen, ...Object.entries(variation.chosen)]),
  }
}
