import type { BuildRequest } from "../press/request.ts"
import { siteData } from "../press/site-data.ts"
import { prepareJobs } from "./prepare.ts"

/** The request of a build that no command started: all jobs, into `output/`, without paper. */
export async function standingRequest(): Promise<BuildRequest> {
  return { site: async () => siteData((await prepareJobs({ jobsDir: "jobs" })).jobs), staging: "output" }
}
