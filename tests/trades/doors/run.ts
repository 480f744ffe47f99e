import { doors } from "../../../src/trades/doors/index.ts"
import type { JobFacts, Task, Work } from "../../../src/trades/trade.ts"
import { jobOf, products, type ShortHouse } from "./houses.ts"

/** Three storeys by a loft, with garage, bathroom on the landing and shower off the bedroom. */
export const house: ShortHouse = {
  lowestGround: -240,
  decks: [0, 2610, 5275],
  rooms: [
    "C1 hall 0",
    "C2 living 0",
    "B4 landing 1",
    "B1 bedroom 1",
    "B3 bathroom 1",
    "A4 landing 2",
    "A1 bedroom 2",
    "A3 bathroom 2",
  ],
  stairs: ["S1 C1 B4", "S2 B4 A4 new"],
  doors: [
    "D14 outside C1 final",
    "D9 C1 C2",
    "D5 B4 B1",
    "D7 B4 B3",
    "D1 A4 A1",
    "D3 A1 A3",
    "D13 garage C1",
  ],
  passed: { A1: { floorBuildUp: 19, floorFinish: "oak" }, A3: { floorBuildUp: 13, floorFinish: "tile" } },
  products,
  chosen: { lining: "lining-108", stop: "stop-12", "fire-leaf": "fd30", leaf: "plain-762" },
}

/** Door work by doorway id. */
export type Works = Record<string, Record<string, unknown>>

/** All rooms of the house worked out with some door work; `change` may alter the job before. */
export function run(work: Works, change: (job: JobFacts) => void = () => undefined) {
  const job = jobOf({ ...house, work })
  change(job)
  const works = new Map<string, Work>()
  const sheets = job.house.rooms.flatMap((room) => {
    const task: Task<never> = {
      job,
      room,
      input: doors.inputs.parse({}) as never,
      at: { file: room.file, path: ["work", "doors"] },
      facts: {},
    }
    const done = doors.work(task)
    works.set(room.id, done)
    return doors.sheets(task, done)
  })
  const rooms = job.house.rooms.map((room) => ({ room, work: works.get(room.id)! }))
  return { job, works, sheets, across: () => doors.across!(job, rooms) }
}

/** Codes of the findings of one room. */
export function codes(work: Works, room: string, change?: (job: JobFacts) => void): string[] {
  return run(work, change)
    .works.get(room)!
    .findings.map((finding) => finding.code)
}

/** A change to one doorway. */
export function setDoor(id: string, to: Partial<JobFacts["house"]["doors"][number]>) {
  return (job: JobFacts) => Object.assign(job.house.doors.find((door) => door.id === id)!, to)
}

const quiet = new Set(["door-not-placed", "door-clear-width-less"])
/** Findings that are no mere notes of the fixture. */
export const loud = (list: string[]) => list.filter((code) => !quiet.has(code))
