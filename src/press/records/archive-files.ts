import type { Rules } from "../../rulebook/rules.ts"
import type { Attachment, ReadAttachment } from "../pdf/attachments.ts"
import { sha256 } from "../revisions/fingerprint.ts"
import type { SetJob } from "../set-job.ts"
import { jsonText } from "./plain.ts"
import type { RecordFile } from "./record-files.ts"

/** The embedded list of sums: sha256 of every other embedded file. */
export const sumsName = "sums.json"

/**
 * What an archive pack carries inside it: the job's own files, its computed results, every rulebook entry, and the sums of all
 * of these.
 */
export function archiveFiles(
  job: SetJob,
  sources: readonly Attachment[],
  records: readonly RecordFile[],
): Attachment[] {
  const results = records.map(({ name, text, mime }) =>
    data(name, text, { mime, description: `Computed results of the job: ${name}` }),
  )
  const rulebook = data("rulebook.json", rulebookText(job.result.rules), {
    mime: "application/json",
    description: "Every rulebook entry as it stood for this job",
  })
  const files = [...sources, ...results, rulebook]
  const sums = Object.fromEntries(files.map(({ name, bytes }) => [name, sha256(bytes)]))
  return [
    ...files,
    data(sumsName, jsonText(sums), {
      mime: "application/json",
      description: "sha256 of every file embedded here",
    }),
  ]
}

/** Names of embedded files that are not as they were archived, of listed files that are missing, and of files that were added. */
export function alteredFiles(files: readonly ReadAttachment[]): string[] {
  const list = files.find((each) => each.name === sumsName)
  const sums = list ? sumsIn(list) : {}
  const others = files.filter((each) => each.name !== sumsName)
  const altered = others
    .filter(({ name, bytes, intact }) => !intact || sums[name] !== sha256(bytes))
    .map(({ name }) => name)
  const here = new Set(others.map(({ name }) => name))
  const missing = Object.keys(sums).filter((name) => !here.has(name))
  return [...altered, ...missing, ...(list?.intact === false ? [sumsName] : [])].sort()
}

function sumsIn(list: ReadAttachment): Record<string, string> {
  try {
    return JSON.parse(new TextDecoder().decode(list.bytes)) as Record<string, string>
  } catch {
    return {}
  }
}

function rulebookText(rules: Rules): string {
  return jsonText(Object.fromEntries(rules.all().map((entry) => [entry.id, entry])))
}

function data(name: string, text: string, about: Pick<Attachment, "mime" | "description">): Attachment {
  return { name, bytes: new TextEncoder().encode(text), relationship: "Data", ...about }
}
