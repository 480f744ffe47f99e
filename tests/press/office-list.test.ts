import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Page } from "puppeteer"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { findable, inListOrder, type OfficeRow, officeScript } from "../../src/press/office-list.ts"
import { setJob } from "../../src/press/set-job.ts"
import { rowOf, siteData } from "../../src/press/site-data.ts"
import { writeSite } from "../../src/press/write-site.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { fileAddress, withTestPress } from "./inspect/press.ts"

describe("the row of a job", () => {
  it("is found by reference, client, room, product, trade, sheet, and the months of its work in any form", async () => {
    const job = setJob("tiny", await smallResult(() => ({ money: smallMoney })))
    const row = rowOf(job)
    const { start } = job.result.programme
    const product = job.result.orders.lines[0]!.product
    const words = [
      "tiny",
      row.client,
      "C1",
      job.result.house.rooms[0]!.name,
      product.name,
      "j-53",
      "Floors",
      start,
    ]
    for (const word of findable([...words, start.slice(0, 7), "mar", "march"]).split(" "))
      expect(row.find, word).toContain(word)
    expect(row.packs.map(({ file }) => file)).toEqual(job.packs.map(({ id }) => `${id}.pdf`))
    expect(row.records).toContain("programme.ics")
  })

  it("is searched without accents and capitals, each word once", () => {
    expect(findable(["Café  CAFÉ", "Süd\nWand"])).toBe("cafe sud wand")
  })
})

describe("the office's list", () => {
  const count = 5000
  let folder = ""
  let rows: OfficeRow[] = []

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "storey-rod-office-"))
    const row = rowOf(setJob("tiny", await smallResult()))
    rows = inListOrder(Array.from({ length: count }, (_, index) => manyJobs(row, index)))
    await writeSite({ site: async () => siteData([], rows.slice(0, 3)), staging: folder })
    writeFileSync(join(folder, "print", "jobs.js"), officeScript(rows))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  const onPage = <T>(use: (page: Page) => Promise<T>) =>
    withTestPress(async (press) => {
      const page = await press.newPage()
      await page.goto(fileAddress(join(folder, "print", "index.html")))
      return use(page)
    })
  const shown = (page: Page) =>
    page.$$eval("#found h2 a", (links) => links.map((link) => link.getAttribute("href")))
  const counted = (page: Page) => page.$eval("#count", (element) => element.textContent)

  it("opened from the folder, shows the last to be worked on first, forty at a time", async () => {
    await onPage(async (page) => {
      expect(await counted(page)).toBe("5000 of 5000 jobs")
      const first = rows.slice(0, 40).map(({ ref }) => `${ref}/job.pdf`)
      expect(await shown(page)).toEqual(first)
      await page.$eval("#more", (button) => (button as HTMLButtonElement).click())
      expect(await shown(page)).toHaveLength(80)
    })
  })

  it("finds by every word typed, in any order, and by a day of the work", async () => {
    await onPage(async (page) => {
      await page.type("#words", "Öak STORE 17")
      const wanted = rows.filter(({ find }) => ["oak", "store", "17"].every((word) => find.includes(word)))
      expect(wanted.length).toBeGreaterThan(40)
      expect(wanted.length).toBeLessThan(count)
      expect(await counted(page)).toBe(`${wanted.length} of 5000 jobs`)
      await page.$eval("#day", (field) => {
        ;(field as HTMLInputElement).value = "2027-03-10"
        field.dispatchEvent(new Event("input"))
      })
      const then = wanted.filter(({ from, to }) => from <= "2027-03-10" && to >= "2027-03-10")
      expect(await counted(page)).toBe(`${then.length} of 5000 jobs`)
      expect(await shown(page)).toEqual(then.slice(0, 40).map(({ ref }) => `${ref}/job.pdf`))
      await page.type("#words", " nothing-of-the-kind")
      expect(await shown(page)).toEqual([])
    })
  })

  it("shows what an author wrote as text", async () => {
    writeFileSync(
      join(folder, "print", "jobs.js"),
      officeScript([{ ...rows[0]!, title: "<img src=x>", client: "</script>" }]),
    )
    await onPage(async (page) => {
      expect(await page.$$("#found img")).toEqual([])
      expect(await page.$eval("#found", (list) => list.textContent)).toContain("<img src=x>")
    })
    writeFileSync(join(folder, "print", "jobs.js"), officeScript(rows))
  })
})

/** One of many invented jobs: the same row under other references, words and days. */
function manyJobs(row: OfficeRow, index: number): OfficeRow {
  const month = String((index % 12) + 1).padStart(2, "0")
  const words = [
    row.find,
    index % 3 === 0 ? "oak" : "ash",
    index % 2 === 0 ? "store" : "study",
    String(index),
  ]
  return {
    ...row,
    ref: `job-${index}`,
    from: `2027-${month}-05` as OfficeRow["from"],
    to: `2027-${month}-25` as OfficeRow["to"],
    find: findable(words),
  }
}
