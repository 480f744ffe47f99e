import { spawnSync } from "node:child_process"
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs"
import { hostname, tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { Fault } from "../../src/kernels/fault.ts"
import { holdsLock, isHeldElsewhere, releaseLock, takeLock } from "../../src/press/output-lock.ts"

let folder: string
const lock = () => join(folder, ".lock")

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "storey-rod-lock-"))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

function heldBy(holder: { pid: number; host?: string; began?: string }): void {
  mkdirSync(folder, { recursive: true })
  writeFileSync(lock(), JSON.stringify({ host: hostname(), began: "", ...holder }))
}

/** A process that has ended. */
function deadPid(): number {
  return spawnSync(process.execPath, ["-e", "0"]).pid
}

describe("the lock of an output folder", () => {
  it("is taken once and given free", () => {
    takeLock(folder)
    expect(holdsLock(folder)).toBe(true)
    expect(() => takeLock(folder)).toThrow(Fault)
    expect(() => takeLock(folder)).toThrow(`process ${process.pid}`)
    releaseLock(folder)
    expect(readdirSync(folder)).toEqual([])
    takeLock(folder)
    releaseLock(folder)
  })

  it("of a live process stands, and the other is told how to go on", () => {
    heldBy({ pid: process.ppid })
    expect(isHeldElsewhere(folder)).toBe(true)
    expect(() => takeLock(folder)).toThrow("--output")
    releaseLock(folder)
    expect(existsSync(lock())).toBe(true)
    expect(readdirSync(folder)).toEqual([".lock"])
  })

  it("of a process that is no more is taken over", () => {
    heldBy({ pid: deadPid() })
    expect(isHeldElsewhere(folder)).toBe(false)
    takeLock(folder)
    expect(holdsLock(folder)).toBe(true)
    releaseLock(folder)
    expect(readdirSync(folder)).toEqual([])
  })

  it.skipIf(process.platform !== "linux")(
    "of a process whose number was given to another is taken over",
    () => {
      heldBy({ pid: process.ppid, began: "1" })
      takeLock(folder)
      expect(holdsLock(folder)).toBe(true)
      releaseLock(folder)
    },
  )

  it("of another machine stands as long as it gives signs", () => {
    heldBy({ pid: 1, host: "another" })
    expect(() => takeLock(folder)).toThrow("on another")
    const longAgo = new Date(Date.now() - 3_600_000)
    utimesSync(lock(), longAgo, longAgo)
    takeLock(folder)
    expect(holdsLock(folder)).toBe(true)
    releaseLock(folder)
  })

  it("that holds nothing readable is taken over", () => {
    writeFileSync(lock(), "")
    takeLock(folder)
    expect(JSON.parse(readFileSync(lock(), "utf8"))).toMatchObject({ pid: process.pid })
    releaseLock(folder)
  })
})
