import { parseArgs } from "node:util"
import { WrongUsage } from "../arguments.ts"
import type { Terminal } from "../terminal.ts"
import { benchBuild } from "./build.ts"
import { benchCutting } from "./cutting.ts"
import { benchJoinery } from "./joinery.ts"
import { benchProgramme } from "./programme.ts"
import { benchScale } from "./scale.ts"
import { benchSite } from "./site.ts"

const usage = `usage: npm run bench [-- joinery | build | scale [--jobs N,N,...] | site [--instances SITE] | cutting --instances DIR [--limit SECONDS] | programme --instances DIR [--limit SECONDS]]`

/** What a bench on instances is asked for. */
export interface InstanceBench {
  /** Folder of JSON instances. */
  instances: string
  limitSeconds: number
  print(line: string): void
}

/** Measurements over the instances of a folder. */
const overInstances: Record<string, (asked: InstanceBench) => unknown> = {
  cutting: benchCutting,
  programme: benchProgramme,
  site: ({ instances, print }) => benchSite({ folder: instances, print }),
}

/** Measurements that bring their own cases, as ratios in one run. */
const ofThemselves: Record<string, (asked: OwnCases) => Promise<unknown>> = {
  build: ({ print }) => benchBuild({ ...oneRoom, env: process.env, print }),
  joinery: (asked) => benchJoinery({ ...joineryCases, ...asked }),
  scale: ({ jobs, print }) => benchScale({ sizes: jobs, rooms: roomsOfAJob, print }),
  site: ({ print }) => benchSite({ folder: builtSite, print }),
}

/** What measurements with cases of their own are asked for. */
type OwnCases = Omit<InstanceBench, "instances"> & { jobs: number[] }

/** A socket moved in one room of the larger demo job. */
const oneRoom = {
  ref: "lock-house",
  changed: {
    file: "rooms/a1.yaml",
    find: "socket, wall: 3, fromLeft: 900",
    put: "socket, wall: 3, fromLeft: 950",
  },
}

/** Rooms of a job of an archive. */
const roomsOfAJob = 3

/** Where a build leaves what is to be published. */
const builtSite = "output/site"

/** Cases of the joinery measurement. */
const joineryCases = { rooms: 60, againstArcFlow: 30, againstFirstFit: 500 }

/** `npm run bench`: one measurement by name, over the instances of a folder or its own cases; without a name all that bring their own. */
export async function benchCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const { values, positionals } = told(args)
  const [name, ...more] = positionals
  const jobs = values.jobs.split(",").map(Number)
  const asked = { limitSeconds: Number(values.limit), jobs, print: terminal.out }
  if (more.length > 0 || !(asked.limitSeconds > 0) || !jobs.every(isCount)) throw new WrongUsage(usage)
  if (name === undefined && values.instances === undefined) {
    for (const measure of Object.values(ofThemselves)) await measure(asked)
    return 0
  }
  if (values.instances === undefined) {
    const measure = ofThemselves[name ?? ""]
    if (!measure) throw new WrongUsage(usage)
    await measure(asked)
    return 0
  }
  const bench = overInstances[name ?? ""]
  if (!bench) throw new WrongUsage(usage)
  await bench({ instances: values.instances, ...asked })
  return 0
}

const isCount = (jobs: number) => Number.isSafeInteger(jobs) && jobs > 0

function told(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        instances: { type: "string" },
        limit: { type: "string", default: "10" },
        jobs: { type: "string", default: "1,10,100,1000" },
      },
    })
  } catch (error) {
    throw new WrongUsage(`${error instanceof Error ? error.message : error}\n${usage}`)
  }
}
