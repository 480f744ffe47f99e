import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { parse, stringify } from "yaml"

/** What a generated archive is made of. */
export interface ArchiveTask {
  /** Folder with the job that all are made after, and its catalogue. */
  from: string
  /** Ref of that job: one rectangular room, with one door of its own to the outside. */
  ref: string
  /** Folder to write the jobs into. */
  to: string
  jobs: number
  /** Rooms of each job. */
  rooms: number
}

interface RoomFile {
  id: string
  name: string
  entry: string
  outline: { length: number }[]
  diagonals: { length: number }[]
  doors: { door: string }[]
}

interface HouseFile {
  doors: { id: string; name: string; between: string[]; swingsInto: string }[]
}

/**
 * Writes so many jobs after one, no two alike: each job's rooms are that job's room, which is a rectangle, and a little more, so that
 * nothing worked out for one serves another.
 */
export function archiveOfJobs({ from, ref, to, jobs, rooms }: ArchiveTask): void {
  mkdirSync(to, { recursive: true })
  cpSync(join(from, "catalogue.yaml"), join(to, "catalogue.yaml"))
  const [room] = roomsOf(join(from, ref))
  const house = parse(readFileSync(join(from, ref, "house.yaml"), "utf8")) as HouseFile
  const job = readFileSync(join(from, ref, "job.yaml"), "utf8")
  for (let index = 0; index < jobs; index++) {
    const own = `job-${String(index + 1).padStart(String(jobs).length, "0")}`
    const folder = join(to, own)
    mkdirSync(join(folder, "rooms"), { recursive: true })
    for (const name of ["products.yaml", "programme.yaml"]) cpSync(join(from, ref, name), join(folder, name))
    writeFileSync(
      join(folder, "job.yaml"),
      job.replace(/^ref: .*$/m, `ref: ${own}`).replace(/^code: .*$/m, `code: ${codeOf(index)}`),
    )
    const numbers = Array.from({ length: rooms }, (_, at) => at + 1)
    writeFileSync(
      join(folder, "house.yaml"),
      yamlOf({
        ...house,
        doors: numbers.flatMap((number) => house.doors.map((door) => renamed(door, number))),
      }),
    )
    for (const number of numbers)
      writeFileSync(
        join(folder, "rooms", `g${number}.yaml`),
        yamlOf(grown(room!, number, growthOf(index, number))),
      )
  }
}

/** Without anchors, which job files may not have. */
const yamlOf = (data: unknown) => stringify(data, { aliasDuplicateObjects: false })

/** What a room is longer and wider by, mm: a tenth of a metre for each room of a job; five millimetres for each job one way, then the other. */
const growthOf = (index: number, number: number) => ({
  wide: roomStep * (number - 1) + jobStep * (index % stepsWide),
  deep: roomStep * (number - 1) + jobStep * Math.floor(index / stepsWide),
})
const roomStep = 100
const jobStep = 5
const stepsWide = 40

function roomsOf(folder: string): RoomFile[] {
  return [parse(readFileSync(join(folder, "rooms", "g1.yaml"), "utf8")) as RoomFile]
}

function renamed(door: HouseFile["doors"][number], number: number): HouseFile["doors"][number] {
  const room = `G${number}`
  return { ...door, id: `D${number}`, between: ["outside", room], swingsInto: room }
}

/** A rectangular room made larger. */
function grown(room: RoomFile, number: number, by: { wide: number; deep: number }): RoomFile {
  const outline = room.outline.map((wall, at) => ({
    ...wall,
    length: wall.length + (at % 2 === 0 ? by.wide : by.deep),
  }))
  const [wide, deep] = outline.map((wall) => wall.length)
  return {
    ...room,
    id: `G${number}`,
    name: `${room.name} ${number}`,
    entry: `D${number}`,
    outline,
    diagonals: room.diagonals.map((each) => ({
      ...each,
      length: Math.round(Math.hypot(wide ?? 0, deep ?? 0)),
    })),
    doors: room.doors.map((door) => ({ ...door, door: `D${number}` })),
  }
}

/** A code for each job: its number in the letters that codes are made of. */
function codeOf(index: number): string {
  let left = index
  let code = ""
  for (let place = 0; place < codeLength; place++) {
    code = signs[left % signs.length] + code
    left = Math.floor(left / signs.length)
  }
  return code
}

const signs = "abcdefghjkmnpqrstvwxyz"
const codeLength = 8
