import { parseArgs } from "node:util"
import { WrongUsage } from "../arguments.ts"
import type { Terminal } from "../terminal.ts"
import { benchProgramme } from "./programme.ts"

const usage = `usage: npm run bench -- [cutting|programme] --instances DIR [--limit SECONDS]`

/** What a bench on instances is asked for. */
export interface InstanceBench {
  /** Folder of JSON instances. */
  instances: string
  limitSeconds: number
  print(line: string): void
}

const benches: Record<string, (asked: InstanceBench) => Promise<void> | void> = {
  programme: benchProgramme,
}

/** `npm run bench`: one measurement by name, over the instances of a folder. */
export async function benchCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { instances: { type: "string" }, limit: { type: "string", default: "10" } },
  })
  const bench = benches[positionals[0] ?? ""]
  if (!bench || values.instances === undefined) throw new WrongUsage(usage)
  await bench({ instances: values.instances, limitSeconds: Number(values.limit), print: terminal.out })
  return 0
}
