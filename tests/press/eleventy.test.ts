import type { EleventyConfig } from "@11ty/eleventy"
import { describe, expect, it } from "vitest"
import { Fault } from "../../src/kernels/fault.ts"
import type { Column } from "../../src/kernels/paper.ts"
import { configureEleventy } from "../../src/press/eleventy.ts"
import { siteData } from "../../src/press/site-data.ts"

type Filter = (...args: unknown[]) => unknown

/** What the configuration asks of Eleventy, by the name of the call. */
function configured(globalData: Record<string, unknown>) {
  const calls: Record<string, unknown[]> = {}
  const filters: Record<string, Filter> = {}
  const called =
    (name: string) =>
    (...args: unknown[]) => {
      if (name === "addNunjucksFilter") filters[String(args[0])] = args[1] as Filter
      else calls[name] = args
    }
  const config = new Proxy(
    {},
    { get: (_, name) => (name === "globalData" ? globalData : called(String(name))) },
  )
  configureEleventy(config as unknown as EleventyConfig)
  return { calls, filters }
}

const request = { site: async () => siteData([]), staging: "/tmp/somewhere" }

describe("Eleventy's configuration", () => {
  it("escapes everything, writes into the request's folder, and needs a request", () => {
    const { calls } = configured({ request })
    expect(calls.setNunjucksEnvironmentOptions).toEqual([{ autoescape: true }])
    expect(calls.setOutputDirectory).toEqual(["/tmp/somewhere"])
    expect(() => configured({})).toThrow(Fault)
  })

  it("asks for the jobs when the data is wanted, not before", async () => {
    let asked = 0
    const site = async () => {
      asked += 1
      return siteData([])
    }
    const { calls } = configured({ request: { ...request, site } })
    expect(asked).toBe(0)
    const [name, data] = calls.addGlobalData as [string, () => Promise<{ documents: unknown[] }>]
    expect(name).toBe("site")
    expect((await data()).documents).toEqual([])
    expect(asked).toBe(1)
  })

  it("shares a table's width out so that it is filled, whatever its columns say", () => {
    const share = configured({ request }).filters.share!
    const tables: Column[][] = [
      [
        { label: "a", width: 30 },
        { label: "b", width: 60 },
        { label: "c", as: "tick" },
      ],
      [{ label: "a" }, { label: "b", as: "figure" }, { label: "c", as: "write" }],
      [{ label: "a", width: 1 }],
    ]
    for (const columns of tables) {
      const shares = columns.map((column) => Number(String(share(column, columns)).replace("%", "")))
      expect(shares.reduce((sum, each) => sum + each, 0)).toBeCloseTo(100, 1)
      expect(Math.min(...shares)).toBeGreaterThan(5)
    }
  })

  it("climbs from a file to the folder its path starts in", () => {
    const climb = configured({ request }).filters.climb!
    expect(climb("print/garden-room/job")).toBe("../../")
    expect(climb("job")).toBe("")
  })
})
