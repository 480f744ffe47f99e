import { describe, expect, it } from "vitest"
import { contentLines, eventsOf, keysOutOfOrder, strictCsv } from "./formats.ts"

describe("the strict reader of CSV", () => {
  it("reads the forms that RFC 4180 section 2 shows", () => {
    expect(strictCsv('aaa,bbb,ccc\r\nzzz,"b\r\nbb","x""y"\r\n')).toEqual([
      ["aaa", "bbb", "ccc"],
      ["zzz", "b\r\nbb", 'x"y'],
    ])
  })

  it.each(["a,b\n", "a,b", 'a,b"c\r\n', '"a\r\n', '"a"b\r\n'])("refuses %j", (text) => {
    expect(() => strictCsv(text)).toThrow()
  })
})

describe("the reader of calendar files", () => {
  it("unfolds lines as RFC 5545 section 3.1 shows", () => {
    const folded = "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.\r\n"
    expect(contentLines(folded)).toEqual([
      "DESCRIPTION:This is a long description that exists on a long line.",
    ])
  })

  it("finds events", () => {
    const text =
      "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nDTSTART;VALUE=DATE:20270405\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
    expect(eventsOf(text)).toEqual([new Map([["DTSTART", "20270405"]])])
  })
})

describe("the check of keys", () => {
  it("names what is out of order, however deep", () => {
    expect(keysOutOfOrder({ a: 1, b: [{ d: 1, c: 2 }] })).toEqual(["$.b[0]"])
    expect(keysOutOfOrder({ a: 1, b: [{ c: 2, d: 1 }] })).toEqual([])
  })
})
