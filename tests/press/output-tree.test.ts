import { spawn } from "node:child_process"
import { once } from "node:events"
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import {
  dropStaging,
  filesBelow,
  healOutput,
  openStaging,
  replaceOutput,
} from "../../src/press/output-tree.ts"

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
    // A process that is killed leaves its lock behind; here it is our own.
    rmSync(join(output(), ".lock"))
    replaceOutput(output(), staged("next"))
    expect(readdirSync(join(output(), "print"))).toEqual(["index.html"])
  })

  /** The renamings that put a build in place, in their order. */
  const steps: [from: string, to: string][] = [
    [".building", ".ready"],
    ["site", ".old-site-0"],
    [".ready/site", "site"],
    ["print", ".old-print-0"],
    [".ready/print", "print"],
  ]

  it.each(steps.map((_, index) => index + 1))(
    "is the new tree whole when cut off after renaming %i",
    (done) => {
      replaceOutput(output(), staged("first"))
      dropStaging(staged("second"))
      for (const half of ["site", "print"]) write(join(output(), ".building", half, "index.html"), "second")
      for (const [from, to] of steps.slice(0, done)) renameSync(join(output(), from), join(output(), to))
      healOutput(output())
      expect(filesBelow(output()).map(({ path, bytes }) => `${path} ${Buffer.from(bytes)}`)).toEqual([
        "print/index.html second",
        "site/index.html second",
      ])
      expect(readdirSync(output()).sort()).toEqual(["print", "site"])
    },
  )

  it("is put right by the next build too, and is never given to two at once", () => {
    replaceOutput(output(), staged("first"))
    for (const half of ["site", "print"]) write(join(output(), ".ready", half, "index.html"), "second")
    const staging = openStaging(output())
    expect(readFileSync(join(output(), "site", "index.html"), "utf8")).toBe("second")
    expect(() => openStaging(output())).toThrow("another build")
    dropStaging(staging)
    expect(readdirSync(output()).sort()).toEqual(["print", "site"])
  })

  it("is not replaced by a build that lost the folder to another, nor by half a build", () => {
    replaceOutput(output(), staged("first"))
    const staging = staged("second")
    write(join(output(), ".lock"), JSON.stringify({ pid: process.ppid, host: "another", began: "" }))
    expect(() => replaceOutput(output(), staging)).toThrow("taken over")
    rmSync(join(output(), ".lock"))
    const half = openStaging(output())
    write(join(half, "site", "index.html"), "half")
    expect(() => replaceOutput(output(), half)).toThrow("no print folder")
    dropStaging(half)
    expect(readFileSync(join(output(), "site", "index.html"), "utf8")).toBe("first")
  })

  it("is whole whenever its writer is killed", { timeout: 0 }, async () => {
    const kills = Math.max(4, Number(process.env.KILLS ?? 0))
    const writer = new URL("inspect/tree-writer.ts", import.meta.url).pathname
    const lost: string[] = []
    for (let kill = 0; kill < kills; kill++) {
      const child = spawn(process.execPath, ["--import", "tsx", writer, output()], {
        stdio: ["ignore", "pipe", "inherit"],
      })
      await once(child.stdout, "data")
      await new Promise((over) => setTimeout(over, Math.random() * 60))
      child.kill("SIGKILL")
      await once(child, "exit")
      healOutput(output())
      const files = filesBelow(output()).filter(({ path }) => /^(site|print)/.test(path))
      const numbers = new Set(files.map(({ bytes }) => Buffer.from(bytes).toString()))
      if (numbers.size !== 1 || files.length !== 40) lost.push(`${[...numbers]}: ${files.length} files`)
    }
    expect(lost).toEqual([])
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
