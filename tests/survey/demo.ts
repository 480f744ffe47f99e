import { readJobs } from "../../src/intake/read-jobs.ts"
import type { House, Room } from "../../src/survey/room.ts"
import { surveyHouse } from "../../src/survey/survey-house.ts"
import { trades } from "../../src/trades/index.ts"
import { rulesOf } from "../fixtures/rooms.ts"

const jobsDir = new URL("../../jobs", import.meta.url).pathname

/** The houses of the demo jobs as surveyed. */
export function demoHouses(): House[] {
  return readJobs({ jobsDir, trades }).jobs.flatMap(({ job }) =>
    job ? [surveyHouse(job, rulesOf()).house] : [],
  )
}

/** One room of the demo jobs. */
export function demoRoom(id: string): Room {
  const room = demoHouses()
    .flatMap(({ rooms }) => rooms)
    .find((each) => each.id === id)
  if (!room) throw new Error(`no room ${id} in the demo jobs`)
  return room
}
