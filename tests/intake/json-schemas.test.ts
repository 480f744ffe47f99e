import { existsSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { jsonSchemas, schemaText } from "../../src/intake/json-schemas.ts"
import { smallTrades } from "./broken-jobs.ts"

type Node = { properties?: Record<string, Node>; anyOf?: Node[]; items?: Node; required?: string[] } & Record<
  string,
  unknown
>
const schemas = jsonSchemas(smallTrades) as Record<string, Node>

describe("jsonSchemas", () => {
  it("has a schema with keys for every kind of file", () => {
    expect(Object.keys(schemas)).toEqual([
      "job",
      "house",
      "room",
      "products",
      "programme",
      "money",
      "variations",
      "catalogue",
    ])
    for (const schema of Object.values(schemas)) {
      expect(schema.$schema).toBe("http://json-schema.org/draft-07/schema#")
      expect(Object.keys(schema.properties ?? {})).not.toEqual([])
      expect(schema.additionalProperties).toBe(false)
    }
  })

  it("splices the trades into rooms, doorways and chosen products", () => {
    const work = schemas.room?.properties?.work?.properties ?? {}
    expect(Object.keys(work)).toEqual(["floors", "joinery", "doors"])
    expect(Object.keys(work.floors?.properties ?? {})).toContain("finish")
    // Joinery has defaults for everything, so nothing behind its key is allowed.
    expect(work.joinery?.anyOf?.map((each) => each.type)).toEqual(["object", "null"])
    const door = schemas.house?.properties?.doors?.items?.properties?.work?.anyOf?.[0]
    expect(Object.keys(door?.properties ?? {})).toEqual(["hang", "leaf"])
    expect(Object.keys(schemas.products?.properties?.chosen?.properties ?? {})).toEqual(["board", "skirting"])
  })

  it("asks for no key that has a default", () => {
    expect(schemas.room?.required).not.toContain("holes")
    expect(schemas.room?.required).toContain("outline")
  })

  it("explains keys and keeps its own words to itself", () => {
    const text = Object.values(schemas).map(schemaText).join("")
    expect(text).toContain("never assumed")
    expect(text).not.toMatch(/"(slip|refersTo|kinds)":/)
  })

  it("is the same every time", () => {
    expect(Object.values(jsonSchemas(smallTrades)).map(schemaText)).toEqual(
      Object.values(schemas).map(schemaText),
    )
  })
})

const committed = new URL("../../jobs/.schema/", import.meta.url)

describe.skipIf(!existsSync(committed))("jobs/.schema", () => {
  it("is what the trades take now", async () => {
    const { trades } = await import("../../src/trades/index.ts")
    for (const [name, schema] of Object.entries(jsonSchemas(trades)))
      expect(readFileSync(new URL(`${name}.schema.json`, committed), "utf8"), name).toBe(schemaText(schema))
  })
})
