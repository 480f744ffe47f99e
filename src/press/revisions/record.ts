import { z } from "zod"
import { day, line, text } from "../../intake/schema/values.ts"

const hash = z.string().regex(/^[0-9a-f]{64}$/)
const shortHash = z.string().regex(/^[0-9a-f]{12}$/)

/** One part of a sheet as it was issued: what it is called, its fingerprint, and that of each row where it is a table. */
export const issuedPart = z.strictObject({
  name: z.string().max(400),
  hash: shortHash,
  rows: z.array(shortHash).optional(),
})
export type IssuedPart = z.infer<typeof issuedPart>

/** One sheet as it was issued; its parts are kept where it changed with this issue. */
export const issuedSheet = z.strictObject({
  number: z.string().min(1).max(80),
  title: z.string().max(400),
  hash,
  parts: z.array(issuedPart).optional(),
})
export type IssuedSheet = z.infer<typeof issuedSheet>

/** The days of every step as they were issued, so that a later build can say what moved. */
export const issuedDates = z.strictObject({
  finish: day,
  firstNight: day.nullable(),
  steps: z
    .array(
      z.strictObject({
        step: z.string().min(1).max(120),
        start: day,
        finish: day,
        hours: z.number().min(0),
        wait: z.number().min(0),
      }),
    )
    .max(5000),
})

/** `issues/<letter>.yaml`: what was issued, when, by whom and why. Written once by the issue command, never changed. */
export const issueRecord = z
  .strictObject({
    revision: z.string().regex(/^[A-Z]{1,2}$/),
    on: day,
    by: line,
    reason: text,
    programme: issuedDates.optional(),
    sheets: z.array(issuedSheet).max(5000),
  })
  .meta({
    id: "issue",
    title: "issues/*.yaml",
    description: "A revision as it was issued; written by the issue command.",
  })
export type IssueRecord = z.infer<typeof issueRecord>

/** The letter after a letter: A, B ... Z, AA, AB ... */
export function nextLetter(last: string | undefined): string {
  if (last === undefined) return "A"
  const end = last.charCodeAt(last.length - 1)
  if (end < "Z".charCodeAt(0)) return last.slice(0, -1) + String.fromCharCode(end + 1)
  return `${last.length === 1 ? "A" : nextLetter(last.slice(0, -1))}A`
}

/** Place of a revision letter in the order of issue: A 1, B 2 ... AA 27. */
export function letterRank(letter: string): number {
  return [...letter].reduce((rank, sign) => rank * 26 + sign.charCodeAt(0) - "A".charCodeAt(0) + 1, 0)
}
