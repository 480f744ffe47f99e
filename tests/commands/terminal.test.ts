import { afterEach, describe, expect, it, vi } from "vitest"
import { standardTerminal, stopwatch } from "../../src/commands/terminal.ts"

const before = process.stderr.isTTY

/** Makes the error outlet one that someone watches, or one that nobody does. */
function watched(isTTY: boolean): void {
  Object.defineProperty(process.stderr, "isTTY", { value: isTTY, configurable: true })
}

afterEach(() => {
  vi.restoreAllMocks()
  watched(before)
})

describe("the terminal", () => {
  it("puts words and errors on their own outlets, a line each, and progress nowhere unless someone watches", () => {
    const written: string[] = []
    vi.spyOn(process.stdout, "write").mockImplementation((text) => written.push(`out ${text}`) > 0)
    vi.spyOn(process.stderr, "write").mockImplementation((text) => written.push(`err ${text}`) > 0)
    watched(false)
    const terminal = standardTerminal()
    terminal.out("done")
    terminal.err("wrong")
    terminal.progress("3 of 7")
    expect(written).toEqual(["out done\n", "err wrong\n"])
  })

  it("writes progress over itself where someone watches", () => {
    const written: unknown[] = []
    vi.spyOn(process.stderr, "write").mockImplementation((text) => written.push(text) > 0)
    watched(true)
    standardTerminal().progress("3 of 7")
    expect(written).toEqual(["\r\u001b[K3 of 7"])
  })
})

describe("the stopwatch", () => {
  it("names its laps in order, in seconds, each from the end of the one before", () => {
    const times = [1000, 1500, 4500]
    vi.spyOn(performance, "now").mockImplementation(() => times.shift() ?? 0)
    const watch = stopwatch()
    watch.lap("reading")
    watch.lap("printing")
    expect(watch.laps()).toEqual([
      ["reading", 0.5],
      ["printing", 3],
    ])
  })
})
