import { beforeAll, describe, expect, it } from "vitest"
import { csvFiles, csvText } from "../../../src/press/records/csv.ts"
import { setJob } from "../../../src/press/set-job.ts"
import { smallResult } from "../../fixtures/small-job.ts"
import { strictCsv } from "../../whole/formats.ts"

describe("text as CSV", () => {
  it("keeps to RFC 4180, section 2: CRLF, quotes doubled, commas and line ends inside quotes", () => {
    const text = csvText(
      ["a", "b"],
      [
        ['x"y', "1,2"],
        ["line\r\nfeed", 3.5],
      ],
    )
    expect(text).toBe('a,b\r\n"x""y","1,2"\r\n"line\r\nfeed",3.5\r\n')
    expect(strictCsv(text)).toEqual([
      ["a", "b"],
      ['x"y', "1,2"],
      ["line\r\nfeed", "3.5"],
    ])
  })

  it.each([
    "=1+1",
    "+44",
    "-2 mm",
    "@SUM(A1)",
    "\tx",
    "\rx",
    "\n=1",
    '=HYPERLINK("https://x","y")',
    "  =1+1",
    "\u00a0=1+1",
    "\uff1d1+1",
    "\uff0b1",
    "\uff0d1",
    "\uff20x",
  ])(
    "%j is set off, so that no spreadsheet runs it (OWASP, CSV injection: = + - @ tab and return)",
    (cell) => {
      const [, [first = ""] = []] = strictCsv(csvText(["a"], [[cell]]))
      expect(first).toBe(`'${cell}`)
    },
  )

  it("leaves figures and other text as they are", () => {
    expect(strictCsv(csvText(["a", "b", "c"], [[-2, "2 - 1", "a=b"]]))[1]).toEqual(["-2", "2 - 1", "a=b"])
  })
})

describe("the tables of a job", () => {
  let files: Map<string, string[][]>
  beforeAll(async () => {
    const result = await smallResult((job) => ({
      products: new Map([...job.products].map(([id, each]) => [id, { ...each, name: `=cmd|${each.name}` }])),
    }))
    const schedule = [
      { door: "d-living", width: 762, note: "trim 3" },
      { door: "d-front", fire: true },
    ]
    const doors = {
      ...result.results[0]!,
      work: { ...result.results[0]!.work, results: { doorSchedule: schedule } },
    }
    files = new Map(
      csvFiles(setJob("tiny", { ...result, results: [...result.results, doors] })).map(({ name, text }) => [
        name,
        strictCsv(text),
      ]),
    )
  })

  it("are four, with as many cells in each row as in its head", () => {
    expect([...files.keys()]).toEqual(["orders.csv", "cut-list.csv", "door-schedule.csv", "programme.csv"])
    for (const [head = [], ...rows] of files.values())
      expect(rows.every((row) => row.length === head.length)).toBe(true)
  })

  it("set off a product's name that begins like a formula", () => {
    expect(files.get("orders.csv")?.[1]?.[2]).toBe("'=cmd|oak board 14")
  })

  it("list every piece to saw once", () => {
    const marks =
      files
        .get("cut-list.csv")
        ?.slice(1)
        .map((row) => row[3]) ?? []
    expect([...marks].sort()).toEqual(["C2-1-S1", "C2-2-S1", "C2-3-S1", "C2-4-S1"])
  })

  it("have a column for each thing any door says", () => {
    expect(files.get("door-schedule.csv")).toEqual([
      ["door", "width", "note", "fire"],
      ["d-living", "762", "trim 3", ""],
      ["d-front", "", "", "true"],
    ])
  })

  it("date steps by the clock of the site", () => {
    expect(files.get("programme.csv")?.[1]?.slice(0, 8)).toEqual([
      "floors/C2/lay",
      "Lay",
      "C2",
      "floors",
      "joiners",
      "2",
      "2027-03-01",
      "08:00",
    ])
  })
})
