import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import nunjucks from "nunjucks"
import { afterAll, describe, expect, it } from "vitest"
import { prepareJobs } from "../../../src/commands/prepare.ts"
import { drawn } from "../../../src/press/drawn.ts"
import { issuedSheet } from "../../../src/press/revisions/record.ts"
import { type RevisedSheet, setJob } from "../../../src/press/set-job.ts"

const top = new URL("../../..", import.meta.url).pathname
const folder = mkdtempSync(join(tmpdir(), "reprint-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** The sheets as they are set, by number: what a reader sees, told by the templates and not by our fingerprints. */
function seen(sheets: readonly RevisedSheet[]): Map<string, string> {
  const environment = new nunjucks.Environment(
    new nunjucks.FileSystemLoader(join(top, "templates/includes")),
    { autoescape: true },
  )
  environment.addFilter("drawn", drawn)
  environment.addFilter("share", () => "10%")
  const template =
    '{% import "blocks.njk" as blocks %}{{ sheet.title }}|{{ sheet.purpose }}|{{ sheet.datum }}|{{ place }}|{{ blocks.body(sheet) }}|{{ rests | join(";") }}'
  return new Map(
    sheets.map((sheet) => {
      const html = environment.renderString(template, {
        sheet,
        place: sheet.place,
        rests: sheet.restsInWords,
      })
      return [sheet.number, html.replaceAll(" changed", "")]
    }),
  )
}

async function job(changes: readonly { file: string; find: string; put: string }[]) {
  const jobs = mkdtempSync(join(folder, "jobs-"))
  for (const name of ["catalogue.yaml", "garden-room"])
    cpSync(join(top, "jobs", name), join(jobs, name), { recursive: true })
  for (const { file, find, put } of changes) {
    const path = join(jobs, file)
    const before = readFileSync(path, "utf8")
    expect(before, `${file} holds ${find}`).toContain(find)
    writeFileSync(path, before.replace(find, put))
  }
  const { jobs: set, findings } = await prepareJobs({ jobsDir: jobs })
  expect(findings.filter((finding) => finding.severity === "error")).toEqual([])
  return set[0]!
}

const room = "garden-room/rooms/g1.yaml"
const kinds: [string, { file: string; find: string; put: string }[]][] = [
  ["a comment", [{ file: room, find: "id: G1", put: "# a remark\nid: G1" }]],
  [
    "nothing but order of keys",
    [{ file: room, find: "name: Garden room\nstorey: ground", put: "storey: ground\nname: Garden room" }],
  ],
  ["a room's name", [{ file: room, find: "name: Garden room", put: "name: Orchard room" }]],
  ["a ceiling height", [{ file: room, find: "heights: [2400]", put: "heights: [2415]" }]],
  ["a door moved", [{ file: room, find: "fromLeft: 400", put: "fromLeft: 390" }]],
  ["a window's sill", [{ file: room, find: "sill: 900", put: "sill: 910" }]],
  ["a reveal", [{ file: room, find: "reveal: 120", put: "reveal: 130" }]],
  ["a socket moved", [{ file: room, find: "wall: 3, fromLeft: 500", put: "wall: 3, fromLeft: 560" }]],
  ["a colour's name", [{ file: room, find: "wallColour: wall colour 1", put: "wallColour: pale green" }]],
  ["a reading", [{ file: room, find: "value: 62", put: "value: 60" }]],
  [
    "the supplier of a product",
    [
      {
        file: "catalogue.yaml",
        find: "name: Skirting, supplier: timber merchant",
        put: "name: Skirting, supplier: timber yard",
      },
    ],
  ],
  [
    "a product's name",
    [{ file: "catalogue.yaml", find: "name: Foil-faced underlay", put: "name: Underlay with foil" }],
  ],
  ["a price", [{ file: "catalogue.yaml", find: 'price: "16.80"', put: 'price: "17.10"' }]],
  [
    "a lead time",
    [
      {
        file: "catalogue.yaml",
        find: "supplier: flooring supplier, lead: 10",
        put: "supplier: flooring supplier, lead: 21",
      },
    ],
  ],
  [
    "the start",
    [{ file: "garden-room/programme.yaml", find: "start: 2027-04-05", put: "start: 2027-04-12" }],
  ],
  ["a crew's name", [{ file: "garden-room/programme.yaml", find: "name: Decorator", put: "name: Painter" }]],
  ["the day's hours", [{ file: "garden-room/programme.yaml", find: 'to: "16:30"', put: 'to: "16:00"' }]],
  ["the air", [{ file: "garden-room/job.yaml", find: "humidity: 50", put: "humidity: 58" }]],
  [
    "a rulebook entry overridden",
    [
      {
        file: "garden-room/job.yaml",
        find: "carry:",
        put: "overrides:\n  - { id: saw-kerf, value: 2.5, reason: thin blade }\ncarry:",
      },
    ],
  ],
  [
    "the day it was prepared",
    [{ file: "garden-room/job.yaml", find: "on: 2027-03-01", put: "on: 2027-03-02" }],
  ],
  [
    "the longest that can be carried",
    [{ file: "garden-room/job.yaml", find: "longest: 5000", put: "longest: 2600" }],
  ],
]

describe("what must be printed again", () => {
  it("is, for 20 kinds of change, exactly the sheets that show something different", {
    timeout: 120_000,
  }, async () => {
    const before = await job([])
    const record = {
      revision: "A",
      on: "2027-03-01",
      by: "foreman",
      reason: "first",
      sheets: before.sheets.map(({ fingerprint: { number, title, hash, parts } }) =>
        issuedSheet.parse({ number, title, hash, parts }),
      ),
    }
    const shownBefore = seen(before.sheets)
    const counts: [string, number][] = []
    for (const [kind, changes] of kinds) {
      const after = await job(changes)
      const now = setJob("garden-room", after.result, [record])
      const again = now.sheets
        .filter((sheet) => sheet.revision.letter === "0" && sheet.kind !== "revision-log")
        .map((sheet) => sheet.number)
      const shown = seen(now.sheets)
      const different = [...shown]
        .filter(([number, html]) => !number.startsWith("J-84") && shownBefore.get(number) !== html)
        .map(([number]) => number)
      expect(again.sort(), kind).toEqual(different.sort())
      counts.push([kind, again.length])
    }
    expect(counts.slice(0, 2)).toEqual([
      ["a comment", 0],
      ["nothing but order of keys", 0],
    ])
    expect(
      counts.slice(2).filter(([kind, count]) => count === 0 && kind !== "the day it was prepared"),
    ).toEqual([])
  })
})
