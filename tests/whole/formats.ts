/**
 * CSV read strictly by RFC 4180 (section 2): records end in CRLF, quotes are doubled inside quoted fields, no bare quote,
 * carriage return or line feed in an unquoted field.
 * @returns the records; throws with the place of the first offence
 */
export function strictCsv(text: string): string[][] {
  const records: string[][] = []
  let at = 0
  while (at < text.length) {
    const record: string[] = []
    for (;;) {
      const [field, end] = fieldAt(text, at)
      record.push(field)
      at = end
      if (text[at] !== ",") break
      at += 1
    }
    if (text.slice(at, at + 2) !== "\r\n") throw new Error(`no CRLF at ${at} after ${JSON.stringify(record)}`)
    at += 2
    records.push(record)
  }
  return records
}

function fieldAt(text: string, start: number): [string, number] {
  if (text[start] === '"') {
    const quoted = /"((?:[^"]|"")*)"/y
    quoted.lastIndex = start
    const found = quoted.exec(text)
    if (!found) throw new Error(`unended quote at ${start}`)
    return [(found[1] ?? "").replaceAll('""', '"'), quoted.lastIndex]
  }
  const bare = /[^",\r\n]*/y
  bare.lastIndex = start
  return [bare.exec(text)?.[0] ?? "", bare.lastIndex]
}

/** One event of a calendar file: its properties by name, parameters cut off, as written. */
export type CalendarEvent = Map<string, string>

/** Content lines of a calendar file, unfolded (RFC 5545, 3.1): a CRLF and one blank is no break. */
export function contentLines(text: string): string[] {
  return text
    .replace(/\r\n[ \t]/g, "")
    .split("\r\n")
    .filter((line) => line !== "")
}

/** The events of a calendar file. */
export function eventsOf(text: string): CalendarEvent[] {
  const events: CalendarEvent[] = []
  let open: CalendarEvent | null = null
  for (const line of contentLines(text)) {
    if (line === "BEGIN:VEVENT") open = new Map()
    else if (line === "END:VEVENT" && open) {
      events.push(open)
      open = null
    } else if (open) {
      const colon = line.indexOf(":")
      open.set(line.slice(0, colon).replace(/;.*/, ""), line.slice(colon + 1))
    }
  }
  return events
}

/** Paths of objects in plain data whose keys are not in order of code points. */
export function keysOutOfOrder(value: unknown, path = "$"): string[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => keysOutOfOrder(item, `${path}[${index}]`))
  if (value === null || typeof value !== "object") return []
  const keys = Object.keys(value)
  const own = keys.some((key, index) => index > 0 && keys[index - 1]! > key) ? [path] : []
  return [...own, ...Object.entries(value).flatMap(([key, item]) => keysOutOfOrder(item, `${path}.${key}`))]
}
