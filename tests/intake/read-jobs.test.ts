import { describe, expect, it } from "vitest"
import { readJobs } from "../../src/intake/read-jobs.ts"
import { soundCases } from "../broken/cases/across.ts"
import { itFindsExactly } from "./broken-cases.ts"
import { readBroken, smallTrades, withBroken } from "./broken-jobs.ts"

describe("odd but sound jobs", () => {
  itFindsExactly(soundCases)
})

describe("sound jobs", () => {
  it("gives the whole job with defaults, works and sources", () => {
    const { jobs, findings } = readBroken([])
    expect(findings).toEqual([])
    const job = jobs[0]?.job
    expect(job?.rooms.map((room) => [room.id, room.file])).toEqual([
      ["C1", "rooms/c1.yaml"],
      ["C2", "rooms/c2.yaml"],
    ])
    expect(job?.works.get("C2")?.get("joinery")).toEqual({ skirting: true })
    expect(job?.house.doors.map((door) => door.work)).toEqual([{}, { hang: "new", leaf: "leaf-762" }])
    expect([...(job?.products.keys() ?? [])]).toEqual(["oak-14", "skirting-145", "leaf-762"])
    expect(job?.chosen.get("board")).toBe("oak-14")
    expect(job?.chosen.get("constructor")).toBeUndefined()
    expect(job?.sources.map((source) => source.file)).toContain("../catalogue.yaml")
  })

  it("keeps markup as text", () => {
    const html = soundCases.find((each) => each.name === "HTML in a name")!
    expect(readBroken(html.mutations).jobs[0]?.job?.rooms[0]?.name).toBe(
      "<b onclick=alert(1)>hall</b> & {{ 1 + 1 }}",
    )
  })

  it("orders rooms naturally", () => {
    const copies = ["A10", "A2"].flatMap((id) => [
      { copy: "tiny/rooms/c2.yaml", to: `tiny/rooms/${id.toLowerCase()}.yaml` },
      { file: `tiny/rooms/${id.toLowerCase()}.yaml`, find: "id: C2", replace: `id: ${id}` },
      {
        file: `tiny/rooms/${id.toLowerCase()}.yaml`,
        find: "entry: d-living",
        replace: `entry: d-${id}`,
      },
      { file: `tiny/rooms/${id.toLowerCase()}.yaml`, find: "door: d-living", replace: `door: d-${id}` },
      {
        file: "tiny/house.yaml",
        find: "occupied:",
        replace: `  - { id: d-${id}, name: way, between: [cupboard, ${id}], lining: none, lengthsTo: stud, heightsFrom: deck, widths: [800], heights: [2000], wall: 100 }\noccupied:`,
      },
    ])
    const [read] = readBroken(copies).jobs
    expect(read?.findings).toEqual([])
    expect(read?.job?.rooms.map((room) => room.id)).toEqual(["A2", "A10", "C1", "C2"])
  })
})

describe("which jobs are read", () => {
  it("reads one job where one is asked for, and names the nearest where there is none", () => {
    withBroken([{ copy: "tiny", to: "other" }], (jobsDir) => {
      const only = (ref: string) => readJobs({ jobsDir, only: ref, trades: smallTrades })
      expect(only("tiny").jobs.map((job) => job.ref)).toEqual(["tiny"])
      const [missing] = only("tinny").findings
      expect(missing?.code).toBe("no-such-job")
      expect(missing?.mend).toContain("tiny")
      expect(only("../jobs/tiny").findings.map((finding) => finding.code)).toEqual(["no-such-job"])
    })
  })

  it("says so where there is no folder of jobs", () => {
    const { findings } = readJobs({ jobsDir: "/no/such/folder", trades: smallTrades })
    expect(findings.map((finding) => finding.code)).toEqual(["no-jobs"])
  })

  it("has no job where any finding is an error, and a job where there are warnings only", () => {
    const [wrong] = readBroken([{ file: "tiny/job.yaml", find: "ref: tiny", replace: "ref: other" }]).jobs
    expect(wrong?.job).toBeUndefined()
    const [warned] = readBroken([{ file: "tiny/mony.yaml", text: "rates: []\n" }]).jobs
    expect(warned?.job).toBeDefined()
  })
})

describe("locate", () => {
  it("gives the place of any finding, also where nothing is written", () => {
    const [read] = readBroken([]).jobs
    const at = (file: string, ...path: (string | number)[]) => read?.locator()({ file, path })
    expect(at("rooms/c2.yaml", "outline", 1, "length")).toEqual({
      file: "tiny/rooms/c2.yaml",
      line: 9,
      column: 15,
    })
    expect(at("rooms/c2.yaml", "outline")).toEqual({ file: "tiny/rooms/c2.yaml", line: 8, column: 3 })
    expect(at("rooms/c2.yaml", "work", "joinery", "skirting")).toEqual({
      file: "tiny/rooms/c2.yaml",
      line: 22,
      column: 3,
    })
    expect(at("../catalogue.yaml", "products", 0, "id")).toEqual({
      file: "catalogue.yaml",
      line: 2,
      column: 9,
    })
    expect(at("rooms/none.yaml", "id")).toEqual({ file: "tiny/rooms/none.yaml", line: 1, column: 1 })
  })
})
