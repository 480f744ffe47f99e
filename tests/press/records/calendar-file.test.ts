import { describe, expect, it } from "vitest"
import { aftercareFile, calendarFile, folded } from "../../../src/press/records/calendar-file.ts"
import { setJob } from "../../../src/press/set-job.ts"
import { smallResult } from "../../fixtures/small-job.ts"
import { contentLines, eventsOf } from "../../whole/formats.ts"

async function fileWith(title: string, detail: string): Promise<string> {
  const result = await smallResult()
  const steps = result.programme.steps.map((each) => ({ ...each, step: { ...each.step, title, detail } }))
  return calendarFile(setJob("tiny", { ...result, programme: { ...result.programme, steps } }))
}

describe("the calendar file", () => {
  it("escapes what has a meaning in text: backslash, semicolon, comma, line feed (RFC 5545, 3.3.11)", async () => {
    const [event] = eventsOf(await fileWith("a\\b; c, d", "one\ntwo"))
    expect(event?.get("SUMMARY")).toBe("C2: a\\\\b\\; c\\, d")
    expect(event?.get("DESCRIPTION")).toBe(
      "joiners. one\\ntwo\\nNot sooner: first of its line: waits only for the start of the job.\\nAny delay moves something else.",
    )
  })

  it("cannot be made to hold a property of the author's", async () => {
    const lines = contentLines(await fileWith("x\r\nATTENDEE:mailto:x@example", "y\nBEGIN:VALARM"))
    expect(lines.filter((line) => /^(ATTENDEE|BEGIN:VALARM)/.test(line))).toEqual([])
  })

  it("gives moments in universal time: 08:00 on 1 March in London is 08:00 UTC, and stamps from the revision's day", async () => {
    const [event] = eventsOf(await fileWith("Lay", ""))
    expect(event?.get("DTSTART")).toBe("20270301T080000Z")
    expect(event?.get("DTSTAMP")).toBe("20270215T000000Z")
  })

  it("is the same each time", async () => {
    expect(await fileWith("Lay", "boards")).toBe(await fileWith("Lay", "boards"))
  })
})

describe("the calendar of aftercare", () => {
  const bad = "x\r\nATTENDEE:mailto:x@example\u2028BEGIN:VALARM\u0000; a, b\\c"

  it("has a whole day for each time something is due, and its own id", async () => {
    const events = eventsOf(aftercareFile(setJob("tiny", await smallResult())))
    expect(events.map((event) => event.get("DTSTART;VALUE=DATE") ?? event.get("DTSTART"))).toEqual([
      "20280303",
    ])
    expect(events[0]?.get("DTSTAMP")).toBe("20270215T000000Z")
    expect(new Set(events.map((event) => event.get("UID"))).size).toBe(events.length)
  })

  it("takes the name of a product and of the job as text, whatever they hold", async () => {
    const result = await smallResult((job) => ({
      job: { ...job.job, title: bad },
      products: new Map([...job.products].map(([id, each]) => [id, { ...each, name: bad }])),
    }))
    for (const text of [aftercareFile(setJob("tiny", result)), calendarFile(setJob("tiny", result))]) {
      const lines = contentLines(text)
      expect(lines.filter((line) => /^(ATTENDEE|BEGIN:VALARM)/.test(line))).toEqual([])
      expect(lines.filter((line) => line.startsWith("BEGIN:"))).toHaveLength(1 + eventsOf(text).length)
      expect(text.includes("\u0000")).toBe(false)
      expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/)
    }
    const [event] = eventsOf(aftercareFile(setJob("tiny", result)))
    expect(event?.get("DESCRIPTION")).toContain(
      "x\\nATTENDEE:mailto:x@example\\nBEGIN:VALARM \\; a\\, b\\\\c",
    )
  })
})

describe("folding", () => {
  const long = `DESCRIPTION:${"12.5 m², 门 🚪 ".repeat(30)}`

  it("keeps lines to 75 octets without taking a character apart (RFC 5545, 3.1)", () => {
    const lines = folded(`${long}\r\nEND:VEVENT\r\n`).split("\r\n")
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75)
    expect(lines.slice(1, -2).every((line) => line.startsWith(" "))).toBe(true)
    expect(contentLines(lines.join("\r\n"))).toEqual([long, "END:VEVENT"])
  })

  it("undoes what was folded by characters, and leaves short lines alone", () => {
    expect(folded("SUMMARY:ab\r\n\tcd\r\nEND:VEVENT\r\n")).toBe("SUMMARY:abcd\r\nEND:VEVENT\r\n")
  })
})
