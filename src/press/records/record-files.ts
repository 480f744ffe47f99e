import type { SetJob } from "../set-job.ts"
import { aftercareFile, calendarFile } from "./calendar-file.ts"
import { csvFiles } from "./csv.ts"
import { jobJson } from "./job-json.ts"

/** A record of a job: a file of its private folder. */
export interface RecordFile {
  name: string
  text: string
  mime: string
}

/** Records are made once a job, though the archive, the folder and the office's list all ask for them. */
const made = new WeakMap<SetJob, RecordFile[]>()

/** The machine-readable files of a job, all but the manifest. */
export function recordFiles(job: SetJob): RecordFile[] {
  const before = made.get(job)
  if (before) return before
  const now = [
    { name: "job.json", text: jobJson(job), mime: "application/json" },
    ...csvFiles(job).map((file) => ({ ...file, mime: "text/csv" })),
    { name: "programme.ics", text: calendarFile(job), mime: "text/calendar" },
    { name: "aftercare.ics", text: aftercareFile(job), mime: "text/calendar" },
  ]
  made.set(job, now)
  return now
}
