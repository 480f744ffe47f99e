import { describe, expect, it } from "vitest"
import { type CheckNeeds, checkCommand } from "../../src/commands/check.ts"
import { type Mutation, smallTrades, withBrokenAsync } from "../intake/broken-jobs.ts"

async function checked(mutations: Mutation[], more: Partial<CheckNeeds> = {}, args: string[] = []) {
  const out: string[] = []
  const err: string[] = []
  const needs = {
    trades: smallTrades,
    out: (text: string) => out.push(text),
    err: (text: string) => err.push(text),
  }
  const status = await withBrokenAsync(mutations, (dir) =>
    checkCommand(["--jobs", dir, ...args], { ...needs, ...more } as CheckNeeds),
  )
  return { status, out, err }
}

describe("checkCommand", () => {
  it("is silent on the error outlet where all is well", async () => {
    expect(await checked([])).toEqual({
      status: 0,
      out: ["1 job read: 0 errors, 0 warnings, 0 notes"],
      err: [],
    })
  })

  it("prints every finding with its place and returns 1 for an error", async () => {
    const { status, err } = await checked([
      { file: "tiny/job.yaml", find: "humidity: 55", replace: "humidty: 55" },
      { file: "tiny/mony.yaml", text: "a: 1\n" },
    ])
    expect(status).toBe(1)
    expect(err.map((line) => line.split(" ")[0])).toEqual(["tiny/job.yaml:11:3:", "tiny/mony.yaml:1:1:"])
    expect(err[1]).toContain("warning: ")
  })

  it("returns 0 for warnings alone", async () => {
    expect((await checked([{ file: "tiny/mony.yaml", text: "a: 1\n" }])).status).toBe(0)
  })

  it("places what later stages find", async () => {
    const examine = () => [
      {
        code: "outline-not-closed",
        severity: "error" as const,
        message: "it does not close",
        at: { file: "rooms/c1.yaml", path: ["outline"] },
      },
    ]
    const { status, err } = await checked([], { examine })
    expect([status, err]).toEqual([1, ["tiny/rooms/c1.yaml:8:3: it does not close"]])
  })

  it("returns 2 for wrong usage and 1 for a job that is not there", async () => {
    expect((await checked([], {}, ["--hurry"])).status).toBe(2)
    expect((await checked([], {}, ["--only", "other"])).status).toBe(1)
  })
})
