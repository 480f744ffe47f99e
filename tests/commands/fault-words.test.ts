import { mkdirSync, writeFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { faultWords, rootCause } from "../../src/commands/fault-words.ts"
import { Fault } from "../../src/kernels/fault.ts"

function thrownBy(does: () => void): unknown {
  try {
    does()
  } catch (error) {
    return error
  }
  throw new Error("nothing was thrown")
}

describe("what went wrong, in words", () => {
  it("is the fault's own message, however deep it lies", () => {
    const error = new Error("a template failed", {
      cause: new Error("within", { cause: new Fault("no such rule") }),
    })
    expect(faultWords(error)).toBe("no such rule")
    expect(rootCause(error)?.message).toBe("no such rule")
  })

  it.skipIf(process.platform !== "linux")("names the file and the way out where the disk is full", () => {
    const error = thrownBy(() => writeFileSync("/dev/full", "text"))
    expect(faultWords(new Error("wrapped", { cause: error }))).toMatch(
      /^The disk is full: .*last output stands/,
    )
  })

  it.skipIf(process.platform !== "linux")("names a folder that may not be written", () => {
    expect(faultWords(thrownBy(() => mkdirSync("/sys/storey-rod")))).toMatch(
      /\/sys\/storey-rod may not be written/,
    )
    expect(faultWords(thrownBy(() => mkdirSync("/dev/null/x")))).toMatch(/\/dev\/null\/x lies below a file/)
  })

  it("is the message itself for anything else", () => {
    expect(faultWords(new Error("odd"))).toBe("Something went wrong on our side: odd")
    expect(faultWords("odd")).toBe("Something went wrong on our side: odd")
  })
})
