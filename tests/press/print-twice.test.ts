import { describe, expect, it } from "vitest"

import { Fault } from "../../src/kernels/fault.ts"
import type { PagePlan } from "../../src/press/print-twice.ts"
import { pagePlan, printTwice } from "../../src/press/print-twice.ts"
import { openPdf } from "./inspect/open.ts"
import { contentWidth, htmlFile, withTestPress } from "./inspect/press.ts"
import { textItems } from "./inspect/text.ts"

const rooms = [
  { id: "a1", pages: 2 },
  { id: "a2", pages: 3 },
  { id: "b1", pages: 1 },
  { id: "c1", pages: 11 },
]

/** A pack with contents and a heading at the start of each room that states its own page. */
function pack(plan: PagePlan | null): string {
  const number = (id: string): number | string => plan?.starts.get(id) ?? "00"
  const contents = rooms.map(({ id }) => `<li><a href="#${id}">Room ${id} on ${number(id)}</a></li>`).join("")
  const sections = rooms.map(({ id, pages }) => {
    const blank = plan?.blanksBefore.has(id) ? "<section>left blank</section>" : ""
    const more = "<section>more</section>".repeat(pages - 1)
    return `${blank}<section id="${id}"><h2>${id} starts on ${number(id)} of ${plan?.pages ?? "00"}</h2></section>${more}`
  })
  return `<h1>Pack</h1><ul>${contents}</ul>${sections.join("")}`
}

describe("printTwice", () => {
  it("bakes true page numbers, and starts every room on the right", async () => {
    await withTestPress(async (press, folder) => {
      const printed = await printTwice(press, async (plan) => htmlFile(folder, pack(plan)), {
        contentWidth,
        rightHand: rooms.map(({ id }) => id),
      })
      expect([...printed.destinations.values()].filter((page) => page % 2 === 0)).toEqual([])
      expect(printed.plan.starts).toEqual(printed.destinations)
      const items = await textItems(await openPdf(printed.pdf))
      for (const { id } of rooms) {
        const stated = `${id} starts on ${printed.destinations.get(id)} of ${printed.pages}`
        const onPage = items.filter(({ page }) => page === printed.destinations.get(id))
        expect(onPage.map(({ text }) => text).join("")).toContain(stated)
      }
    })
  })

  it("puts in no blank where none is asked for", async () => {
    await withTestPress(async (press, folder) => {
      const printed = await printTwice(press, async (plan) => htmlFile(folder, pack(plan)), { contentWidth })
      expect(printed.pages).toBe(1 + rooms.reduce((sum, { pages }) => sum + pages, 0))
      expect(printed.plan.blanksBefore.size).toBe(0)
    })
  })

  it("plans anew when the numbers themselves move a page", async () => {
    await withTestPress(async (press, folder) => {
      const grown = (plan: PagePlan | null): string =>
        `<h1>Pack</h1><a href="#end">${plan === null ? "" : "<section>contents</section>"}end on ${plan?.starts.get("end")}</a><section id="end">end</section>`
      const printed = await printTwice(press, async (plan) => htmlFile(folder, grown(plan)), { contentWidth })
      expect(printed.plan.starts.get("end")).toBe(3)
      expect(printed.pages).toBe(3)
    })
  })

  it("is a fault when the pages never come to rest", async () => {
    await withTestPress(async (press, folder) => {
      const growing = (plan: PagePlan | null): string =>
        `<a href="#end">end</a>${"<section>more</section>".repeat(plan?.pages ?? 1)}<section id="end">end</section>`
      const print = printTwice(press, async (plan) => htmlFile(folder, growing(plan)), { contentWidth })
      await expect(print).rejects.toThrow(Fault)
    })
  })
})

describe("pagePlan", () => {
  const printed = { pages: 7, starts: new Map(Object.entries({ a: 2, b: 4, c: 5, note: 5 })) }

  it("moves what follows a blank by one, by hand: contents 1, blank 2, a 3-4, b 5, blank 6, c 7-9", () => {
    const plan = pagePlan(printed, ["a", "b", "c"])
    expect([...plan.blanksBefore]).toEqual(["a", "c"])
    expect(Object.fromEntries(plan.starts)).toEqual({ a: 3, b: 5, c: 7, note: 7 })
    expect(plan.pages).toBe(9)
  })

  it("does not depend on the order in which the ids are given", () => {
    expect(pagePlan(printed, ["c", "a", "b"])).toEqual(pagePlan(printed, ["a", "b", "c"]))
  })

  it("is a fault for an id that nothing links to", () => {
    expect(() => pagePlan(printed, ["d"])).toThrow(Fault)
  })
})
