import { beforeAll, describe, expect, it } from "vitest"
import { Fault } from "../../src/kernels/fault.ts"
import { type SetJob, setJob } from "../../src/press/set-job.ts"
import { type SiteData, siteData } from "../../src/press/site-data.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"

let job: SetJob
let data: SiteData

beforeAll(async () => {
  const override = { id: "saw-kerf", value: 4, reason: "wider blade" }
  const result = await smallResult((read) => ({
    money: smallMoney,
    job: { ...read.job, client: "Secret owners", overrides: [override] },
  }))
  job = setJob("tiny", result)
  data = siteData([job])
})

describe("what the templates are given", () => {
  it("has a page for every sheet's paper, and a hosted copy only of sheets that may be published", () => {
    expect(data.all.map((page) => page.sheet.number)).toEqual(job.sheets.map((sheet) => sheet.number))
    expect(data.hosted.map((page) => page.sheet.number)).toEqual(
      job.sheets.filter((sheet) => sheet.hosted).map((sheet) => sheet.number),
    )
    expect(data.hosted.length).toBeLessThan(data.all.length)
    expect(data.revisions).toHaveLength(data.all.length)
  })

  it("puts one document to print for each pack into the private half, and for each hosted sheet beside its copy", () => {
    const paths = data.documents.map((document) => document.path)
    expect(new Set(paths).size).toBe(paths.length)
    expect(paths.filter((path) => path.startsWith("print/"))).toEqual(
      job.packs.map((pack) => `print/tiny/${pack.id}`),
    )
    expect(paths.filter((path) => path.startsWith("site/"))).toEqual(
      data.hosted.map((page) => `site/7k3m9x2q/${page.sheet.path}/sheet`),
    )
  })

  it("publishes nothing of the client or of money", () => {
    const site = JSON.stringify([data.jobs[0]?.groups, data.hosted])
    const paper = JSON.stringify(data.documents.filter((document) => document.path.startsWith("site/")))
    for (const secret of ["Secret owners", "417.33", "31.17", "£"]) {
      expect(site).not.toContain(secret)
      expect(paper).not.toContain(secret)
    }
  })

  it("lists on the hub only what is published, the job's first and then room by room", () => {
    const groups = data.jobs[0]?.groups ?? []
    expect(groups.map((group) => group.title)).toEqual(["The job", "C1 hall", "C2 living room"])
    expect(groups.flatMap((group) => group.sheets).length).toBe(data.hosted.length)
  })

  it("says beside an entry of the rulebook that the job overrides it, and why", () => {
    const saw = data.all.find((page) => page.sheet.kind === "saw")
    expect(saw?.rests).toContain("saw-kerf (overridden: 4 mm, wider blade)")
    expect(saw?.rests).toContain("saw-offcut-keep")
  })

  it("names the room at the head of its sheets and the job at the head of the others", () => {
    const place = (kind: string, room: string | null) =>
      data.all.find((page) => page.sheet.kind === kind && page.sheet.room === room)?.place
    expect(place("glance", "C2")).toBe("C2  living room")
    expect(place("saw", null)).toBe("One hall and one room")
  })
})

describe("setting a job", () => {
  it("refuses two sheets with one number: only we can cause that", async () => {
    const { result } = job
    const rooms = [...result.house.rooms, result.house.rooms[1]!]
    expect(() => setJob("tiny", { ...result, house: { ...result.house, rooms } })).not.toThrow()
    const twin = { ...result.house.rooms[1]!, id: "c2" }
    expect(() =>
      setJob("tiny", {
        ...result,
        house: { ...result.house, rooms: [...result.house.rooms, twin] },
        results: [...result.results, { ...result.results[1]!, room: twin }],
      }),
    ).toThrow(Fault)
  })
})
