import { describe, expect, it } from "vitest"
import { z } from "zod"
import { keysOf, schemaAt, walkSchema } from "../../src/intake/schema-walk.ts"

const marked = z.number().meta({ mark: "m" })
const schema = z.strictObject({
  plain: marked.optional(),
  list: z.array(z.strictObject({ deep: marked.default(3) })).default([]),
  either: z.union([z.literal("a"), marked]),
  kinds: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("one"), x: marked }),
    z.strictObject({ kind: z.literal("two"), y: marked }),
  ]),
  byName: z.record(z.string(), marked),
  pair: z.tuple([marked, z.string()]),
})

const value = {
  plain: 1,
  list: [{ deep: 1 }, "no mapping"],
  either: 4,
  kinds: { kind: "two", y: 5, x: 6 },
  byName: { p: 7 },
  pair: [8, "text"],
}

describe("walkSchema", () => {
  it("comes to every marked value, through wrappers, lists, unions and records", () => {
    const found: string[] = []
    walkSchema(schema, value, ({ meta, path }) => {
      if (meta.mark === "m") found.push(path.join("."))
    })
    expect(found).toEqual(["plain", "list.0.deep", "kinds.y", "byName.p", "pair.0"])
  })

  it("takes a value of any shape", () => {
    for (const odd of [null, 1, "text", [], [[[]]], { list: { 0: 1 } }, { pair: "text" }])
      expect(() => walkSchema(schema, odd, () => undefined)).not.toThrow()
  })
})

describe("keysOf", () => {
  it("knows the keys at a place, led by what is written", () => {
    expect(keysOf(schemaAt(schema, value, ["list", 0]), value.list[0])).toEqual(["deep"])
    expect(keysOf(schemaAt(schema, value, ["kinds"]), value.kinds)).toEqual(["kind", "y"])
    expect(keysOf(schemaAt(schema, value, ["nothing", "here"]), undefined)).toEqual([])
    expect(keysOf(schemaAt(schema, value, ["constructor"]), undefined)).toEqual([])
  })
})
