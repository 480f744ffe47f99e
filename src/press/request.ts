import type { OfficeRow } from "./office-list.ts"
import type { SetJob } from "./set-job.ts"

/** What a command hands to Eleventy: the jobs to set, and the folder to write into. */
export interface BuildRequest {
  /** The jobs, worked out; asked at every build, so that a preview sees what changed. */
  jobs(): Promise<readonly SetJob[]>
  /** Folder that everything is written into. */
  staging: string
  /** Rows of the office's list; those of the jobs unless given. */
  office?: readonly OfficeRow[] | undefined
}
