import { existsSync, readdirSync } from "node:fs"
import { basename, join } from "node:path"
import { jobTooBig, linkLeadsOut, missingFile, type Saying, tooManyFiles, unknownFile } from "./messages.ts"
import { nearest } from "./nearest.ts"
import { leadsOut, type ReadText, readText } from "./text-file.ts"
import { type YamlFile, yamlFile } from "./yaml-file.ts"

/** The files of one job folder. */
export interface JobFiles {
  job: YamlFile
  house: YamlFile
  products: YamlFile
  programme: YamlFile
  money: YamlFile | null
  variations: YamlFile | null
  rooms: YamlFile[]
  issues: YamlFile[]
  /** Files and folders that are not read, each with what is said of it as its finding. */
  refused: YamlFile[]
}

/** Most files of one subfolder; a house has fewer rooms. */
const mostFiles = 200

/** Largest job that is read, characters of all its files together: some two hundred rooms with work in each. */
export const largestJob = 2_097_152

const bigRefused: ReadText = { refused: jobTooBig(largestJob), line: 1, column: 1 }

/** Reads every file of a job's folder that the format knows; what else looks like one of its YAML files is named. */
export function readFolder(dir: string): JobFiles {
  const ref = basename(dir)
  let left = largestJob
  const read = (file: string) => {
    const text = left < 0 ? bigRefused : readText(join(dir, file), dir)
    if ("text" in text) left -= text.text.length
    return yamlFile(file, `${ref}/${file}`, left < 0 ? bigRefused : text)
  }
  const readIfThere = (file: string) => (existsSync(join(dir, file)) ? read(file) : null)
  const rooms = listed(dir, "rooms")
  const issues = listed(dir, "issues")
  return {
    job: read("job.yaml"),
    house: read("house.yaml"),
    products: read("products.yaml"),
    programme: read("programme.yaml"),
    money: readIfThere("money.yaml"),
    variations: readIfThere("variations.yaml"),
    rooms: rooms.files.map(read),
    issues: issues.files.map(read),
    refused: [...rooms.refused, ...withoutRooms(rooms), ...issues.refused, ...strays(dir)].map(
      ({ file, saying }) => yamlFile(file, `${ref}/${file}`, { refused: saying, line: 1, column: 1 }),
    ),
  }
}

/** Every file that was read, in the order findings are listed in. */
export function filesInOrder(files: JobFiles): YamlFile[] {
  const { job, house, rooms, products, programme, money, variations, issues, refused } = files
  const optional = [money, variations].filter((file) => file !== null)
  return [job, house, ...rooms, products, programme, ...optional, ...issues, ...refused]
}

/** Names in natural order: a2 before a10. */
export function naturalOrder(one: string, other: string): number {
  return collator.compare(one, other) || (one < other ? -1 : Number(one > other))
}

const collator = new Intl.Collator("en-GB", { numeric: true })

interface Refused {
  file: string
  saying: Saying
}

const known = ["job.yaml", "house.yaml", "products.yaml", "programme.yaml", "money.yaml", "variations.yaml"]

function listed(dir: string, folder: string): { files: string[]; refused: Refused[] } {
  const path = join(dir, folder)
  const files: string[] = []
  const refused: Refused[] = []
  for (const name of namesIn(path)) {
    const file = `${folder}/${name}`
    if (name.endsWith(".yaml") && !name.startsWith(".")) files.push(file)
    else if (looksLikeYaml(name))
      refused.push({ file, saying: unknownFile(file, file.replace(/\.\w+$/, ".yaml")) })
  }
  if (existsSync(path) && leadsOut(path, dir))
    return { files: [], refused: [{ file: folder, saying: linkLeadsOut() }] }
  if (files.length > mostFiles)
    return { files: [], refused: [{ file: folder, saying: tooManyFiles(files.length, mostFiles) }] }
  return { files, refused }
}

/** A job without a room has nothing to print. */
function withoutRooms({ files, refused }: { files: string[]; refused: Refused[] }): Refused[] {
  return files.length || refused.length
    ? []
    : [{ file: "rooms", saying: missingFile("a room's file, rooms/*.yaml,") }]
}

function strays(dir: string): Refused[] {
  return namesIn(dir)
    .filter((name) => looksLikeYaml(name) && !known.includes(name))
    .map((file) => ({ file, saying: unknownFile(file, nearest(file, known)) }))
}

function looksLikeYaml(name: string): boolean {
  return /\.ya?ml$/i.test(name)
}

function namesIn(path: string): string[] {
  try {
    return readdirSync(path).toSorted(naturalOrder)
  } catch {
    return []
  }
}
