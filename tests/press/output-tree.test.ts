import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { dropStaging, filesBelow, openStaging, replaceOutput } from "../../src/press/output-tree.ts"

let folder: string
const output = () => join(folder, "output")

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "storey-rod-tree-"))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

function write(path: string, text: string): void {
  mkdirSync(join(path, ".."), { recursive: true })
  writeFileSync(path, text)
}

function staged(text: string): string {
  const staging = openStaging(output())
  write(join(staging, "site", "index.html"), text)
  write(join(staging, "print", "index.html"), text)
  return staging
}

describe("the output folder", () => {
  it("is built inside itself, so that nothing is written beside it", () => {
    staged("first")
    expect(readdirSync(folder)).toEqual(["output"])
  })

  it("holds the last good output until the next one is finished", () => {
    replaceOutput(output(), staged("first"))
    const staging = staged("second")
    expect(readFileSync(join(output(), "site", "index.html"), "utf8")).toBe("first")
    dropStaging(staging)
    expect(readFileSync(join(output(), "site", "index.html"), "utf8")).toBe("first")
    expect(readdirSync(output()).sort()).toEqual(["print", "site"])
  })

  it("is replaced whole: what a job no longer has is gone", () => {
    const first = staged("first")
    write(join(first, "site", "old", "index.html"), "old")
    replaceOutput(output(), first)
    replaceOutput(output(), staged("second"))
    expect(existsSync(join(output(), "site", "old"))).toBe(false)
    expect(readFileSync(join(output(), "print", "index.html"), "utf8")).toBe("second")
    expect(readdirSync(output()).sort()).toEqual(["print", "site"])
  })

  it("starts clean after a build that was cut off", () => {
    write(join(staged("cut off"), "print", "half.pdf"), "half")
    replaceOutput(output(), staged("next"))
    expect(readdirSync(join(output(), "print"))).toEqual(["index.html"])
  })

  it("leaves alone what others keep in it", () => {
    write(join(output(), "notes.txt"), "mine")
    replaceOutput(output(), staged("first"))
    expect(readFileSync(join(output(), "notes.txt"), "utf8")).toBe("mine")
  })
})

describe("files below a folder", () => {
  it("come with their bytes in order of path, and a folder that is not there has none", () => {
    for (const name of ["b.txt", "a/c.txt", "a/B.txt", "Z.txt"]) write(join(folder, name), name)
    expect(filesBelow(folder).map((file) => file.path)).toEqual(["Z.txt", "a/B.txt", "a/c.txt", "b.txt"])
    expect(filesBelow(folder).map((file) => Buffer.from(file.bytes).toString())).toEqual([
      "Z.txt",
      "a/B.txt",
      "a/c.txt",
      "b.txt",
    ])
    expect(filesBelow(join(folder, "none"))).toEqual([])
  })
})
