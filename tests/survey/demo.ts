import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { parse } from "yaml"
import { houseFile } from "../../src/intake/schema/house.ts"
import { roomFile } from "../../src/intake/schema/room.ts"
import type { House, Room } from "../../src/survey/room.ts"
import { surveyHouse } from "../../src/survey/survey-house.ts"
import { rulesOf } from "../fixtures/rooms.ts"

const jobs = new URL("../../jobs/", import.meta.url).pathname

/** The houses of the demo jobs as surveyed; what trades do in their rooms is left out. */
export function demoHouses(): House[] {
  kept ??= surveyedHouses()
  return kept
}

let kept: House[] | undefined

function surveyedHouses(): House[] {
  return ["lock-house", "garden-room"].map((ref) => {
    const read = (file: string) => parse(readFileSync(join(jobs, ref, file), "utf8"))
    const files = readdirSync(join(jobs, ref, "rooms")).sort()
    const rooms = files.map((file) => ({
      ...roomFile.parse({ ...read(`rooms/${file}`), work: {} }),
      file: `rooms/${file}`,
    }))
    return surveyHouse({ house: houseFile.parse(read("house.yaml")), rooms }, rulesOf()).house
  })
}

/** One room of the demo jobs. */
export function demoRoom(id: string): Room {
  const room = demoHouses()
    .flatMap(({ rooms }) => rooms)
    .find((each) => each.id === id)
  if (!room) throw new Error(`no room ${id} in the demo jobs`)
  return room
}
