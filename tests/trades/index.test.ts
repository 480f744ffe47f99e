import { existsSync, readdirSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { z } from "zod"
import { productKinds } from "../../src/intake/schema/products.ts"
import { decorating } from "../../src/trades/decorating/index.ts"
import { doors } from "../../src/trades/doors/index.ts"
import { electrics } from "../../src/trades/electrics/index.ts"
import { floors } from "../../src/trades/floors/index.ts"
import { trades } from "../../src/trades/index.ts"
import { joinery } from "../../src/trades/joinery/index.ts"
import { plumbing } from "../../src/trades/plumbing/index.ts"
import { tiling } from "../../src/trades/tiling/index.ts"

/** Keys of a trade's inputs, however deep, that say nothing of themselves to the author's editor. */
function undescribed(schema: unknown, path = ""): string[] {
  if (schema === null || typeof schema !== "object") return []
  if (Array.isArray(schema)) return schema.flatMap((each) => undescribed(each, path))
  const { properties = {}, ...rest } = schema as { properties?: Record<string, { description?: string }> }
  const own = Object.entries(properties).flatMap(([key, value]) => {
    const here = path ? `${path}.${key}` : key
    return [...(value.description ? [] : [here]), ...undescribed(value, here)]
  })
  return [
    ...own,
    ...Object.entries(rest).flatMap(([key, each]) => (key === "default" ? [] : undescribed(each, path))),
  ]
}

/** Folders that hold a trade. */
function foldersOfTrades(): string[] {
  const folder = new URL("../../src/trades", import.meta.url).pathname
  return readdirSync(folder).filter((name) => existsSync(join(folder, name, "index.ts")))
}

describe("the trades", () => {
  it("are listed once each, with ids and letters of their own", () => {
    const listed: unknown[] = [floors, doors, joinery, tiling, plumbing, electrics, decorating]
    expect(trades).toEqual(expect.arrayContaining(listed))
    expect(trades.map((trade) => trade.id).sort()).toEqual(foldersOfTrades().sort())
    expect(new Set(trades.map((trade) => trade.id)).size).toBe(trades.length)
    expect(new Set(trades.map((trade) => trade.letter)).size).toBe(trades.length)
    for (const { id, title, letter } of trades) {
      expect(id).toMatch(/^[a-z]+$/)
      expect(title).toMatch(/^[A-Z]/)
      expect(letter).toMatch(/^[A-Z]$/)
    }
  })

  it.each(trades.map((trade) => [trade.id, trade] as const))(
    "%s reads products of kinds that there are",
    (_, trade) => {
      for (const { use, kind, what } of trade.uses) {
        expect(productKinds.has(kind), use).toBe(true)
        expect(what.length, use).toBeGreaterThan(1)
      }
      expect(new Set(trade.uses.map((each) => each.use)).size).toBe(trade.uses.length)
    },
  )

  it.each(trades.map((trade) => [trade.id, trade] as const))(
    "%s says what each of its keys is",
    (_, trade) => {
      for (const inputs of [trade.inputs, trade.doorInputs]) {
        if (inputs)
          expect(undescribed(z.toJSONSchema(inputs, { io: "input", unrepresentable: "any" }))).toEqual([])
      }
    },
  )
})
