import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, expect, it } from "vitest"
import { programHash } from "../../src/press/program-hash.ts"

let top = ""
beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), "storey-rod-hash-"))
  for (const folder of ["src/press", "src/trades", "templates/assets", "templates/fonts"])
    mkdirSync(join(top, folder), { recursive: true })
  writeFileSync(join(top, "package-lock.json"), "{}")
  writeFileSync(join(top, "src/press/print.ts"), "a")
  writeFileSync(join(top, "src/trades/doors.ts"), "b")
})
afterEach(() => rmSync(top, { recursive: true, force: true }))

it("is the same for the same files, wherever they lie", () => {
  const copy = `${top}-copy`
  cpSync(top, copy, { recursive: true })
  expect(programHash(copy)).toEqual(programHash(top))
  rmSync(copy, { recursive: true })
})

it("changes with any file, of the press or of the rest", () => {
  const before = programHash(top)
  writeFileSync(join(top, "src/trades/doors.ts"), "c")
  const trade = programHash(top)
  expect([trade.press === before.press, trade.whole === before.whole]).toEqual([true, false])
  writeFileSync(join(top, "templates/assets/new.css"), "")
  const press = programHash(top)
  expect([press.press === before.press, press.whole === trade.whole]).toEqual([false, false])
})
