import { readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { expect, it } from "vitest"
import type { Press } from "../../src/press/browser/launch.ts"
import { measureSheets, type SheetMeasure } from "../../src/press/measure.ts"
import { contentWidth, htmlFile, withTestPress } from "./inspect/press.ts"

/** A document of sheets with so many lines each, 5 mm a line, 4 mm set closer, on 267 mm of paper. */
function documentOf(folder: string, lines: Record<string, number>): string {
  const sheets = Object.entries(lines).map(
    ([path, count]) =>
      `@@blank:${path}@@\n<section class="sheet@@tight:${path}@@"><h2 id="${path}">${path}</h2>${"<p>x</p>".repeat(count)}</section>`,
  )
  const style =
    "h2,p{margin:0;height:5mm;font-size:9pt;line-height:4mm}.tight p{height:4mm}section:first-of-type{break-before:auto}"
  return readFileSync(htmlFile(folder, `<p>contents</p>${sheets.join("\n")}`, style), "utf8")
}

const task = (folder: string, known: ReadonlyMap<string, SheetMeasure> = new Map()) => {
  const written: string[] = []
  const write = (name: string, html: string) => {
    const file = join(folder, `${name}.html`)
    writeFileSync(file, html)
    written.push(html)
    return file
  }
  return { contentWidth, pressHash: "press", known, write, written }
}

const measures = async (
  press: Press,
  folder: string,
  lines: Record<string, number>,
  known?: ReadonlyMap<string, SheetMeasure>,
) => {
  const given = task(folder, known)
  const came = await measureSheets(press, documentOf(folder, lines), given)
  return { came, written: given.written }
}

it("counts the pages of each sheet, and sets closer only where that saves a page", async () => {
  await withTestPress(async (press, folder) => {
    // 53 lines of 5 mm are a page; 55 lines fit it only closer; 80 lines take two pages either way; 110 save one of three.
    const { came } = await measures(press, folder, { short: 10, over: 55, two: 80, three: 110 })
    const told = [...came].map(([path, { pages, tight }]) => [path, pages, tight])
    expect(told).toEqual([
      ["short", 1, false],
      ["over", 1, true],
      ["two", 2, false],
      ["three", 2, true],
    ])
  })
})

it("prints only what has changed since", async () => {
  await withTestPress(async (press, folder) => {
    const first = await measures(press, folder, { one: 10, two: 60 })
    const same = await measures(press, folder, { one: 10, two: 60 }, first.came)
    expect(same.written).toEqual([])
    expect(same.came).toEqual(first.came)
    const changed = await measures(press, folder, { one: 10, two: 120 }, first.came)
    expect(changed.written).toHaveLength(2)
    expect(changed.written.join()).not.toContain('id="one"')
    expect(changed.came.get("one")).toEqual(first.came.get("one"))
    expect(changed.came.get("two")!.pages).toBeGreaterThan(first.came.get("two")!.pages)
    expect(changed.came).toEqual((await measures(press, folder, { one: 10, two: 120 })).came)
  })
})
