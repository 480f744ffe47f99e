import { prepareJobs } from "../../src/commands/prepare.ts"
import type { SheetModel } from "../../src/kernels/paper.ts"

const jobsDir = new URL("../../jobs", import.meta.url).pathname
const { jobs } = await prepareJobs({ jobsDir, only: "lock-house" })

/** The demo house with people in it, worked out. */
export const house = jobs[0]!.result

/** All that a sheet says, in one line. */
export function textOf(sheet: SheetModel): string {
  return JSON.stringify(sheet.blocks)
}
