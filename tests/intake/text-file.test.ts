import { isUtf8 } from "node:buffer"
import { describe, expect, it } from "vitest"
import { textOf } from "../../src/intake/text-file.ts"

const bytes = (text: string) => new TextEncoder().encode(text)

describe("textOf", () => {
  it("takes UTF-8 and takes the byte order mark off", () => {
    expect(textOf(bytes("\ufeffname: café\n"))).toEqual({ text: "name: café\n" })
    expect(textOf(bytes(""))).toEqual({ text: "" })
  })

  it("finds the first byte that is no UTF-8, as Node's own check sees it", () => {
    const sound = [...bytes("a: ä\nb: 屋 x\n")]
    for (let place = 0; place <= sound.length; place++) {
      const broken = Uint8Array.from([...sound.slice(0, place), 0xff, ...sound.slice(place)])
      expect(isUtf8(broken)).toBe(false)
      const read = textOf(broken)
      const line = sound.slice(0, place).filter((byte) => byte === 0x0a).length + 1
      expect("refused" in read && [read.refused.code, read.line]).toEqual(["wrong-encoding", line])
    }
  })

  it("counts columns in letters, not bytes", () => {
    const read = textOf(Uint8Array.from([...bytes("a: 1\nä屋: "), 0xe9, 0x0a]))
    expect(read).toMatchObject({ line: 2, column: 5 })
  })
})
