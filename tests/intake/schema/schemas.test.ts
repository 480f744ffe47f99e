import { describe, expect, it } from "vitest"
import type { z } from "zod"
import { houseFile } from "../../../src/intake/schema/house.ts"
import { jobFile } from "../../../src/intake/schema/job.ts"
import { moneyFile } from "../../../src/intake/schema/money.ts"
import { catalogueFile, productKinds, productsFile } from "../../../src/intake/schema/products.ts"
import { programmeFile } from "../../../src/intake/schema/programme.ts"
import { roomFile } from "../../../src/intake/schema/room.ts"
import { amount, clockTime, day, length, level, line } from "../../../src/intake/schema/values.ts"
import { variation, variationsFile } from "../../../src/intake/schema/variations.ts"
import { moneyOf, programmeOf } from "../../fixtures/programme.ts"
import { houseOf, roomWritten } from "../../fixtures/rooms.ts"
import { smallJob } from "../../fixtures/small-job.ts"

const files: [string, z.ZodType, unknown][] = [
  ["job.yaml", jobFile, smallJob().job],
  ["house.yaml", houseFile, houseOf()],
  ["a room", roomFile, roomWritten()],
  ["products.yaml", productsFile, { chosen: {} }],
  ["catalogue.yaml", catalogueFile, { products: [...smallJob().products.values()] }],
  ["programme.yaml", programmeFile, programmeOf()],
  ["money.yaml", moneyFile, moneyOf()],
  [
    "variations.yaml",
    variationsFile,
    {
      variations: [{ id: "V1", on: "2027-02-01", asked: "client", what: "a shelf", rooms: [{ room: "C2" }] }],
    },
  ],
]

describe.each(files)("%s", (_, schema, sound) => {
  it("takes what is sound and fills in its defaults the same way twice", () => {
    const once = schema.parse(sound)
    expect(schema.parse(once)).toEqual(once)
  })

  it("takes no key that it does not know", () => {
    const { success, error } = schema.safeParse({ ...(sound as object), colour: "red" })
    expect(success).toBe(false)
    expect(error?.issues.map((issue) => issue.code)).toEqual(["unrecognized_keys"])
  })

  it("has a title and a description for the editor", () => {
    expect(schema.meta()?.title).toMatch(/\S/)
    expect(schema.meta()?.description).toMatch(/\S/)
  })
})

describe("a variation", () => {
  it("is accepted, declined or open, never both", () => {
    const given = { id: "V1", on: "2027-02-01", asked: "client", what: "a shelf" }
    const both = { ...given, accepted: "2027-02-02", declined: "2027-02-02" }
    expect(variation.safeParse(given).success).toBe(true)
    expect(variation.safeParse(both).error?.issues.map((issue) => issue.message)).toEqual([
      "expected `accepted` or `declined`, not both",
    ])
  })
})

describe("values", () => {
  const takes = (schema: z.ZodType, value: unknown) => schema.safeParse(value).success

  it.each([
    ["2028-02-29", true],
    ["2027-02-29", false],
    ["2027-13-01", false],
    ["2027-3-1", false],
    ["2027-03-01T00:00", false],
  ])("the day %s: %s (ISO 8601-1:2019, 5.2.2)", (value, taken) => {
    expect(takes(day, value)).toBe(taken)
  })

  it.each([
    ["00:00", true],
    ["23:59", true],
    ["24:00", false],
    ["8:00", false],
  ])("the time %s: %s", (value, taken) => {
    expect(takes(clockTime, value)).toBe(taken)
  })

  it.each([
    ["34.90", true],
    ["0", true],
    ["-1", false],
    ["1,000.00", false],
    ["£5", false],
    [34.9, false],
  ])("money written %j: %s", (value, taken) => {
    expect(takes(amount, value)).toBe(taken)
  })

  it("lengths are over nought and within a house; levels may lie below the datum; a line is one line", () => {
    expect([takes(length, 2400), takes(length, 0), takes(length, -1), takes(length, 60_001)]).toEqual([
      true,
      false,
      false,
      false,
    ])
    expect([takes(level, -240), takes(level, 5275), takes(level, Number.NaN)]).toEqual([true, true, false])
    expect([takes(line, "a"), takes(line, ""), takes(line, "a\nb"), takes(line, "a".repeat(201))]).toEqual([
      true,
      false,
      false,
      false,
    ])
  })

  it("the kinds of products are told apart by name", () => {
    expect([...productKinds].sort()).toEqual(["board", "each", "leaf", "length", "liquid", "roll", "tile"])
  })
})
